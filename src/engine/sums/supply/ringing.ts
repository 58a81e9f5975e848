import { parallelImpedance, type SeriesBranch } from '../../equations/impedance.ts';
import { selfResonance } from '../../equations/resonance.ts';
import { exactly } from '../../quantities/range.ts';

/** A frequency (Hz) at which an impedance (ohm) is lower or higher than on either side. */
export interface Turn {
  kind: 'lowest' | 'highest between';
  frequency: number;
  impedance: number;
}

const SAMPLES = 400;
const ROUNDS = 40;

/** Where a function of the exponent turns between two ends, within which it turns once. */
const turnBetween = (from: number, to: number, at: (exponent: number) => number): number => {
  let [low, high] = [from, to];
  for (let round = 0; round < ROUNDS; round += 1) {
    const third = (high - low) / 3;
    if (at(low + third) < at(high - third)) high -= third;
    else low += third;
  }
  return (low + high) / 2;
};

/** What stands in the middle of three. */
const kindOf = (left: number, here: number, right: number): Turn['kind'] | undefined => {
  if (here < left && here <= right) return 'lowest';
  return here > left && here >= right ? 'highest between' : undefined;
};

/**
 * Dips and peaks of the impedance of parts in parallel, from a third of the lowest resonance to
 * three times the highest, in order of frequency.
 */
export const ringing = (parts: readonly SeriesBranch[]): Turn[] => {
  const resonances = parts.map(({ inductance, capacitance }) =>
    Math.log10(selfResonance(exactly(inductance), capacitance).typ),
  );
  const from = Math.min(...resonances) - Math.log10(3);
  const step = (Math.max(...resonances) + Math.log10(3) - from) / SAMPLES;
  const at = (exponent: number): number => parallelImpedance(10 ** exponent, parts);
  return Array.from({ length: SAMPLES }, (_, index) => from + index * step).flatMap((place) => {
    const kind = kindOf(at(place - step), at(place), at(place + step));
    if (kind === undefined) return [];
    const lower = kind === 'lowest' ? at : (exponent: number) => -at(exponent);
    const found = turnBetween(place - step, place + step, lower);
    return [{ kind, frequency: 10 ** found, impedance: at(found) }];
  });
};
