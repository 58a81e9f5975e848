import { exactly, timesPositive, type Range } from '../quantities/range.ts';
import { leakageWhenWarm } from './switch.ts';

/**
 * Collector current (A) that leakage alone makes where nothing holds the base: the cutoff current of
 * the collector at 25 degC (A), doubled every ten kelvin above, times the gain and one.
 */
export const amplifiedLeakage = (cutoff: Range, gain: Range, temperature: number): Range => {
  const more = { min: gain.min + 1, typ: gain.typ + 1, max: gain.max + 1 };
  return timesPositive(leakageWhenWarm(cutoff, temperature), more);
};

/** The same as a share of the current that the stage works at (A). */
export const amplifiedLeakageShare = (
  cutoff: Range,
  gain: Range,
  temperature: number,
  working: number,
): Range =>
  timesPositive(amplifiedLeakage(cutoff, gain, temperature), exactly(1 / Math.max(working, 1e-12)));
