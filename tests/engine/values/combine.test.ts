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
  ] as const)('%f of %s: %s of %o', (value, series, join, values) => {
    const [, best] = combinePreferred(value, series, 2);
    expect(best?.join).toBe(join);
    expect(best?.values).toEqual(values);
    expect(best?.error).toBeCloseTo(0, 9);
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
        return off(2) <= off(1) + 1e-3 && off(3) <= off(2) + 1e-3;
      }),
      { numRuns: 40 },
    );
  });
});
