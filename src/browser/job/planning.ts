import type { Catalogue } from '../../engine/index.ts';
import { newPlanCache, planJob, type Plan, type PlannedLine } from '../../job/index.ts';
import type { Job } from '../../job/model.ts';
import type { Memory } from '../../job/plan-cache.ts';
import { cataloguePart } from '../catalogue-part.ts';

/** Plans a job in slices, so that typing never waits for it. */

/** A slice that takes less than this many milliseconds is followed by a longer one. */
const SHORT = 8;

const loaded = new Map<string, Catalogue>();
const cache = newPlanCache();
/** What is planned in slices may not forget the other slices between them. */
const lasting = <T>(memory: Memory<T>): Memory<T> => ({ ...memory, sweep: () => undefined });
const sliced = {
  parts: lasting(cache.parts),
  questions: lasting(cache.questions),
  worked: lasting(cache.worked),
  chosen: lasting(cache.chosen),
};

export const catalogueAt = (position: string): Catalogue | undefined => loaded.get(position);

let run = 0;
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve);
  });

const fetchParts = async (positions: Iterable<string>): Promise<void> => {
  for (const position of positions) {
    if (loaded.has(position)) continue;
    loaded.set(position, await cataloguePart(position));
  }
};

/**
 * The plan of a job; nothing where a newer one was asked for meanwhile.
 * @throws Error where the data of a position cannot be fetched
 */
export const planInSlices = async (job: Job): Promise<Plan | undefined> => {
  run += 1;
  const mine = run;
  const lines: PlannedLine[] = [];
  const missing = new Set<string>();
  let workedOut = 0;
  let length = 4;
  while (lines.length < job.lines.length) {
    const begun = performance.now();
    const slice = { ...job, lines: job.lines.slice(lines.length, lines.length + length) };
    const wanted = planJob(slice, { catalogueAt, cache: sliced }).wanted;
    const known = wanted.filter((position) => !missing.has(position));
    if (known.length > 0) {
      try {
        await fetchParts(known);
      } catch {
        for (const position of known) if (!loaded.has(position)) missing.add(position);
      }
    }
    const part = planJob(slice, { catalogueAt, cache: sliced });
    lines.push(...part.lines);
    workedOut += part.workedOut;
    if (performance.now() - begun < SHORT) length *= 2;
    else length = Math.max(4, Math.floor(length / 2));
    await pause();
    if (mine !== run) return undefined;
  }
  for (const memory of Object.values(cache) as Memory<unknown>[]) memory.sweep();
  return { lines, wanted: [...missing], workedOut };
};
