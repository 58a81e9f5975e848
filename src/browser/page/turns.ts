import type { Steps } from '../../job/index.ts';

/** Work in steps, so that typing and painting never wait for long. */

export type { Steps };

/** Lets the page do what waits; timers would make each turn wait for some milliseconds more. */
export const pause = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });

/**
 * Takes steps until the last, with pauses between turns; nothing once nobody waits for it any more.
 * @param turn works so long at a stretch, ms; at 0 there is a pause after every step
 */
export const takeSteps = async <Result>(
  steps: Steps<Result>,
  isWanted: () => boolean,
  turn: number,
): Promise<Result | undefined> => {
  while (isWanted()) {
    const end = performance.now() + turn;
    do {
      const { done, value } = steps.next();
      if (done === true) return value;
    } while (performance.now() < end);
    await pause();
  }
  return undefined;
};

/** A page that is not seen paints nothing, and is not waited for longer than this, ms. */
const LONGEST_PAINT = 50;

/** Until the page has shown what stands in it now. */
export const painted = async (): Promise<void> => {
  await new Promise<void>((resolve) => {
    const late = setTimeout(resolve, LONGEST_PAINT);
    requestAnimationFrame(() => {
      clearTimeout(late);
      resolve();
    });
  });
  await pause();
};

/**
 * Draws in turns: the first step at once, the others after the page has shown what came of it. What
 * is drawn anew meanwhile gives up the rest. Until all of it stands, the places say that they are busy.
 * @param places that later steps fill
 */
export const drawingInTurns = (
  ...places: readonly HTMLElement[]
): ((steps: Steps) => Promise<void>) => {
  let run = 0;
  return async (steps) => {
    run += 1;
    const mine = run;
    const isWanted = (): boolean => mine === run;
    for (const place of places) place.setAttribute('aria-busy', 'true');
    try {
      if (steps.next().done === true) return;
      await painted();
      await takeSteps(steps, isWanted, 0);
    } finally {
      if (isWanted()) for (const place of places) place.removeAttribute('aria-busy');
    }
  };
};
