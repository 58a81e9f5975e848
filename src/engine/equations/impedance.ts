import type { Range } from '../quantities/range.ts';

/** Impedance (ohm) of series resistance (ohm), inductance (H) and capacitance (F) at a frequency (Hz). */
export const seriesImpedance = (
  frequency: number,
  resistance: number,
  inductance: number,
  capacitance: number,
): number => {
  const omega = 2 * Math.PI * frequency;
  return Math.hypot(resistance, omega * inductance - 1 / (omega * capacitance));
};

/** The same over the spread of resistance and inductance of one part. */
export const impedanceSpan = (
  frequency: number,
  resistance: Range,
  inductance: Range,
  capacitance: number,
): Range => {
  const ends = [inductance.min, inductance.typ, inductance.max].map((henry) =>
    seriesImpedance(frequency, 0, henry, capacitance),
  );
  return {
    min: Math.hypot(resistance.min, Math.min(...ends)),
    typ: seriesImpedance(frequency, resistance.typ, inductance.typ, capacitance),
    max: Math.hypot(resistance.max, Math.max(...ends)),
  };
};
