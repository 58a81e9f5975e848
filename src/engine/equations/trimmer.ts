import { currentForHeat } from './heat.ts';

/** How a trimmer is used: two terminals by ohms, three by their ratio. */
export type TrimmerUse = 'rheostat' | 'divider';

/** An old trimmer as it was read out of circuit, and a new one. */
export interface Presetting {
  use: TrimmerUse;
  /** Old reading between the wiper and the end in use, ohm. */
  reading: number;
  /** Old total, end to end, ohm. */
  oldTotal: number;
  /** New total, end to end, ohm. */
  total: number;
  /** Turns from end to end of the new one. */
  turns: number;
}

/** What the new one has to read, and how far that is. */
export interface Preset {
  /** Between the same two terminals, ohm; more than the total where it does not reach. */
  set: number;
  /** From the end in use. */
  fromEnd: number;
  /** ohm */
  perTurn: number;
  /** Of the old setting, and of the new one. */
  ratio: number;
  newRatio: number;
}

/** The setting of an old trimmer carried over: the same ohms as a rheostat, the same ratio as a divider. */
export const presetOf = ({ use, reading, oldTotal, total, turns }: Presetting): Preset => {
  const ratio = reading / oldTotal;
  const set = use === 'divider' ? ratio * total : reading;
  const perTurn = total / turns;
  return { set, fromEnd: set / perTurn, perTurn, ratio, newRatio: set / total };
};

/** Turns to go from what a trimmer reads to what it has to (ohm), at so many ohm a turn. */
export const turnsToGo = (set: number, now: number, perTurn: number): number =>
  (set - now) / perTurn;

/** Finest step (ohm) that can be set of a total (ohm), from its share. */
export const finestStep = (share: number, total: number): number => share * total;

/**
 * Current (A) that a rheostat carries at any setting, from the power (W) of its whole element (ohm):
 * the part in use has power in proportion. MIL-PRF-22097J, 3.5.
 */
export const wiperCurrent = (watt: number, ohm: number): number => currentForHeat(watt, ohm);

/** What sheets give as "so much per cent or so many ohms, whichever is greater", in ohm. */
export const greaterOf = (share: number, ohm: number, total: number): number =>
  Math.max(share * total, ohm);
