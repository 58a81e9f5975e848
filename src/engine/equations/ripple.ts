import { mapFalling, type Range } from '../quantities/range.ts';
import { currentForHeat, heatByCurrent } from './heat.ts';

/**
 * Sag (V, peak to peak) of a capacitor that alone feeds a load between two charging pulses:
 * I/(f*C). An upper bound, since it takes the pulses as short.
 * @param current drawn, A
 * @param frequency of the pulses, twice that of the mains behind a full-wave rectifier, Hz
 */
export const rippleVoltage = (current: number, frequency: number, capacitance: Range): Range =>
  mapFalling(capacitance, (farad) => current / (frequency * farad));

/** RMS value (V) of a triangular ripple peak to peak (V). */
export const triangularRms = (peakToPeak: number): number => peakToPeak / (2 * Math.sqrt(3));

/** Ripple current (A, RMS) and the factor by which a part takes more of it at its frequency. */
export interface RippleShare {
  current: number;
  factor: number;
}

/**
 * Ripple currents of several frequencies as one (A, RMS) at the frequency that the factors are
 * against: heats add up, so that it is the root of the sum of (I/k)^2.
 */
export const rippleTogether = (each: readonly RippleShare[]): number =>
  Math.hypot(...each.map(({ current, factor }) => current / factor));

/** Ripple current (A) that a part takes where a listed one (A) is for another frequency and temperature. */
export const rippleTaken = (listed: number, byFrequency: number, byTemperature: number): number =>
  listed * byFrequency * byTemperature;

/**
 * Kelvin by which a current warms a part that a listed one (A, at the same frequency) warms by so
 * much (K): heat goes by the square.
 */
export const riseByList = (current: number, listed: number, rise: number): number =>
  rise * (current / listed) ** 2;

/** How a body cools in still air. */
export interface Cooling {
  /** Heat (W) for each kelvin that a surface of one square centimetre gives off. */
  ofSquareCentimetre: number;
  /** Power of its surface that the heat of a larger body grows with: below 1, as less goes from each part. */
  power: number;
}

const SQUARE_CM_PER_SQUARE_M = 1e4;

/** Heat (W) that warms a surface (m2) by so much (K) above its surroundings: dT*k*S^n, with S in cm2. */
export const heatForRise = (
  rise: number,
  surface: number,
  { ofSquareCentimetre, power }: Cooling,
): number => rise * ofSquareCentimetre * (surface * SQUARE_CM_PER_SQUARE_M) ** power;

/** Rise (K) of a surface that bodies are compared at: the heat that makes it tells every other. */
export const COMPARED_RISE = 10;

/** Kelvin by which heat (W) warms a surface that gives off so much (W) when it is ten kelvin warmer. */
export const riseByHeat = (heat: number, heatForTen: number): number =>
  (COMPARED_RISE * heat) / heatForTen;

/**
 * Kelvin by which current warms a body above its surroundings: I^2*R/(k*S^n).
 * @param current RMS, A
 * @param resistance in series, ohm
 * @param surface m2
 */
export const canRise = (
  current: number,
  resistance: number,
  surface: number,
  cooling: Cooling,
): number =>
  riseByHeat(heatByCurrent(current, resistance), heatForRise(COMPARED_RISE, surface, cooling));

/** The same turned round: current (A, RMS) that warms a body by so much (K). */
export const currentForRise = (
  rise: number,
  resistance: number,
  surface: number,
  cooling: Cooling,
): number => currentForHeat(heatForRise(rise, surface, cooling), resistance);
