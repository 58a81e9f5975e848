import { magnitude } from './drift.ts';
import { mapFalling, mapRising, type Range } from '../quantities/range.ts';

/**
 * Change of a frequency (fraction, without sign) when a capacitance is not what it was designed for:
 * |(C_old/C)^n - 1|.
 * @param capacitance in service, F
 * @param designed marked value of the old part, F
 * @param exponent 1 with a resistor, 1/2 with a coil
 */
export const frequencyShift = (capacitance: Range, designed: number, exponent: number): Range =>
  magnitude(mapFalling(capacitance, (farad) => (designed / farad) ** exponent - 1));

/**
 * Change of a time (fraction, without sign) that goes with R*C: |C/C_old - 1|.
 * @param capacitance in service, F
 * @param designed marked value of the old part, F
 */
export const timeShift = (capacitance: Range, designed: number): Range =>
  magnitude(mapRising(capacitance, (farad) => farad / designed - 1));
