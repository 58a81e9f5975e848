import type { Catalogue } from '../../engine/index.ts';
import {
  haveColours,
  newPlanCache,
  planSteps,
  understandWith,
  type Job,
  type Plan,
  type ReadColourRow,
} from '../../job/index.ts';
import { cataloguePart } from '../fetched/catalogue-part.ts';
import { takeSteps } from '../page/turns.ts';

/** Plans a job in turns, so that typing never waits for it. */

/** Works so long at a stretch, ms. */
const TURN = 25;

const loaded = new Map<string, Catalogue>();
let cache = newPlanCache();

/** A slice of the catalogue as far as it has been fetched. */
export const catalogueAt = (slice: string): Catalogue | undefined => loaded.get(slice);

/** Whether this site has a part of the catalogue, by what it reads markings with. */
const isOfSite = ({ positions, kindPositions }: Catalogue, slice: string): boolean =>
  slice.startsWith('devices-') ||
  Object.hasOwn(positions, slice) ||
  Object.hasOwn(kindPositions, slice);

let readColourRow: ReadColourRow | undefined;

/** Fetches what reads rows of colours, once a line has some; without it they stay unread. */
const fetchColours = async (reading: Catalogue, { lines }: Job): Promise<void> => {
  if (readColourRow !== undefined || !haveColours(reading, lines)) return;
  try {
    const [row, catalogue] = await Promise.all([
      import('../../reading/colours/row.ts'),
      cataloguePart('colours'),
    ]);
    readColourRow ??= (colours) => row.readColourRow(catalogue, colours);
    // What was understood without colours is understood anew.
    cache = newPlanCache();
  } catch {
    // The next change tries again; what is typed beside the marking holds meanwhile.
  }
};

let run = 0;

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

/**
 * The plan of a job; nothing where a newer one was asked for meanwhile. Rejects where what markings
 * are read with cannot be fetched.
 */
export const planInTurns = async (job: Job): Promise<Plan | undefined> => {
  run += 1;
  const mine = run;
  const isWanted = () => mine === run;
  const missing = new Set<string>();
  const reading = await cataloguePart('reading');
  await fetchColours(reading, job);
  if (!isWanted()) return undefined;
  const understand = understandWith(reading, readColourRow);
  for (;;) {
    const steps = planSteps(job, {
      // What lacks the place of a line says that nobody knows it, without asking the site.
      catalogueAt: (slice) =>
        catalogueAt(slice) ?? (isOfSite(reading, slice) ? undefined : reading),
      cache,
      understand,
    });
    const plan = await takeSteps(steps, isWanted, TURN);
    const toFetch = plan?.wanted.filter((position) => !missing.has(position)) ?? [];
    if (toFetch.length === 0) return plan;
    await fetchParts(toFetch, missing);
    if (!isWanted()) return undefined;
  }
};
