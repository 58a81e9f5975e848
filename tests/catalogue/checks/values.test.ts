import { describe, expect, test } from 'vitest';
import { eSeries } from '../../../src/catalogue/checks/e-series.ts';
import { inReadingOrder } from '../../../src/catalogue/fault.ts';
import { marketSeries } from '../../../src/catalogue/checks/market-series.ts';
import { marketVoltages } from '../../../src/catalogue/checks/market-voltages.ts';
import { preferredValues } from '../../../src/catalogue/checks/preferred-values.ts';
import {
  colourWeightsComplete,
  guidelinesComplete,
  rulesComplete,
} from '../../../src/catalogue/checks/named-rows.ts';
import { valueWindow } from '../../../src/catalogue/checks/value-window.ts';
import { colourWeightRow } from '../../../src/schemas/marking-colours.ts';
import { ruleOfThumbRow } from '../../../src/schemas/rules-of-thumb.ts';
import { madeTables, testRule } from './made-tables.ts';

/** The first three series of IEC 60063, and E48 as its rule makes it: three figures of 10^(n/48). */
const E12 = [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2];
const SERIES: Record<string, number[]> = {
  E3: [1, 2.2, 4.7],
  E6: [1, 1.5, 2.2, 3.3, 4.7, 6.8],
  E12,
  E48: Array.from({ length: 48 }, (_, at) => Number((10 ** (at / 48)).toFixed(2))),
};

const rowsOf = (series: Record<string, number[]>): string[] => [
  'series,position,value',
  ...Object.entries(series).flatMap(([name, values]) =>
    values.map((value, at) => `${name},${String(at + 1)},${String(value)}`),
  ),
];

/** What the rule finds in rows, but for series that are not there at all. */
const found = (rows: readonly string[]): [number, number, string][] =>
  inReadingOrder(eSeries.check(madeTables({ 'e-series.csv': rows })))
    .filter(({ file, line }) => file === 'e-series.csv' && line > 1)
    .map(({ line, column, expected }) => [line, column, expected]);

describe('series of preferred values', () => {
  test('those of the standard have no fault', () => {
    expect(found(rowsOf(SERIES))).toEqual([]);
  });

  test.each([
    // E3 stands in lines 2 to 4, its values from column 6 on.
    ['a value left out', { E3: [1, 2.2] }, [[3, 4, '3 values']]],
    ['one too many, which 10^(3/3) would be', { E3: [1, 2.2, 4.7, 9.9] }, [[5, 4, '3 values']]],
    ['a value twice', { E3: [1, 1, 4.7] }, [[3, 6, 'a value above 1']]],
    // 10^(1/3) is 2.154 and may be 0.108 off: from 2.1 to 2.2 with one figure after the point.
    ['too far up', { E3: [1, 2.3, 4.7] }, [[3, 6, 'about 2.154, with 1 digits after the point']]],
    ['too far down', { E3: [1, 2, 4.7] }, [[3, 6, 'about 2.154, with 1 digits after the point']]],
    [
      'one figure more',
      { E3: [1, 2.15, 4.7] },
      [[3, 6, 'about 2.154, with 1 digits after the point']],
    ],
    ['near enough', { E3: [1, 2.1, 4.7] }, []],
  ] as const)('%s', (_what, series, faults) => {
    expect(found(rowsOf(series as unknown as Record<string, number[]>))).toEqual(faults);
  });

  test('positions count from one without a gap, and nothing more is said of a series with one', () => {
    expect(found(['series,position,value', 'E3,1,1', 'E3,3,9.9'])).toEqual([[3, 4, '2']]);
    expect(found(['series,position,value', 'E3,2,2.2', 'E3,3,4.7'])).toEqual([[2, 4, '1']]);
  });

  // 10^(1/48) is 1.0491, 10^(2/48) 1.1007; 1.06 and 1.12 are more than 0.0065 off, 1.09 is as well.
  test.each([
    ['one up', 1, 1.06],
    ['one down', 2, 1.09],
  ])('a value of three figures off by more than its rounding: %s', (_what, at, value) => {
    const wrong = SERIES['E48']?.with(at, value) ?? [];
    const expected = `about ${(10 ** (at / 48)).toFixed(3)}, with 2 digits after the point`;
    expect(found(rowsOf({ E48: wrong }))).toEqual([[at + 2, 7, expected]]);
  });

  test('a smaller series has no value that the next larger one lacks', () => {
    // 2.1 would do for E3 by itself: E6 stands in lines 5 to 10.
    expect(found(rowsOf({ E3: [1, 2.1, 4.7], E6: SERIES['E6'] ?? [] }))).toEqual([
      [3, 6, 'a value of E6'],
    ]);
    // Of E12 without E24, and of a series beside one that is not there, nothing can be said.
    expect(found(rowsOf({ E3: [1, 2.1, 4.7], E12 }))).toEqual([]);
  });

  test('a value that is wrong in its own series is said once', () => {
    expect(found(rowsOf({ E3: [1, 3, 4.7], E6: SERIES['E6'] ?? [] }))).toHaveLength(1);
  });

  test('one that is not there is missed', () => {
    const missed = eSeries.check(madeTables({ 'e-series.csv': rowsOf({ E3: [1, 2.2, 4.7] }) }));
    expect(
      missed.map(({ wrong, expected, line, column }) => [wrong, expected, line, column]),
    ).toEqual(
      [6, 12, 24, 48, 96, 192].map((size) => [
        `no series E${String(size)}`,
        `${String(size)} rows of E${String(size)}`,
        1,
        1,
      ]),
    );
    expect(missed.every(({ rule, got }) => rule === 'e-series' && got === '')).toBe(true);
  });

  test('a series of which all rows have other faults is there', () => {
    const rows = ['series,position,value', '!E3,x,1'];
    const missed = eSeries.check(madeTables({ 'e-series.csv': rows }));
    expect(missed.map(({ wrong }) => wrong)).not.toContain('no series E3');
  });
});

