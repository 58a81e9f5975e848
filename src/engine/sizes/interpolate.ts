import type { Range } from '../quantities/range.ts';

/**
 * Where a value lies between two others on a logarithmic scale: 0 at the first, 1 at the second.
 * All three are above zero.
 */
export const logShare = (value: number, from: number, to: number): number =>
  from === to ? 1 : Math.log(value / from) / Math.log(to / from);

/** The number at a share of the way between two positive ones on a logarithmic scale. */
export const logBetween = (from: number, to: number, share: number): number =>
  from * (to / from) ** Math.min(1, Math.max(0, share));

/** The same for ranges of positive ends: never outside the two. */
export const logBetweenRanges = (from: Range, to: Range, share: number): Range => ({
  min: logBetween(from.min, to.min, share),
  typ: logBetween(from.typ, to.typ, share),
  max: logBetween(from.max, to.max, share),
});

/** Share by which a value may lie beside a tabulated one and still be it: rounding only. */
export const TABLE_ROUNDING = 1e-4;

/** Whether two numbers are the same but for rounding. */
export const alike = (a: number, b: number): boolean => Math.abs(a / b - 1) <= TABLE_ROUNDING;
