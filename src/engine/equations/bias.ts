import type { Range } from '../quantities/range.ts';

/** Capacitance (F) that is left of a marked one (F) by several causes, each a factor on it. */
export const leftBy = (marked: number, factors: readonly number[]): number =>
  factors.reduce((left, factor) => left * Math.max(0, factor), marked);

/**
 * Factor on a capacitance under direct voltage, taken in proportion to the share of the rated
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