testRule('e-series', eSeries, [
  {
    what: 'in the words of a fault',
    tables: {
      'e-series.csv': [
        ...rowsOf({
          E3: [1, 2.1],
          E6: [1, 1.5, 1.5, 3.3, 4.7, 6.8],
          E12,
          E48: [1.01],
          E96: [1],
          E192: [1],
        }),
      ],
    },
    faults: [
      { at: 'e-series.csv:1:1', says: ['no series E24'] },
      { at: 'e-series.csv:3:position', says: ['E3 has 2 values'] },
      { at: 'e-series.csv:6:value', says: ['E6 does not rise'] },
      { at: 'e-series.csv:22:position', says: ['E48 has 1 values'] },
      { at: 'e-series.csv:23:position', says: ['E96 has 1 values'] },
      { at: 'e-series.csv:24:position', says: ['E192 has 1 values'] },
    ],
  },
]);

testRule('preferred-value', preferredValues, [
  {
    what: 'values of E24 in any decade',
    tables: {
      'e-series.csv': ['series,value', 'E24,1', 'E24,4.7', 'E24,9.1', 'E48,1.05'],
      'positions.csv': ['reference_c', '1e-12', '4.7e-9', '9.1e-8', '0.001', '1e-6', '1'],
    },
    faults: [],
  },
  {
    what: 'a value of none, and one of a closer series',
    tables: {
      'e-series.csv': ['series,value', 'E24,1', 'E24,4.7', 'E48,1.05'],
      'positions.csv': ['id,reference_c', 'a,4.8e-9', 'b,1.05e-6', 'c,4.70001e-9'],
    },
    faults: [
      { at: 'positions.csv:2:reference_c', says: ['E24'] },
      'positions.csv:3:reference_c',
      'positions.csv:4:reference_c',
    ],
  },
]);

testRule('preferred-value', marketSeries, [
  {
    what: 'a series, a list of its own, or none; a list of other parts, and nothing',
    tables: {
      'e-series.csv': ['series', 'E6', 'E12'],
      'value-lists.csv': ['list', 'air-steps'],
      'kinds/values.csv': ['list', 'pot-steps'],
      'market.csv': ['series', 'E12', 'air-steps', '', 'pot-steps', 'E13'],
      'kinds/offers.csv': ['series', 'E6', 'pot-steps', '', 'air-steps'],
    },
    faults: [
      'kinds/offers.csv:5:series',
      { at: 'market.csv:5:series', says: ['E6 or E12 or air-steps'] },
      'market.csv:6:series',
    ],
  },
]);

