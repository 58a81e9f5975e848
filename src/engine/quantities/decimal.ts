import type { Scale } from './unit.ts';

/**
 * A number times a power of ten without the rounding of a multiplication: 4.7e-9 shifted by 9 is
 * 4.7, not 4.700000000000001.
 */
export const shift = (value: number, power: number): number => {
  if (value === 0 || !Number.isFinite(value)) return value;
  const [mantissa, exponent] = value.toExponential().split('e') as [string, string];
  return Number(`${mantissa}e${String(Number(exponent) + power)}`);
};

/**
 * A number to some significant digits, halves away from zero as written: 4.935 to three digits is
 * 4.94, though the nearest binary number lies a little below the half.
 */
export const roundDigits = (value: number, digits: number): number => {
  if (value === 0 || !Number.isFinite(value)) return value;
  const [mantissa, exponent] = Math.abs(value).toExponential().split('e') as [string, string];
  const figures = Math.round(Number(`${mantissa}e${String(digits - 1)}`));
  const size = Number(`${String(figures)}e${String(Number(exponent) - digits + 1)}`);
  return value < 0 ? -size : size;
};

/** A number in a written unit, in the SI unit. */
export const toSi = (value: number, { power, factor = 1, offset = 0 }: Scale): number =>
  shift(value, power) * factor + offset;

/** A value in the SI unit, in a written unit. */
export const fromSi = (value: number, { power, factor = 1, offset = 0 }: Scale): number =>
  shift((value - offset) / factor, -power);
