import { add, type Range } from '../quantities/range.ts';

/** Size of something that may have either sign, such as a slope, as a range of magnitudes. */
export const magnitude = (range: Range): Range => {
  const ends = [Math.abs(range.min), Math.abs(range.max)] as const;
  const straddles = range.min <= 0 && range.max >= 0;
  const max = Math.max(...ends);
  const min = straddles ? 0 : Math.min(...ends);
  return { min, typ: Math.abs(range.typ), max };
};

/**
 * Change of capacitance (fraction, without sign) over a span of temperature by a steady slope.
 * @param coefficient 1/K
 * @param span K
 */
export const driftBySlope = (coefficient: Range, span: number): Range => {
  const slope = magnitude(coefficient);
  return { min: slope.min * span, typ: slope.typ * span, max: slope.max * span };
};

/** The same with a resistor beside it, whose slope (1/K) adds to or balances that of the part. */
export const driftWithResistor = (coefficient: Range, resistor: Range, span: number): Range =>
  driftBySlope(add(coefficient, resistor), span);

/**
 * Change of capacitance (fraction, without sign) for a type that only has limits over its whole
 * range. Where in the range the curve bends is not known, so the whole width is the unfavourable
 * end and half of it the typical one.
 */
export const driftByLimits = (change: Range): Range => {
  const width = change.max - change.min;
  return { min: 0, typ: width / 2, max: width };
};

/** Decades of hours that a part has aged for; under one hour it has not. */
export const agedDecades = (hours: number): number => Math.max(0, Math.log10(hours));

/** The law loses its whole capacitance at some time; something is always left. */
const MOST_LOST = 0.99;

/**
 * Loss of capacitance (fraction) by ageing in decades of hours.
 * @param rate fraction per decade
 * @param hours since the part was last hot
 */
export const ageingLoss = (rate: Range, hours: number): Range => {
  const decades = agedDecades(hours);
  const lost = (perDecade: number): number => Math.min(MOST_LOST, perDecade * decades);
  return { min: lost(rate.min), typ: lost(rate.typ), max: lost(rate.max) };
};
