import type { Catalogue } from '../../engine/index.ts';
import type { SheetStep } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { cataloguePart } from '../catalogue-part.ts';
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

/** Fetches what drawings need, then calls back; a failure leaves the sheet without them. */
export const whenDrawn = (then: () => void): void => {
  if (kit !== undefined) return;
  fetching ??= fetchKit().then(then, () => {
    fetching = undefined;
  });
};

/** Puts the drawing of a step where it belongs, if what is needed is there. */
export const drawSketch = (place: ParentNode, step: SheetStep): void => {
  const frame = place.querySelector('.bench-drawing');
  if (kit === undefined || frame === null) return;
  const sketch = kit.sketchOf(step, catalogueAt(step.planned.part.position ?? ''), kit.looks);
  frame.replaceChildren(...(sketch === undefined ? [] : [toDom(sketch)]));
};
