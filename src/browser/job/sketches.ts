import type { Catalogue } from '../../engine/index.ts';
import type { SheetStep } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { cataloguePart } from '../fetched/catalogue-part.ts';
import { catalogueAt } from './planning.ts';

/** Drawings on the bench sheet, whose code and data are fetched once the sheet is opened. */

let kit:
  | { sketchOf: typeof import('../../job-view/part-sketch.ts').sketchOf; looks: Catalogue }
  | undefined;
let fetching: Promise<void> | undefined;

const fetchKit = async (): Promise<void> => {
  const [{ sketchOf }, looks] = await Promise.all([
    import('../../job-view/part-sketch.ts'),
    cataloguePart('drawings'),
  ]);
  kit = { sketchOf, looks };
};

/** Fetches what drawings need, so that it is there once the network is not. */
export const fetchSketches = async (): Promise<void> => {
  fetching ??= fetchKit();
  try {
    await fetching;
  } catch {
    // The sheet does without; the next time it is opened tries again.
    fetching = undefined;
  }
};

/** Calls back once drawings can be made, where they cannot yet. */
export const whenDrawn = (then: () => void): void => {
  if (kit !== undefined) return;
  void fetchSketches().then(() => {
    if (kit !== undefined) then();
  });
};

/** Puts the drawing of a step where it belongs, if what is needed is there. */
export const drawSketch = (place: ParentNode, step: SheetStep): void => {
  const frame = place.querySelector('.bench-drawing');
  if (kit === undefined || frame === null) return;
  const sketch = kit.sketchOf(step, catalogueAt(step.planned.part.slice ?? ''), kit.looks);
  frame.replaceChildren(...(sketch === undefined ? [] : [toDom(sketch)]));
};
