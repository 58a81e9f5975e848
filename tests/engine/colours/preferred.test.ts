import { describe, expect, test } from 'vitest';
import {
  mantissaOf,
  preferenceOf,
  standingOf,
  type Standing,
} from '../../../src/engine/colours/preferred.ts';
import { groupsOf, meaningsOf, type MeaningRow } from '../../../src/engine/colours/scheme.ts';
import { weightsOf } from '../../../src/engine/colours/weigh.ts';
import { catalogue } from '../markings/tables.ts';

const within = (percent: number) => ({
  minus: percent / 100,
  plus: percent / 100,
  unit: 'fraction' as const,
});

/** The series by their tolerances, and numbers that were usual before there were series. */
const withOld = (...old: number[]) => ({
  seriesTolerances: catalogue.markings.seriesTolerances,
  oldMantissas: old.map((value) => ({ value })),
});

describe('figures among the preferred numbers of IEC 60063', () => {
  test.each([
    ['47', 4.7],
    ['470', 4.7],
    ['047', 4.7],
    ['1', 1],
    ['127', 1.27],
    ['00', undefined],
  ])('%s is %s', (figures, mantissa) => {
    expect(mantissaOf(figures)).toBe(mantissa);
  });

  // The coarsest series that has the number, and whether it suits the tolerance.
  test.each<[figures: string, percent: number, series: string | undefined, suits: boolean]>([
    ['47', 20, 'E3', true],
    ['15', 20, 'E6', true],
    ['12', 20, 'E12', false],
    ['12', 10, 'E12', true],
    ['51', 10, 'E24', false],
    ['51', 5, 'E24', true],
    ['105', 5, 'E48', false],
    ['105', 2, 'E48', true],
    ['102', 2, 'E96', false],
    ['102', 1, 'E96', true],
    ['101', 1, 'E192', false],
    ['101', 0.5, 'E192', true],
    ['101', 0.1, 'E192', true],
    // Close parts are sold in E24 as well.
    ['51', 1, 'E24', true],
    ['12', 0.5, 'E12', true],
    // Between two rows that for the wider tolerance, as markings are read.
    ['105', 3, 'E48', false],
    ['51', 3, 'E24', true],
    ['15', 80, 'E6', true],
    ['50', 5, undefined, false],
    ['211', 1, undefined, false],
  ])('%s within %s %%', (figures, percent, series, suits) => {
    const found = preferenceOf(figures, within(percent), withOld(5));
    expect([found.series, found.suits]).toEqual([series, suits]);
    expect(found.old).toBe(figures === '50');
  });

  test('the wider side of a tolerance counts, and one in farad says nothing', () => {
    const wide = { minus: 0.1, plus: 0.5, unit: 'fraction' as const };
    expect(preferenceOf('12', wide, withOld()).suits).toBe(false);
    expect(preferenceOf('12', { ...wide, minus: 0.5, plus: 0.1 }, withOld()).suits).toBe(false);
    expect(preferenceOf('102', { minus: 1e-12, plus: 1e-12, unit: 'F' }, withOld()).suits).toBe(
      true,
    );
    expect(preferenceOf('102', undefined, withOld()).suits).toBe(true);
  });

  test('which series a tolerance is made in is what the table says', () => {
    const rows = withOld().seriesTolerances.map((row) => ({ ...row, percent: row.percent / 2 }));
    const tables = { ...withOld(), seriesTolerances: rows };
    expect(preferenceOf('12', within(10), withOld()).suits).toBe(true);
    expect(preferenceOf('12', within(10), tables).suits).toBe(false);
  });

  test('noughts are no number', () => {
    expect(preferenceOf('00', undefined, withOld())).toEqual({ old: false, suits: false });
  });
});

describe('what a series is worth', () => {
  test.each<[figures: string, percent: number, standing: Standing]>([
    ['47', 20, 'coarse-series'],
    ['15', 10, 'coarse-series'],
    ['12', 10, 'coarse-series'],
    ['51', 5, 'fine-series'],
    ['105', 2, 'precision-series'],
    ['12', 20, 'unsuited-series'],
    ['105', 10, 'too-fine-series'],
    ['50', 10, 'old-value'],
    ['211', 1, 'no-series'],
    ['00', 1, 'no-series'],
  ])('%s within %s %% is of %s', (figures, percent, standing) => {
    expect(standingOf(preferenceOf(figures, within(percent), withOld(5)))).toBe(standing);
  });

  test('an old number of a fine series is not too fine', () => {
    expect(standingOf(preferenceOf('105', within(10), withOld(1.05)))).toBe('unsuited-series');
    expect(standingOf(preferenceOf('105', within(10), withOld()))).toBe('too-fine-series');
  });

  test('the more often a number is met, the readier it is believed', () => {
    const weights = weightsOf(catalogue.markings);
    const order = ['coarse-series', 'fine-series', 'precision-series', 'too-fine-series'] as const;
    const worth = [...order, 'no-series' as const].map((standing) => weights[standing]);
    expect(worth).toEqual([...new Set(worth)].sort((a, b) => b - a));
    expect(weights['old-value']).toBeGreaterThanOrEqual(weights['unsuited-series']);
  });
});

describe('places', () => {
  test('of one role are one group, save those that hold a figure', () => {
    expect(groupsOf(['temperature', 'temperature', 'digit', 'digit', 'multiplier'])).toEqual([
      { role: 'temperature', at: [0, 1] },
      { role: 'digit', at: [2] },
      { role: 'digit', at: [3] },
      { role: 'multiplier', at: [4] },
    ]);
    expect(groupsOf(['hundreds-of-volts', 'hundreds-of-volts']).map(({ at }) => at)).toEqual([
      [0],
      [1],
    ]);
    expect(groupsOf([])).toEqual([]);
  });
});

describe('meanings that hold for some capacitances', () => {
  const row = (high: number, from?: number, below?: number): MeaningRow => ({
    ...{ code: 'made', role: 'tolerance', colour: 'green', second: '', low: -high, high },
    ...{ value: undefined, unit: 'percent', from_f: from, below_f: below, word: '', types: [] },
    ...{ use: 'usual', source: 'trade', locator: '', basis: 'common-practice', note: '' },
  });
  const meanings = [row(0.5, undefined, 1e-11), row(5, 1e-11), row(20, 1e-10, 1e-9)];
  const highs = (value?: number, colours = ['green']): (number | undefined)[] =>
    meaningsOf({ meanings }, 'tolerance', colours, value).map(({ high }) => high);

  test.each<[value: number | undefined, highs: number[]]>([
    [9.9e-12, [0.5]],
    [1e-11, [5]],
    [1e-10, [5, 20]],
    [1e-9, [5]],
    // The larger ones where the value is not known.
    [undefined, [5]],
  ])('%s F', (value, wanted) => {
    expect(highs(value)).toEqual(wanted);
  });

  test('and for those colours alone', () => {
    expect(highs(1e-11, ['red'])).toEqual([]);
    expect(highs(1e-11, ['green', 'red'])).toEqual([]);
    expect(highs(1e-11, ['green', '', 'red'])).toEqual([]);
    expect(meaningsOf({ meanings }, 'voltage', ['green'], 1e-11)).toEqual([]);
  });
});
