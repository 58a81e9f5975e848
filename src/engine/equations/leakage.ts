import { lesserOf, mapFalling, mapRising, type Range } from '../quantities/range.ts';
import { shareOf } from './divider.ts';
import { edgeByCurrent } from './edge.ts';
import { REFERENCE_CELSIUS } from './reference.ts';

/**
 * Insulation of a part that is warmer than the 25 degC its figure is for, in the unit of the figure: a
 * resistance (ohm), or the time constant (s) that it is known by.
 * @param insulation at 25 degC
 * @param halving kelvin per halving
 * @param temperature of the part, degC; below 25 degC the figure is not improved
 */
export const insulationAt = (insulation: Range, halving: Range, temperature: number): Range => {
  const kelvin = Math.max(0, temperature - REFERENCE_CELSIUS);
  return {
    min: insulation.min * 2 ** (-kelvin / halving.min),
    typ: insulation.typ * 2 ** (-kelvin / halving.typ),
    max: insulation.max * 2 ** (-kelvin / halving.max),
  };
};

/**
 * Insulation resistance (ohm) of a part: tau/C or a fixed resistance, whichever is less. Makers
 * promise both, because below some value leakage over the body and along the leads decides.
 * @param timeConstant of the dielectric, s
 * @param capacitance marked, F
 * @param cap resistance that no part exceeds however small, ohm
 */
export const insulationResistance = (
  timeConstant: Range,
  capacitance: number,
  cap?: Range,
): Range => {
  const byDielectric = mapRising(timeConstant, (tau) => tau / capacitance);
  return cap === undefined ? byDielectric : lesserOf(byDielectric, cap);
};

/**
 * Leakage current (A) of a part: V/R_ins, but no less than the maker's floor.
 * @param voltage across the part, V, zero or above
 * @param insulation resistance at the working temperature, ohm
 * @param floor leakage that no part is promised to stay below, A
 */
export const leakageThrough = (voltage: number, insulation: Range, floor = 0): Range => {
  const current = mapFalling(insulation, (ohm) => voltage / ohm);
  // A floor is a limit of what is promised, so it moves only the unfavourable end.
  return voltage === 0 ? current : { ...current, max: Math.max(current.max, floor) };
};

/** What the leakage of a part follows from, at 25 degC. */
export interface Insulator {
  /** Insulation time constant, s. */
  constant: Range;
  /** Resistance that no part exceeds however small, ohm. */
  most?: Range | undefined;
  /** Kelvin per halving. */
  halving: Range;
  /** Leakage that no part is promised to stay below, A. */
  floor?: number | undefined;
}

/**
 * Insulation resistance (ohm) of a part that is warm, and the current (A) that leaks through it.
 * What limits small parts, dirt and damp on their bodies, suffers from heat as the dielectric does.
 * @param capacitance marked, F
 * @param voltage across the part, V
 * @param temperature degC
 */
export const leakageOfPart = (
  { constant, most, halving, floor }: Insulator,
  capacitance: number,
  voltage: number,
  temperature: number,
): { insulation: Range; current: Range } => {
  const cold = insulationResistance(constant, capacitance, most);
  const insulation = insulationAt(cold, halving, temperature);
  return { insulation, current: leakageThrough(voltage, insulation, floor) };
};

/**
 * Voltage (V) that leaks through a part into the resistance behind it: V*R/(R_ins + R).
 * @param voltage across part and resistance together, V
 * @param resistance behind the part, ohm
 * @param insulation resistance of the part, ohm
 */
export const leakageOffset = (voltage: number, resistance: number, insulation: Range): Range =>
  mapFalling(insulation, (ohm) => voltage * shareOf(resistance, ohm));

/**
 * Droop (V) of a held voltage by two currents, I*t/C each, and the part itself as a share (0 to 1) of
 * the typical whole. Its own insulation takes no more than is there; what switch and amplifier draw
 * runs on, from nought as well, until a supply stops it.
 * @param voltage held, V
 * @param capacitance that holds it, F
 * @param other current of switch, amplifier and board, A
 * @param own leakage current of the part itself, A
 * @param time of the hold, s
 */
export const droop = (
  voltage: number,
  capacitance: number,
  other: Range,
  own: Range,
  time: number,
): { total: Range; ownShare: number } => {
  const over = (current: Range): Range =>
    mapRising(current, (ampere) => edgeByCurrent(ampere, capacitance) * time);
  const [byOther, byPart] = [over(other), over(own)];
  const total = {
    min: byOther.min + Math.min(voltage, byPart.min),
    typ: byOther.typ + Math.min(voltage, byPart.typ),
    max: byOther.max + Math.min(voltage, byPart.max),
  };
  const typical = byOther.typ + byPart.typ;
  return { total, ownShare: typical > 0 ? byPart.typ / typical : 0 };
};
