import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { dataFolder } from '../catalogue/data-folder.ts';
import { lastFew } from './last-few.ts';
import { makePage, type MadePage, type Order } from './made-page.ts';

/**
 * Makes pages on two threads: a build goes through one page after another and would leave the
 * second core idle. What comes out is the same whichever thread makes it.
 */

/** Orders that are out at a time: one at work, the others so that none is waited for. */
const MOST_AWAY = 4;
/** What it may hold, so that a whole build stays below 1 GB: the catalogue and a page at a time. */
const MEGABYTES = 160;
const YOUNG = 24;

interface Waiting {
  resolve: (page: MadePage) => void;
  reject: (error: unknown) => void;
}

interface Answer {
  id: number;
  page?: MadePage;
  error?: unknown;
}

/** A thread that takes orders; it keeps no process alive that does not wait for one. */
const openWorkbench = (): ((order: Order) => Promise<MadePage>) & { away: () => number } => {
  const waiting = new Map<number, Waiting>();
  const module = join(dirname(dataFolder()), 'src', 'building', 'workbench.ts');
  const worker = new Worker(module, {
    workerData: { base: import.meta.env.BASE_URL },
    resourceLimits: { maxOldGenerationSizeMb: MEGABYTES, maxYoungGenerationSizeMb: YOUNG },
  });
  worker.unref();
  worker.on('message', ({ id, page, error }: Answer) => {
    const one = waiting.get(id);
    waiting.delete(id);
    if (waiting.size === 0) worker.unref();
    if (page === undefined) one?.reject(error);
    else one?.resolve(page);
  });
  let broken: Error | undefined;
  worker.on('error', (error) => {
    broken = error;
    for (const { reject } of waiting.values()) reject(error);
  });
  let last = 0;
  const send = (order: Order): Promise<MadePage> =>
    new Promise((resolve, reject) => {
      if (broken !== undefined) {
        reject(broken);
        return;
      }
      last += 1;
      waiting.set(last, { resolve, reject });
      worker.ref();
      worker.postMessage({ id: last, order });
    });
  return Object.assign(send, { away: () => waiting.size });
};

/** A page that is edited is made anew where it is looked at, and a single core has nothing to share. */
const isShared = import.meta.env.PROD && availableParallelism() > 1;

let workbench: ReturnType<typeof openWorkbench> | undefined;

/** A page and the figures beside it are asked for one after the other, several at a time. */
const made = lastFew<Promise<MadePage>>(16);

/**
 * A page for the usual numbers, from the thread that has time.
 * @throws RangeError if the catalogue has no such part or place
 */
export const orderPage = (of: Order['of'], old: string, place: string): Promise<MadePage> =>
  made(`${of} ${old} ${place}`, async () => {
    const order = { of, old, place };
    if (!isShared) return makePage(order);
    workbench ??= openWorkbench();
    return workbench.away() < MOST_AWAY ? workbench(order) : makePage(order);
  });
