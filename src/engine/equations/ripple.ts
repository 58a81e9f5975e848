import { mapFalling, type Range } from '../quantities/range.ts';

/**
 * Sag (V, from crest to trough) of a capacitor that alone feeds a load between two charging pulses:
 * I/(f*C). An upper bound, since it takes the pulses as short.
 * @param current drawn, A
 * @param frequency of the pulses, twice that of the mains behind a full-wave rectifier, Hz
 */
export const rippleVoltage = (current: number, frequency: number, capacitance: Range): Range =>
  mapFalling(capacitance, (farad) => current / (frequency * farad));

/** Effective value (V) of a triangular ripple from crest to trough (V). */
export const triangularRms = (peakToPeak: number): number => peakToPeak / (2 * Math.sqrt(3));

const SQUARE_CM_PER_SQUARE_M = 1e4;

/** Length over diameter of a usual can. */
const CAN_SHAPE = 1.6;

/** Surface (m2) that cools a can of a volume (m3): its side and its top. */
export const canSurface = (volume: number): number => {
  const diameter = Math.cbrt((4 * volume) / (Math.PI * CAN_SHAPE));
  return (Math.PI / 4) * diameter ** 2 * (1 + 4 * CAN_SHAPE);
};

/**
 * Kelvin by which current warms a can above its surroundings: I^2*R/(beta*S) with
 * beta = 2.3e-3*S^-0.2 W/(K cm2) and S in cm2 (technical notes of an electrolytic maker, section on
 * life).
 * @param current effective value, A
 * @param resistance in series, ohm
 * @param surface m2
 */
export const canRise = (current: number, resistance: number, surface: number): number => {
  const squareCm = surface * SQUARE_CM_PER_SQUARE_M;
  return (current ** 2 * resistance) / (2.3e-3 * squareCm ** 0.8);
};
