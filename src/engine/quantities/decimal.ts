import type { Scale } from './unit.ts';

/**
 * A number times a power of ten without the rounding of a multiplication: 4.7e-9 shifted by 9 is
 * 4.7, not 4.700000000000001.
 */
export const shift = (value: number, power: number): number => {
  if (!Number.isFinite(value)) return value;
  const [mantissa, exponent] = value.toExponential().split('e') as [string, string];
  return Number(`${mantissa}e${String(Number(exponent) + power)}`);
};

/** A number in a written unit, in the SI unit. */
export const toSi = (value: number, { power, factor = 1, offset = 0 }: Scale): number =>
  shift(value, power) * factor + offset;

/** A value in the SI unit, in a written unit. */
export const fromSi = (value: number, { power, factor = 1, offset = 0 }: Scale): number =>
  shift((value - offset) / factor, -power);

/** A number in at most four significant figures, without the noise of binary fractions. */
export const plainNumber = (value: number): string => String(Number(value.toPrecision(4)));
