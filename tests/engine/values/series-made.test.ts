import { expect, test } from 'vitest';
import { finestFor, type SeriesTolerance } from '../../../src/engine/values/series-made.ts';

const rows: SeriesTolerance[] = [
  { series: 'E6', percent: 20 },
  { series: 'E12', percent: 10 },
  { series: 'E24', percent: 5 },
];

test.each<[what: string, tolerance: number, series: string]>([
  ['as wide as a row', 0.1, 'E12'],
  ['as wide but for what a sum leaves behind', 0.1 + 1e-12, 'E12'],
  ['a little wider', 0.1001, 'E6'],
  ['between two rows', 0.07, 'E12'],
  ['wider than all', 0.8, 'E6'],
  ['closer than all', 0.01, 'E24'],
  ['exact', 0, 'E24'],
])('%s', (_what, tolerance, series) => {
  expect(finestFor(rows, tolerance)).toBe(series);
});

test('none where none is listed', () => {
  expect(finestFor([], 0.1)).toBeUndefined();
});
