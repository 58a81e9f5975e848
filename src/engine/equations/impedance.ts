import type { Range } from '../quantities/range.ts';

/** Impedance (ohm) of series resistance (ohm), inductance (H) and capacitance (F) at a frequency (Hz). */
export const seriesImpedance = (
  frequency: number,
  resistance: number,
  inductance: number,
  capacitance: number,
): number => Math.hypot(resistance, seriesReactance(frequency, { inductance, capacitance }));

/** A part as it is at high frequencies: F, ohm and H in series. */
export interface SeriesBranch {
  capacitance: number;
  resistance: number;
  inductance: number;
}

/** Reactance (ohm) of an inductance and a capacitance in series at a frequency (Hz). */
export const seriesReactance = (
  frequency: number,
  { inductance, capacitance }: Pick<SeriesBranch, 'inductance' | 'capacitance'>,
): number => {
  const omega = 2 * Math.PI * frequency;
  return omega * inductance - 1 / (omega * capacitance);
};

/** Impedance (ohm) of such parts in parallel at a frequency (Hz), by the sum of their admittances. */
export const parallelImpedance = (frequency: number, parts: readonly SeriesBranch[]): number => {
  let conductance = 0;
  let susceptance = 0;
  for (const part of parts) {
    const reactance = seriesReactance(frequency, part);
    const square = part.resistance ** 2 + reactance ** 2;
    conductance += part.resistance / square;
    susceptance += reactance / square;
  }
  return 1 / Math.hypot(conductance, susceptance);
};

/**
 * Impedance (ohm) of one part over the spread of its resistance and inductance; at some inductance
 * between its ends it may resonate, where only the resistance is left.
 */
export const impedanceSpan = (
  frequency: number,
  resistance: Range,
  inductance: Range,
  capacitance: number,
): Range => {
  const [least, most] = [inductance.min, inductance.max].map((henry) =>
    seriesReactance(frequency, { inductance: henry, capacitance }),
  ) as [number, number];
  const resonates = least < 0 && most > 0;
  const ends = [Math.abs(least), Math.abs(most)];
  return {
    min: Math.hypot(resistance.min, resonates ? 0 : Math.min(...ends)),
    typ: seriesImpedance(frequency, resistance.typ, inductance.typ, capacitance),
    max: Math.hypot(resistance.max, Math.max(...ends)),
  };
};
