import type { Catalogue } from '../../engine/index.ts';
import { newPlanCache, planSteps, understandWith, type Job, type Plan } from '../../job/index.ts';
import { cataloguePart } from '../catalogue-part.ts';

/** Plans a job in turns, so that typing never waits for it. */

/** Works so long at a stretch, ms. */
const TURN = 25;

const loaded = new Map<string, Catalogue>();
const cache = newPlanCache();

export const catalogueAt = (slice: string): Catalogue | undefined => loaded.get(slice);

let run = 0;
/** Lets the page do what waits; timers would make each turn wait for some milliseconds more. */
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });

/** Fetches what is wanted; what cannot be had is noted, so that it is asked for only once. */
const fetchParts = async (positions: readonly string[], missing: Set<string>): Promise<void> => {
  for (const position of positions) {
    try {
      loaded.set(position, await cataloguePart(position));
    } catch {
      missing.add(position);
    }
  }
};

/** Takes steps until the last, with pauses between turns; nothing once nobody waits for it any more. */
const takeSteps = async (
  steps: Generator<undefined, Plan, undefined>,
  isWanted: () => boolean,
): Promise<Plan | undefined> => {
  while (isWanted()) {
    const end = performance.now() + TURN;
    do {
      const { done, value } = steps.next();
      if (done === true) return value;
    } while (performance.now() < end);
    await pause();
  }
  return undefined;
};

/**
 * The plan of a job; nothing where a newer one was asked for meanwhile. Rejects where what markings
 * are read with cannot be fetched.
 */
export const planInTurns = async (job: Job): Promise<Plan | undefined> => {
  run += 1;
  const mine = run;
  const isWanted = () => mine === run;
  const missing = new Set<string>();
  const understand = understandWith(await cataloguePart('reading'));
  for (;;) {
    const plan = await takeSteps(planSteps(job, { catalogueAt, cache, understand }), isWanted);
    const toFetch = plan?.wanted.filter((position) => !missing.has(position)) ?? [];
    if (toFetch.length === 0) return plan;
    await fetchParts(toFetch, missing);
    if (!isWanted()) return undefined;
  }
};
