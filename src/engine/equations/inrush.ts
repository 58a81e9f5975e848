/**
 * Current (A) at the first instant after switching on: only resistance limits it.
 * @param voltage peak of what charges the capacitor, V
 * @param resistance of transformer, rectifier and capacitor together, ohm
 */
export const switchOnPeak = (voltage: number, resistance: number): number => voltage / resistance;

/**
 * Surge at switch-on as the height (A) of the half sine that heats the rectifier as much, of the length
 * that its sheet rates it for.
 *
 * Charging a capacitor through a resistance has an I2t of V^2*C/(2*R), a half sine of height I and
 * length t one of I^2*t/2. Setting them alike gives V*sqrt(C/(R*t)), whatever the mains and the rectifier;
 * a capacitor too large to be charged within a half cycle draws V/R and no more. Worked out from these
 * identities. The voltage is taken to stand at its peak until the capacitor is charged, so that it errs on
 * the high side, by a third where R*C is about a half cycle; half cycles of V/R on 50 Hz, which only
 * R*C above 50 ms makes, heat by up to a tenth more than it says.
 *
 * @param voltage peak of what charges the capacitor, V
 * @param resistance of transformer, rectifier and capacitor together, ohm
 * @param capacitance F
 * @param halfSine length of the half sine of the rating, s
 */
export const surgeCurrent = (
  voltage: number,
  resistance: number,
  capacitance: number,
  halfSine: number,
): number =>
  switchOnPeak(voltage, resistance) * Math.min(1, Math.sqrt((resistance * capacitance) / halfSine));

/** What the surge through a part at switch-on is held against. */
export interface OwnSurge {
  /** V, at switch-on */
  voltage: number;
  /** Resistance in front of the part, ohm. */
  source: number;
  /** ESR of the part, ohm. */
  own: number;
  /** V */
  rated: number;
  /** Resistance of the circuit in which the maker proves the part, ohm. */
  test: number;
}

/**
 * Surge through a solid tantalum part as a share of what it is proved with:
 * V/(R_S + ESR) over U_R/(R_0 + ESR) (technical summary of a tantalum maker).
 */
export const surgeShare = ({ voltage, source, own, rated, test }: OwnSurge): number =>
  switchOnPeak(voltage, source + own) / switchOnPeak(rated, test + own);

/** Charge (C) that a capacitance (F) holds at a voltage (V). */
export const storedCharge = (capacitance: number, voltage: number): number => capacitance * voltage;

/** Energy (J) that a capacitance (F) holds at a voltage (V). */
export const storedEnergy = (capacitance: number, voltage: number): number =>
  (capacitance * voltage ** 2) / 2;
