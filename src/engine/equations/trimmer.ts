import { loadedDivider } from './divider.ts';
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

/** A trimmer as a divider, and what hangs on its wiper. */
export interface WiperLoad {
  /** End to end, ohm, above 0. */
  total: number;
  /** Of its total from the lower end, 0 to 1. */
  setting: number;
  /** End to end, V. */
  voltage: number;
  /** From the wiper to the lower end, ohm, above 0. */
  load: number;
  /** Bias current that the next stage draws besides, A. */
  bias: number;
}

/** What stands at the wiper, and what flows. */
export interface AtWiper {
  /** Without any load, V. */
  ideal: number;
  /** V */
  out: number;
  /** Resistance that it looks like, ohm. */
  source: number;
  /** Share of the unloaded voltage that the load takes, 0 to 1. */
  lost: number;
  /** Share that load and bias current take together; the load alone where no voltage stands there. */
  shift: number;
  /** Through the wiper, A. */
  current: number;
  /** In the part of the track that carries more, A. */
  track: number;
}

/** A trimmer as a divider under load, by Thévenin’s theorem. */
export const atWiper = ({ total, setting, voltage, load, bias }: WiperLoad): AtWiper => {
  const { source, lost } = loadedDivider((1 - setting) * total, setting * total, load);
  const ideal = setting * voltage;
  const out = (ideal - bias * source) * (1 - lost);
  const current = out / load + bias;
  const below = setting > 0 ? out / (setting * total) : voltage / total - current;
  return {
    ideal,
    out,
    source,
    lost,
    shift: ideal > 0 ? 1 - out / ideal : lost,
    current,
    // At the upper end the load hangs on the terminal, and no track is left above it.
    track: setting < 1 ? Math.max(below, below + current) : below,
  };
};

/**
 * How far (V) the loaded voltage falls where the contact of the wiper adds a resistance (ohm):
 * (V_o + I_B*R_L)*R_c/(R_S + R_L + R_c).
 */
export const contactJump = (
  { out, source }: Pick<AtWiper, 'out' | 'source'>,
  { load, bias }: Pick<WiperLoad, 'load' | 'bias'>,
  contact: number,
): number => ((out + bias * load) * contact) / (source + load + contact);
