import type { Range } from '../quantities/range.ts';

/** Series resistance (ohm) at a frequency (Hz). */
export interface AtFrequency {
  frequency: number;
  resistance: Range;
}

/**
 * Series resistance (ohm) between two frequencies (Hz) at which it is known: a steady part and one
 * that falls with 1/f, a + b/f. Leads and electrolyte make the one, a dielectric of steady loss the
 * other. Never outside the two.
 */
export const resistanceBetween = (
  lower: AtFrequency,
  upper: AtFrequency,
  frequency: number,
): Range => {
  const above = 1 / frequency - 1 / upper.frequency;
  const share = above / (1 / lower.frequency - 1 / upper.frequency);
  const mix = (low: number, high: number): number => high + share * (low - high);
  return {
    min: mix(lower.resistance.min, upper.resistance.min),
    typ: mix(lower.resistance.typ, upper.resistance.typ),
    max: mix(lower.resistance.max, upper.resistance.max),
  };
};
