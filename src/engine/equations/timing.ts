/** Time (s) that a capacitance takes through a resistance to a share (0 to 1) of a step: R*C*ln(1/(1-x)). */
export const chargingTime = (ohm: number, farad: number, share: number): number =>
  -ohm * farad * Math.log1p(-share);

/** Thresholds of the classic timer chip stand at one and two thirds of its supply. */
const LN2 = Math.LN2;

/**
 * Times (s) of the classic timer chip running free: charged through both resistors, discharged
 * through the lower one, between one and two thirds of the supply (its data sheets).
 */
export const timerAstable = (
  upper: number,
  lower: number,
  farad: number,
): { high: number; low: number } => ({
  high: LN2 * (upper + lower) * farad,
  low: LN2 * lower * farad,
});

/** Pulse (s) of the same chip triggered once: R*C*ln(3). */
export const timerPulse = (ohm: number, farad: number): number => Math.log(3) * ohm * farad;
