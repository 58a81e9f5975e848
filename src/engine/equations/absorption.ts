import { scale, type Range } from '../quantities/range.ts';

/** Times of an absorption test or of a hold, s: charged, shorted, then left open. */
export interface AbsorptionTimes {
  /** How long it was charged; without it, so long that everything slow has followed. */
  soak?: number;
  short: number;
  open: number;
}

/**
 * How far recovery has gone, in decades: log10((short + open) / short), less what a soak of finite
 * length left uncharged, log10((soak + short + open) / (soak + short)).
 *
 * Relaxation is taken as spread evenly over log time (the Curie-von Schweidler law), so that
 * recovery grows with this number; derived, not published. By superposition a soak of finite length
 * is a long one less what a step at its beginning would still give back.
 */
export const recoveryDecades = ({ soak, short, open }: AbsorptionTimes): number =>
  // log1p keeps its digits where the open time is a small part of the others.
  (Math.log1p(open / short) - (soak === undefined ? 0 : Math.log1p(open / (soak + short)))) /
  Math.LN10;

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
