import { scale, type Range } from '../quantities/range.ts';

/** Times of an absorption test or of a hold, s: charged for long, shorted, then left open. */
export interface AbsorptionTimes {
  short: number;
  open: number;
}

/**
 * How far recovery has gone, in decades: log10((short + open) / short).
 *
 * Relaxation is taken as spread evenly over log time (the Curie-von Schweidler law), so that
 * recovery after a long soak grows with this number; derived, not published.
 */
export const recoveryDecades = ({ short, open }: AbsorptionTimes): number =>
  Math.log10((short + open) / short);

/** Absorption per decade (fraction) from a figure (fraction) and the times of its test. */
export const absorptionPerDecade = (figure: Range, test: AbsorptionTimes): Range =>
  scale(figure, 1 / recoveryDecades(test));

/**
 * Voltage (V) that creeps back during a hold.
 * @param step change of voltage before the hold, V
 * @param perDecade absorption per decade, fraction
 * @param times settling time as `short`, hold time as `open`, s
 */
export const absorptionError = (step: number, perDecade: Range, times: AbsorptionTimes): Range =>
  scale(perDecade, step * recoveryDecades(times));
