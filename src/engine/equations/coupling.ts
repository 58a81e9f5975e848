import { mapFalling, type Range } from '../quantities/range.ts';

/** Corner frequency (Hz) of a capacitance (F) into a resistance (ohm): 1/(2*pi*R*C). */
export const cornerFrequency = (capacitance: Range, resistance: number): Range =>
  mapFalling(capacitance, (farad) => 1 / (2 * Math.PI * resistance * farad));

/** Resistance (ohm) that puts the corner of a capacitance (F) at a frequency (Hz). */
export const resistanceForCorner = (capacitance: number, frequency: number): number =>
  1 / (2 * Math.PI * frequency * capacitance);

/** Capacitance (F) that has its corner with a resistance (ohm) at a frequency (Hz). */
export const capacitanceForCorner = (resistance: number, frequency: number): number =>
  1 / (2 * Math.PI * frequency * resistance);

/** Share (0 to 1) of the signal that stands across the capacitor: 1/sqrt(1 + (f/fc)^2). */
export const shareAcross = (frequency: number, corner: number): number =>
  1 / Math.sqrt(1 + (frequency / corner) ** 2);

/** Phase (degrees) by which a high-pass leads at a frequency: atan(fc/f). */
export const phaseLead = (frequency: number, corner: number): number =>
  (Math.atan(corner / frequency) * 180) / Math.PI;

/** Level (dB, zero or below) that passes a corner: -10*log10(1 + (fc/f)^2). */
export const levelPassed = (frequency: number, corner: number): number =>
  -10 * Math.log10(1 + (corner / frequency) ** 2);
