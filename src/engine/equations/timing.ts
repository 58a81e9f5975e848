/** Time (s) that a capacitance takes through a resistance to a share (0 to 1) of a step: R*C*ln(1/(1-x)). */
export const chargingTime = (ohm: number, farad: number, share: number): number =>
  -ohm * farad * Math.log1p(-share);

/** What leaks out of a timing capacitor (A), and the supply (V) that charges it. */
export interface TimerLeak {
  leak: number;
  supply: number;
}

const NO_LEAK: TimerLeak = { leak: 0, supply: 1 };

/** Thresholds of the classic timer chip stand at one and two thirds of its supply. */
const THIRD = 1 / 3;

/**
 * Time (s) from one share of the supply up to two thirds of it: the capacitor makes for the supply less
 * what the leakage drops across the resistor. Nothing where it never gets there.
 */
const chargedUp = (
  from: number,
  ohm: number,
  farad: number,
  { leak, supply }: TimerLeak,
): number | undefined => {
  const aim = 1 - (leak * ohm) / supply;
  return aim > 2 * THIRD ? ohm * farad * Math.log((aim - from) / (aim - 2 * THIRD)) : undefined;
};

/**
 * Times (s) of the classic timer chip running free: charged through both resistors, discharged
 * through the lower one, between one and two thirds of the supply (its data sheets); with the leakage
 * of its capacitor, which slows the one and helps the other. Nothing where it never gets there.
 */
export const timerAstable = (
  upper: number,
  lower: number,
  farad: number,
  leaking = NO_LEAK,
): { high: number; low: number } | undefined => {
  const high = chargedUp(THIRD, upper + lower, farad, leaking);
  const aim = (leaking.leak * lower) / leaking.supply;
  const low = lower * farad * Math.log((2 * THIRD + aim) / (THIRD + aim));
  return high === undefined ? undefined : { high, low };
};

/** Pulse (s) of the same chip triggered once: R*C*ln(3), and longer with a leakage. */
export const timerPulse = (ohm: number, farad: number, leaking = NO_LEAK): number | undefined =>
  chargedUp(0, ohm, farad, leaking);
