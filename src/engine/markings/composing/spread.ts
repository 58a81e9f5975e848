import { exactly, type Range } from '../../quantities/range.ts';
import type { TemperatureCharacteristic, Tolerance } from '../meanings/reading.ts';

/** The ends of a value with its tolerance. */
export const withTolerance = (value: number, tolerance: Tolerance | undefined): Range => {
  if (tolerance === undefined) return exactly(value);
  const { minus, plus, unit } = tolerance;
  return unit === 'fraction'
    ? { min: value * (1 - minus), typ: value, max: value * (1 + plus) }
    : { min: Math.max(0, value - minus), typ: value, max: value + plus };
};

/** Largest fall and rise over the temperature span, as fractions. */
const changeOver = (characteristic: TemperatureCharacteristic): { min: number; max: number } => {
  const { capacitanceChange, coefficient, tReference, tMin, tMax } = characteristic;
  if (capacitanceChange !== undefined) return capacitanceChange;
  if (coefficient === undefined) return { min: 0, max: 0 };
  const ends = [tMin - tReference, tMax - tReference].flatMap((difference) => [
    coefficient.min * difference,
    coefficient.max * difference,
  ]);
  return { min: Math.min(0, ...ends), max: Math.max(0, ...ends) };
};

/** The ends of a value over the temperature span, with its tolerance. */
export const overTemperature = (
  value: number,
  tolerance: Tolerance | undefined,
  characteristic: TemperatureCharacteristic,
): Range => {
  const range = withTolerance(value, tolerance);
  const change = changeOver(characteristic);
  return {
    min: Math.max(0, range.min * (1 + change.min)),
    typ: value,
    max: range.max * (1 + change.max),
  };
};
