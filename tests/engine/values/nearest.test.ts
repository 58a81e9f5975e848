import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestMade } from '../../../src/engine/values/nearest.ts';
import {
  isSeriesName,
  nearestPreferred,
  nearestVoltage,
  valuesBetween,
  type SeriesName,
  type ValuePolicy,
} from '../../../src/engine/values/index.ts';
import { decadeOf, SERIES_NAMES } from '../../../src/engine/values/series.ts';

const atLeast = (low: number, high: number): ValuePolicy => ({ kind: 'at-least', low, high });
const same = (low: number, high: number): ValuePolicy => ({ kind: 'same', low, high });
const within = (low: number, high: number): ValuePolicy => ({ kind: 'window', low, high });

describe('old values that are made no more', () => {
  const cases: [
    wanted: number,
    series: SeriesName,
    policy: ValuePolicy | undefined,
    allowed: number[],
    refused: number,
  ][] = [
    [0.05e-6, 'E12', undefined, [47e-9], 56e-9],
    [0.05e-6, 'E6', undefined, [47e-9], 68e-9],
    [0.02e-6, 'E6', undefined, [22e-9], 15e-9],
    [0.25e-6, 'E12', undefined, [270e-9], 220e-9],
    [25e-6, 'E12', undefined, [27e-6], 22e-6],
    [25e-6, 'E12', same(0.97, 1.03), [], 27e-6],
    [25e-6, 'E6', atLeast(1, 2), [33e-6, 47e-6], 22e-6],
    [25e-6, 'E12', atLeast(1, 1.5), [27e-6, 33e-6], 22e-6],
    [25e-6, 'E12', atLeast(0.8, 1.5), [27e-6, 22e-6, 33e-6], 18e-6],
    [24e-6, 'E12', atLeast(0.8, 1.2), [22e-6, 27e-6], 18e-6],
    [25e-6, 'E6', within(0.8, 1.4), [22e-6, 33e-6], 15e-6],
    [500e-12, 'E12', undefined, [470e-12], 560e-12],
    [500e-12, 'E24', undefined, [510e-12, 470e-12], 560e-12],
    [500e-12, 'E6', undefined, [470e-12], 680e-12],
    [8e-6, 'E12', undefined, [8.2e-6], 6.8e-6],
    [8e-6, 'E24', undefined, [8.2e-6, 7.5e-6], 9.1e-6],
    [8e-6, 'E6', atLeast(1, 2), [10e-6, 15e-6], 6.8e-6],
    [16e-6, 'E6', atLeast(1, 2), [22e-6], 15e-6],
    [9.7, 'E12', undefined, [10], 8.2],
    [9.7, 'E96', same(0.99, 1.01), [9.76], 9.53],
    [1.02, 'E6', undefined, [1], 1.5],
    [10, 'E3', undefined, [10], 4.7],
    [1, 'E3', same(0.4, 2.5), [1, 0.47, 2.2], 0.22],
    [47e-9, 'E6', within(1, 1), [47e-9], 33e-9],
  ];
  test.each(cases)('%s in %s', (wanted, series, policy, allowed, refused) => {
    const found = nearestPreferred(wanted, series, policy);
    expect(found.filter((one) => one.allowed).map((one) => one.value)).toEqual(allowed);
    expect(found.filter((one) => !one.allowed).map((one) => one.value)).toEqual([refused]);
    expect(found.at(-1)?.value).toBe(refused);
  });

  test('each says how it lies to the wanted value', () => {
    expect(nearestPreferred(0.05e-6, 'E12')).toEqual([
      { value: 47e-9, ratio: 0.94, allowed: true },
      { value: 56e-9, ratio: 1.12, allowed: false },
    ]);
  });

  test('of two equally near, at-least puts the larger first', () => {
    const wanted = Math.sqrt(2.2 * 4.7);
    const order = (policy: ValuePolicy): (number | undefined)[] =>
      nearestPreferred(wanted, 'E3', policy)
        .slice(0, 2)
        .map(({ value }) => value);
    expect(order(atLeast(0.5, 2))).toEqual([4.7, 2.2]);
    expect(order(within(0.5, 2))).toEqual([2.2, 4.7]);
  });

  test.each([0, -1, -0, NaN, Infinity, -Infinity])('%s has no neighbours', (value) => {
    expect(nearestPreferred(value, 'E24')).toEqual([]);
  });

  test('a policy without bounds ends somewhere', () => {
    const found = nearestPreferred(1, 'E3', within(0, Infinity));
    expect(found.map(({ value }) => value)).toHaveLength(43);
    expect(nearestPreferred(1, 'E3', within(NaN, NaN)).map(({ allowed }) => allowed)).toEqual([
      false,
    ]);
  });
});

describe('what others publish about the series', () => {
  interface Statement {
    kind: string;
    series: SeriesName;
    of: string;
    expected: string;
    source: string;
  }
  const table = new URL('../../published/e-series.csv', import.meta.url);
  const statements: Statement[] = parse(readFileSync(table, 'utf8'), { columns: true });
  const nearest = statements.filter(({ kind }) => kind === 'nearest');
  const member = statements.filter(({ kind }) => kind === 'member');

  test.each(nearest)(
    'nearest to $of in $series is $expected ($source)',
    ({ series, of, expected }) => {
      const [best] = nearestPreferred(Number(of), series, within(0.5, 2));
      expect((best?.value ?? NaN) / Number(expected)).toBeCloseTo(1, 9);
    },
  );

  test.each(member)('$of in $series: $expected ($source)', ({ series, of, expected }) => {
    const exact = nearestPreferred(Number(of), series, same(1, 1)).some(({ allowed }) => allowed);
    expect(exact).toBe(expected === 'yes');
  });
});

