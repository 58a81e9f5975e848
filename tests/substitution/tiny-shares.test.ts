import { expect, test } from 'vitest';
import { figureText } from '../../src/substitution/finding-table.ts';

/**
 * A winding of some nanohenries is a share of ten thousand ohms that nobody wants eight digits of, and
 * where nothing is allowed, any voltage is as many times as much as numbers go to.
 */

const NBSP = '\u00A0';
test.each<[string, [number, number, number], string, string]>([
  ['all of it tiny', [3.43e-9, 9.73e-9, 2.79e-8], 'fraction', 'under 0.0001 %'],
  ['its least end tiny', [3.16e-7, 4.9e-6, 9.49e-6], 'fraction', '0.00049 % (0–0.000949 %)'],
  ['its greatest end alone told', [1e-8, 1e-7, 2e-6], 'fraction', 'under 0.0001 % (0–0.0002 %)'],
  ['one figure, and tiny', [1e-8, 1e-8, 1e-8], 'fraction', 'under 0.0001 %'],
  ['none at all', [0, 0, 0], 'fraction', '0 %'],
  ['below none', [-2e-8, 0, 1e-3], 'fraction', '0 % (0–0.1 %)'],
  ['a usual share', [0.001, 0.002, 0.003], 'fraction', '0.2 % (0.1–0.3 %)'],
  [
    'all of it huge',
    [Number.MAX_VALUE, Number.MAX_VALUE, Number.MAX_VALUE],
    'fraction',
    'over 100 000 %',
  ],
  ['its greatest end huge', [0.167, 3, 98000], 'fraction', '300 % (16.7 % to over 100 000 %)'],
  ['the most that is told', [1, 2, 1000], 'fraction', '200 % (100 % to 100 000 %)'],
  ['a huge figure that is no share', [2e3, 2e3, 2e3], 'V', '2 kV'],
  ['no share', [1e-9, 2e-9, 3e-9], 'V', '2 nV (1–3 nV)'],
])('%s', (_what, [min, typ, max], unit, words) => {
  expect(figureText({ min, typ, max }, unit).replaceAll(NBSP, ' ')).toBe(words);
});
