import { mapFalling, type Range } from '../quantities/range.ts';

/** Series resistance (ohm) that a loss at a frequency (Hz) stands for: tan delta/(2*pi*f*C). */
export const lossResistance = (
  dissipationFactor: number,
  frequency: number,
  capacitance: number,
): number => dissipationFactor / lossByResistor(frequency, 1, capacitance);

/**
 * Dissipation factor that a resistor (ohm) in series with a capacitance (F) adds at a frequency
 * (Hz): 2*pi*f*R*C.
 */
export const lossByResistor = (frequency: number, resistor: number, capacitance: number): number =>
  2 * Math.PI * frequency * resistor * capacitance;

/** Quality of a dissipation factor: 1/tan delta. */
export const qualityOf = (dissipationFactor: Range): Range =>
  mapFalling(dissipationFactor, (loss) => 1 / loss);