const RATED = ['volts,kind,families', '63,dc,', '100,dc,film;mica', '250,ac,film'];
const TYPES = ['id,family', 'foil,film', 'silver,mica', 'horn,aluminium'];

testRule('rated-voltage', marketVoltages, [
  {
    what: 'of every family, of one of several, and as the note says',
    tables: {
      'voltages.csv': RATED,
      'types.csv': TYPES,
      'market.csv': [
        'type,voltage_kind,voltages,note',
        'foil,dc,63;100,',
        'silver,dc,63;100,',
        'horn,dc,63,',
        'foil,ac,250,',
        'horn,dc,1.5;400,made for 1.5 and 400 V',
        'unheard,dc,77,',
      ],
    },
    faults: [],
  },
  {
    what: 'of another family, of another kind of voltage, and a note about another number',
    tables: {
      'voltages.csv': RATED,
      'types.csv': TYPES,
      'market.csv': [
        'type,voltage_kind,voltages,note',
        'horn,dc,63;100,',
        'foil,dc,63;250,',
        'foil,ac,63,',
        'silver,ac,250,',
        'foil,dc,5,made for 1.5 or 50 V',
      ],
    },
    faults: [
      { at: 'market.csv:2:voltages', got: '100', says: ['100 V dc', 'aluminium parts'] },
      { at: 'market.csv:3:voltages', got: '250' },
      { at: 'market.csv:4:voltages', says: ['63 V ac', 'film parts'] },
      'market.csv:5:voltages',
      'market.csv:6:voltages',
    ],
  },
]);

/** All rules of thumb, so that none is missed. */
const RULES = ruleOfThumbRow.shape.id.options;

testRule('rules-complete', rulesComplete, [
  { what: 'every rule', tables: { 'rules-of-thumb.csv': ['id', ...RULES] }, faults: [] },
  {
    what: 'a rule whose own row has a fault is there all the same',
    tables: { 'rules-of-thumb.csv': ['id', ...RULES.map((id) => `!${id}`)] },
    faults: [],
  },
  {
    what: 'two rules that are missed, at the first row that is there',
    tables: {
      'rules-of-thumb.csv': [
        'id',
        ...RULES.filter((id) => id !== 'halving' && id !== 'least-body'),
      ],
    },
    faults: [
      { at: 'rules-of-thumb.csv:2:id', got: '', says: ['no rule of thumb halving', 'a row for'] },
      { at: 'rules-of-thumb.csv:2:id', got: '', says: ['no rule of thumb least-body'] },
    ],
  },
]);

const COLOUR_WEIGHTS = colourWeightRow.shape.id.options;

testRule('colour-weights-complete', colourWeightsComplete, [
  {
    what: 'every weight',
    tables: { 'markings/colour-weights.csv': ['id', ...COLOUR_WEIGHTS] },
    faults: [],
  },
  {
    what: 'a weight that is missed',
    tables: {
      'markings/colour-weights.csv': ['id', ...COLOUR_WEIGHTS.filter((id) => id !== 'turned')],
    },
    faults: [{ at: 'markings/colour-weights.csv:2:id', got: '', says: ['no weight turned'] }],
  },
]);

testRule('guidelines-complete', guidelinesComplete, [
  {
    what: 'the two that are always asked for, and others',
    tables: { 'guidelines.csv': ['id', 'agency', 'workshop', '!maker'] },
    faults: [],
  },
  {
    what: 'one of them under another name',
    tables: { 'guidelines.csv': ['id', 'makers', 'workshop'] },
    faults: [{ at: 'guidelines.csv:2:id', got: '', says: ['no guideline maker', 'a row for'] }],
  },
]);

testRule('value-window', valueWindow, [
  {
    what: 'windows that hold the old value, at their ends as well',
    tables: { 'positions.csv': ['value_low,value_high', '1,1', '0.5,2'] },
    faults: [],
  },
  {
    what: 'windows above it and below it',
    tables: { 'positions.csv': ['value_low,value_high', '1.1,2', '0.5,0.9'] },
    faults: [
      { at: 'positions.csv:2:value_low', says: ['too small', 'up to 1'] },
      { at: 'positions.csv:3:value_high', says: ['too large', 'from 1 on'] },
    ],
  },
]);
