import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combinePreferred } from '../../../src/engine/values/combine.ts';
import { nearestPreferred } from '../../../src/engine/values/nearest.ts';

describe('combinePreferred', () => {
  it.each([
    [25e3, 'E12', 'sum', [15e3, 10e3]],
    [50e-9, 'E12', 'reciprocal', [100e-9, 100e-9]],
    [32e-6, 'E6', 'sum', [22e-6, 10e-6]],
    [2.35, 'E3', 'reciprocal', [4.7, 4.7]],
    [6.875, 'E6', 'reciprocal', [22, 10]],
  ] as const)('%f of %s: %s of %o', (value, series, join, values) => {
    const [, best] = combinePreferred(value, series, 2);
    expect(best?.join).toBe(join);
    expect(best?.values).toEqual(values);
    expect(best?.error).toBeCloseTo(0, 9);
  });

  it.each([
    [9, 'E12', 8.2],
    [9.2, 'E12', 10],
    [1.2, 'E6', 1],
    [1.3, 'E6', 1.5],
    [0.98, 'E3', 1],
  ] as const)('the single value nearest to %f in %s', (value, series, nearest) => {
    expect(combinePreferred(value, series, 1)).toEqual([
      { join: 'single', values: [nearest], whole: nearest, error: nearest / value - 1 },
    ]);
  });

  it('gives one single value and as many pairs as are asked for, the closest first', () => {
    for (const kept of [1, 3, 5]) {
      const [single, ...pairs] = combinePreferred(25.3e3, 'E12', 2, kept);
      expect(single?.values).toEqual([27e3]);
      expect(pairs.map(({ values }) => values.length)).toEqual(Array(kept).fill(2));
      const errors = pairs.map(({ error }) => Math.abs(error));
      expect(errors).toEqual(errors.toSorted((a, b) => a - b));
    }
  });

  it('adds no part that is lost in the tolerance of another', () => {
    const smallest = combinePreferred(1000.5, 'E12', 2, 100)
      .slice(1)
      .map(({ join, values }) =>
        join === 'sum' ? Math.min(...values) / 1000.5 : 1000.5 / Math.max(...values),
      );
    expect(smallest.length).toBeGreaterThan(1);
    expect(Math.min(...smallest)).toBeGreaterThan(0.9e-3);
  });

  it.each([0, -1, NaN, Infinity])('has no way to make %f', (value) => {
    expect(combinePreferred(value, 'E12', 2)).toEqual([]);
  });

  const wanted = fc.double({ min: -12, max: 7, noNaN: true }).map((power) => 10 ** power);
  const series = fc.constantFrom('E6' as const, 'E12' as const, 'E24' as const);

  it('adds up to what it says', () => {
    fc.assert(
      fc.property(wanted, series, (value, name) => {
        for (const { join, values, whole, error } of combinePreferred(value, name, 2)) {
          const sum = values.reduce((a, b) => a + b, 0);
          const reciprocal = 1 / values.reduce((a, b) => a + 1 / b, 0);
          expect(whole).toBeCloseTo(join === 'reciprocal' ? reciprocal : sum, 15);
          expect(error).toBeCloseTo(whole / value - 1, 9);
        }
      }),
    );
  });

  it('takes of single values the nearest preferred one', () => {
    fc.assert(
      fc.property(wanted, series, (value, name) => {
        const [single] = combinePreferred(value, name, 1);
        const near = nearestPreferred(value, name, { kind: 'same', low: 0.1, high: 10 })[0]?.value;
        const distance = (one = NaN): number => Math.abs(Math.log(one / value));
        expect(distance(single?.whole)).toBeCloseTo(distance(near), 12);
      }),
    );
  });

  it('comes closer with another part than with one less', () => {
    fc.assert(
      fc.property(wanted, (value) => {
        const ways = combinePreferred(value, 'E12', 3, 1);
        const off = (parts: number): number =>
          Math.abs(ways.find(({ values }) => values.length === parts)?.error ?? Infinity);
        expect(off(2) <= off(1) + 1e-3 && off(3) <= off(2) + 1e-3).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});
