import { exactly, type Range } from '../quantities/range.ts';

/** Capacitance (F) that is left of a marked one (F) by several causes, each a factor on it. */
export const leftBy = (marked: number, factors: readonly number[]): number => {
  let left = marked;
  for (const factor of factors) left *= Math.max(0, factor);
  return left;
};

/** The same over the spread of each cause, which are separate, so their ends multiply. */
export const leftInService = (marked: number, factors: readonly Range[]): Range => {
  const left = exactly(marked);
  for (const { min, typ, max } of factors) {
    left.min *= Math.max(0, min);
    left.typ *= Math.max(0, typ);
    left.max *= Math.max(0, max);
  }
  return left;
};

/**
 * Factor on a capacitance under DC voltage, taken in proportion to the share of the rated
 * voltage; above it no further.
 * @param change at rated voltage, fraction, either sign
 */
export const factorUnderBias = (change: Range, voltage: number, rated: number): Range => {
  const share = Math.min(1, voltage / rated);
  return {
    min: 1 + Math.min(0, change.min * share),
    typ: 1 + change.typ * share,
    max: 1 + Math.max(0, change.max * share),
  };
};
