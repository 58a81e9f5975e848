import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import {
  dropped,
  eachWithout,
  nothing,
  pick,
  sumInputsOf,
  without,
} from '../../../src/catalogue/slices/slice-pieces.ts';
import { sliceSizes } from '../../../src/catalogue/slices/slice-sizes.ts';
import type { Catalogue } from '../../../src/engine/index.ts';
import { madeTables, type MadeTables } from '../checks/made-tables.ts';
import { assembleCatalogue } from '../../../src/catalogue/assemble.ts';

const made = (tables: MadeTables): Catalogue => assembleCatalogue(madeTables(tables));

describe('pieces of a slice', () => {
  test('the keys that are named and there, in the order in which they are named', () => {
    const record = { a: 1, b: 2, c: 3 };
    expect(Object.entries(pick(record, ['c', 'x', 'a']))).toEqual([
      ['c', 3],
      ['a', 1],
    ]);
    expect(pick(record, new Set<string>())).toEqual({});
  });

  test('a row with some columns blank, or without them', () => {
    const row = { id: 'a', note: 'long', locator: 'p. 3' };
    expect(without(row, ['note'])).toEqual({ id: 'a', note: '', locator: 'p. 3' });
    expect(Object.entries(dropped(row, ['note', 'locator']))).toEqual([['id', 'a']]);
    expect(eachWithout({ one: row, two: { ...row, id: 'b' } }, ['locator', 'note'])).toEqual({
      one: { id: 'a', note: '', locator: '' },
      two: { id: 'b', note: '', locator: '' },
    });
    expect(row).toEqual({ id: 'a', note: 'long', locator: 'p. 3' });
  });

  test('nothing at all: every table is there and empty', () => {
    const real = loadCatalogue();
    const empty = nothing(real);
    expect(Object.keys(empty).toSorted()).toEqual(Object.keys(real).toSorted());
    for (const [name, whole] of Object.entries(real)) {
      const table: unknown = empty[name as keyof Catalogue];
      if (['markings', 'look', 'job', 'devices'].includes(name))
        expect(table, name).toEqual(
          Object.fromEntries(Object.keys(whole as object).map((inner) => [inner, []])),
        );
      else expect(table, name).toEqual(Array.isArray(whole) ? [] : {});
    }
  });

  test('how the sums are filled in that findings lead to, for all of them or for one', () => {
    const catalogue = made({
      'findings.csv': [
        'id,sum',
        'edge,pulse-edge',
        'rise,ripple-heating',
        'slew,pulse-edge',
        'value,',
      ],
      'sum-inputs.csv': [
        'sum,input,for',
        'pulse-edge,c,',
        'pulse-edge,swing,slew',
        'pulse-edge,time,slew;edge',
        'ripple-heating,i,',
        'other,x,',
      ],
    });
    const inputs = (...findings: string[]) =>
      sumInputsOf(catalogue, new Set(findings)).map(({ input }) => input);
    expect(inputs('edge')).toEqual(['c', 'time']);
    expect(inputs('edge', 'slew')).toEqual(['c', 'swing', 'time']);
    expect(inputs('rise')).toEqual(['i']);
    expect(inputs('value')).toEqual([]);
    expect(inputs('unheard')).toEqual([]);
  });
});

describe('sizes', () => {
  const note = ['type,locator,note', 'foil,p. 3,long'];
  const catalogue = made({
    'bodies.csv': note,
    'series-resistance.csv': note,
    'ripple-by-frequency.csv': note,
    'ripple-by-temperature.csv': note,
    'core-rise.csv': ['types,locator,note', 'foil,p. 3,long'],
    'pulse-ratings.csv': note,
  });

  test.each([
    ['nothing that asks for more than bodies', ['value'], []],
    [
      'ripple current',
      ['ripple-current'],
      ['coreRises', 'rippleByFrequency', 'rippleByTemperature', 'seriesResistance'],
    ],
    ['its heat', ['ripple-heating'], ['coreRises', 'seriesResistance']],
    ['life', ['life'], ['coreRises', 'seriesResistance']],
    ['edges', ['pulse'], ['pulseRatings']],
    ['a window of series resistance', ['esr-window'], ['seriesResistance']],
  ])('%s', (_what, findings, tables) => {
    const sizes = sliceSizes(catalogue, new Set(findings));
    const carried = Object.entries(sizes).flatMap(([name, rows]) =>
      rows.length > 0 ? [name] : [],
    );
    expect(carried.toSorted()).toEqual(['bodies', ...tables].toSorted());
    for (const rows of Object.values(sizes))
      for (const row of rows) expect(row).toMatchObject({ locator: '', note: '' });
    expect(sizes.bodies).toMatchObject([{ type: 'foil' }]);
  });
});
