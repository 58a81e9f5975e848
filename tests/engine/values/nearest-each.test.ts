import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestEach } from '../../../src/engine/values/nearest-each.ts';
import { SERIES_NAMES, valuesBetween } from '../../../src/engine/values/series.ts';

const of = (value: number, series: string) =>
  nearestEach(value).find((one) => one.series === series);

describe('values on either side', () => {
  test.each([
    [5e-8, 'E12', 4.7e-8, 5.6e-8],
    [5e-8, 'E24', 4.7e-8, 5.1e-8],
    [4.7e-9, 'E6', 4.7e-9, 4.7e-9],
    [9.5e3, 'E3', 4.7e3, 1e4],
    [1e-6, 'E192', 1e-6, 1e-6],
  ])('%s in %s', (value, series, below, above) => {
    expect(of(value, series)).toEqual({ series, below, above });
  });

  test.each([0, -1, NaN, Infinity])('none of %s', (value) => {
    expect(nearestEach(value)).toEqual([]);
  });

  test('are the two next to it, in every series', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-13, max: 1e8, noNaN: true }), (value) => {
        const all = nearestEach(value);
        expect(all.map(({ series }) => series)).toEqual(SERIES_NAMES);
        for (const { series, below, above } of all) {
          expect(below).toBeLessThanOrEqual(value * (1 + 1e-9));
          expect(above).toBeGreaterThanOrEqual(value * (1 - 1e-9));
          const between = valuesBetween(series, below, above);
          expect(between.length).toBeLessThanOrEqual(2);
        }
      }),
    );
  });
});
