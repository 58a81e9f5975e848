import { exactly, timesPositive, type Range } from '../quantities/range.ts';
import { leakageWhenWarm } from './switch.ts';

/**
 * Collector current (A) that leakage alone makes where nothing holds the base: the cutoff current of
 * the collector at 25 degC (A), doubled every so many kelvin above, times the gain and one.
 * @param warm degC
 * @param doubling kelvin that double the leakage of a junction
 */
export const amplifiedLeakage = (
  cutoff: Range,
  gain: Range,
  { warm, doubling }: { warm: number; doubling: number },
): Range => {
  const more = { min: gain.min + 1, typ: gain.typ + 1, max: gain.max + 1 };
  return timesPositive(leakageWhenWarm(cutoff, warm, doubling), more);
};

/** Least current (A) that a share is taken of: where none is worked at, the share is large, and a number. */
const LEAST_WORKING = 1e-12;

/** An amplified leakage (A) as a share of the current that the stage works at (A). */
export const shareOfWorking = (leakage: Range, working: number): Range =>
  timesPositive(leakage, exactly(1 / Math.max(working, LEAST_WORKING)));
