import { extentOf } from './path.ts';
import { forms } from './forms/index.ts';
import type { Form } from './forms/form.ts';
import type { PartSpec } from './spec.ts';

/** The scale of all drawings that say nothing else: px of the drawing to the millimetre. */
export const USUAL_SCALE = 8;

/** Scales to choose from, the largest first; smaller ones are for cans and gangs. */
const SCALES = [USUAL_SCALE, 6, 4, 3, 2] as const;

/** Room for one view of one part, px: what a phone shows beside its margins. */
const ROOM = { width: 320, height: 340 } as const;

/**
 * The largest scale, px to the millimetre and no larger than the usual one, at which every view of
 * every part has room on a phone.
 */
export const scaleFor = (specs: readonly PartSpec[]): number => {
  const extents = specs.flatMap((spec) => {
    const form: Form = forms[spec.form];
    return form.views(spec).map(({ shapes }) => extentOf(...shapes.map(({ path }) => path)));
  });
  const width = Math.max(1, ...extents.map(({ left, right }) => right - left));
  const height = Math.max(1, ...extents.map(({ top, bottom }) => bottom - top));
  return (
    SCALES.find((scale) => width * scale <= ROOM.width && height * scale <= ROOM.height) ??
    (SCALES.at(-1) as number)
  );
};
