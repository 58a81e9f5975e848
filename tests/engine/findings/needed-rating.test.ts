import { expect, test } from 'vitest';
import { neededRating } from '../../../src/engine/findings/voltage.ts';
import { circumstancesOf, given } from '../assessment/setting.ts';

/** Rating (V) needed of tantalum polymer, whose guideline goes by its rating, at a steady voltage. */
const neededAt = (vdc: number): number =>
  neededRating(
    { type: 'ta-polymer', voltageKind: 'dc' },
    circumstancesOf({
      original: { type: 'ta-polymer' },
      position: 'bulk-rail',
      conditions: given({ vdc, vac: 0, 'v-surge': 0, 't-max': 60 }),
      guideline: 'solid-electrolyte-advice',
    }),
  );

test.each([
  ['nine tenths of 5 V', 4.5, 5],
  ['the last that a rating of 10 V takes', 9, 10],
  ['four fifths of more than 10 V', 9.5, 11.875],
  ['well above', 20, 25],
])('%s', (_what, vdc, rating) => {
  expect(neededAt(vdc)).toBeCloseTo(rating, 9);
});