describe('in every series', () => {
  const series = fc.constantFrom(...SERIES_NAMES);
  const value = fc
    .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -15, max: 12 }))
    .map(([mantissa, decade]) => Number(`${String(mantissa)}e${String(decade)}`));
  const nearest = (wanted: number, name: SeriesName): number =>
    nearestPreferred(wanted, name, within(0.01, 100))[0]?.value ?? NaN;

  test('a member is its own nearest, whatever the decade', () => {
    fc.assert(
      fc.property(series, fc.nat(), fc.integer({ min: -15, max: 12 }), (name, index, decade) => {
        const values = decadeOf(name);
        const member = Number(`${String(values[index % values.length])}e${String(decade)}`);
        expect(nearest(member, name)).toBe(member);
        expect(nearestPreferred(member, name)[0]).toMatchObject({ value: member, ratio: 1 });
      }),
    );
  });

  test('no value is further than half of the widest step away', () => {
    fc.assert(
      fc.property(series, value, (name, wanted) => {
        const values = [...decadeOf(name), 10];
        const steps = values.slice(1).map((next, index) => Math.log(next / (values[index] ?? NaN)));
        const widest = Math.max(...steps);
        expect(Math.abs(Math.log(nearest(wanted, name) / wanted))).toBeLessThanOrEqual(
          widest / 2 + 1e-9,
        );
      }),
    );
  });

  test('a larger value never has a smaller neighbour', () => {
    fc.assert(
      fc.property(series, value, value, (name, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(nearest(low, name)).toBeLessThanOrEqual(nearest(high, name));
      }),
    );
  });

  test('the nearest is the same in pF as in F', () => {
    fc.assert(
      fc.property(series, fc.integer({ min: 100, max: 999 }), (name, figures) => {
        const inFarad = nearest(Number(`${String(figures)}e-12`), name);
        expect(inFarad).toBe(Number(`${String(nearest(figures, name))}e-12`));
      }),
    );
  });

  test('the allowed ones come first and the nearest of them leads', () => {
    fc.assert(
      fc.property(
        series,
        value,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        (name, wanted, low, high) => {
          const found = nearestPreferred(wanted, name, { kind: 'same', low, high });
          const allowed = found.filter((one) => one.allowed);
          expect(found.slice(0, allowed.length)).toEqual(allowed);
          expect(found.length - allowed.length).toBe(1);
          expect(allowed.every(({ ratio }) => ratio >= low - 1e-8 && ratio <= high + 1e-8)).toBe(
            true,
          );
          const distances = allowed.map(({ ratio }) => Math.abs(Math.log(ratio)));
          distances.slice(1).forEach((distance, index) => {
            expect(distance).toBeGreaterThanOrEqual((distances[index] ?? NaN) - 1e-8);
          });
          const all = valuesBetween(name, wanted * low, wanted * high);
          expect(allowed.length).toBeGreaterThanOrEqual(all.length);
        },
      ),
    );
  });

  test('a power of ten is a member of every decade', () => {
    for (let decade = -300; decade <= 300; decade += 1) {
      const value = Number(`1e${String(decade)}`);
      expect(valuesBetween('E3', value, value)).toEqual([value]);
    }
  });

  test('values between two limits are in order and hold both ends', () => {
    expect(valuesBetween('E3', 1e-9, 1e-8)).toEqual([1e-9, 2.2e-9, 4.7e-9, 1e-8]);
    expect(valuesBetween('E6', 6.9e-12, 9.9e-12)).toEqual([]);
    expect(valuesBetween('E6', 2, 1)).toEqual([]);
    expect(valuesBetween('E6', 0, 1)).toEqual([]);
    expect(valuesBetween('E6', 1, Infinity)).toEqual([]);
  });
});

describe('rated voltages', () => {
  const offered = [100, 63, 250, 400, 630, 1000, 160];
  const cases: [wanted: number, rating: number | undefined][] = [
    [600, 630],
    [630, 630],
    [631, 1000],
    [50, 63],
    [1, 63],
    [1001, undefined],
    [NaN, undefined],
    [Infinity, undefined],
  ];
  test.each(cases)('%s V is served by %s V', (wanted, rating) => {
    expect(nearestVoltage(wanted, offered)).toBe(rating);
  });

  test('nothing offered, nothing found', () => {
    expect(nearestVoltage(10, [])).toBeUndefined();
    expect(nearestVoltage(10, [Infinity, NaN])).toBeUndefined();
  });
});

describe('nearestMade', () => {
  test.each([[[5, 20]], [[20, 5]]])(
    'puts the larger of two equally near first only where more is welcome: %o',
    (made) => {
      const values = (policy: ValuePolicy): number[] =>
        nearestMade(10, policy, () => made).map(({ value }) => value);
      expect(values(atLeast(0.4, 2.5))).toEqual([20, 5]);
      expect(values(within(0.4, 2.5))).toEqual([5, 20]);
      expect(values(same(0.4, 2.5))).toEqual([5, 20]);
    },
  );

  test.each([0, -1, NaN, Infinity])('asks for nothing near %f', (wanted) => {
    expect(nearestMade(wanted, within(0.5, 2), () => [1])).toEqual([]);
  });
});

test('a name of a series is told from any other', () => {
  for (const name of SERIES_NAMES) expect(isSeriesName(name)).toBe(true);
  for (const name of ['E13', 'e12', '', 'toString']) expect(isSeriesName(name)).toBe(false);
});
