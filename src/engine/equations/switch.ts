import { mapRising, type Range } from '../quantities/range.ts';
import { shareOf } from './divider.ts';
import { REFERENCE_CELSIUS } from './reference.ts';

/** Share of a signal that stays in a resistance (ohm) before a load (ohm): R/(R + R_L). */
export const seriesLoss = (resistance: Range, load: number): Range =>
  mapRising(resistance, (ohm) => shareOf(ohm, load));

/**
 * How much the gain into a load (ohm) moves while a switch goes from one resistance (ohm) to its
 * greatest: (R_peak - R_rail)/(R_peak + R_L). Both ends are of one part, so they are taken together.
 */
export const gainChange = (peak: Range, rail: Range, load: number): Range => {
  const at = (end: keyof Range): number => Math.max(0, peak[end] - rail[end]) / (peak[end] + load);
  const all = [at('min'), at('typ'), at('max')];
  return { min: Math.min(...all), typ: at('typ'), max: Math.max(...all) };
};

/**
 * Leakage current (A) of a junction that is warmer than the 25 degC its figure is for; below 25 degC
 * the figure is not improved.
 * @param temperature degC
 * @param doubling kelvin that double it
 */
export const leakageWhenWarm = (current: Range, temperature: number, doubling: number): Range => {
  const factor = 2 ** (Math.max(0, temperature - REFERENCE_CELSIUS) / doubling);
  return mapRising(current, (ampere) => ampere * factor);
};
