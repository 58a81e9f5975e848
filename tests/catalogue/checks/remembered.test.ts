import { describe, expect, test } from 'vitest';
import { ofEachTable, remembered } from '../../../src/catalogue/checks/remembered.ts';
import { tableNames, type TableName, type Tables } from '../../../src/catalogue/read-folder.ts';
import { madeTables } from './made-tables.ts';

const tables = madeTables({ 'units.csv': ['unit', 'V', 'A'], 'sources.csv': ['id', 'book'] });

/** The tables with the rows of one left out, and nothing else changed. */
const without = (file: TableName, from: Tables = tables): Tables => ({
  ...from,
  [file]: { ...from[file], rows: [] },
});

describe('a finding that is remembered', () => {
  const rowsOfUnits = (): { find: (all: Tables) => number; runs: () => number } => {
    let runs = 0;
    const find = remembered((all) => {
      runs += 1;
      return all['units.csv'].rows.length;
    });
    return { find, runs: () => runs };
  };

  const cases: [name: string, asked: Tables[], runs: number][] = [
    ['the same tables twice', [tables, tables], 1],
    ['a copy that holds the same tables', [tables, { ...tables }], 1],
    ['a change of a table that it does not read', [tables, without('sources.csv')], 1],
    ['a change of the table that it reads', [tables, without('units.csv')], 2],
    ['a change and back', [tables, without('units.csv'), tables], 3],
  ];
  test.each(cases)('%s', (_name, asked, runs) => {
    const { find, runs: done } = rowsOfUnits();
    for (const all of asked) expect(find(all)).toBe(all['units.csv'].rows.length);
    expect(done()).toBe(runs);
  });

  test('a table that only a first one leads to is looked at too', () => {
    const find = remembered((all) =>
      all['units.csv'].rows.length > 0 ? all['sources.csv'].rows.length : -1,
    );
    const bare = without('units.csv');
    expect(find(bare)).toBe(-1);
    expect(find(without('sources.csv', bare))).toBe(-1);
    expect(find(without('sources.csv'))).toBe(0);
    expect(find(tables)).toBe(tables['sources.csv'].rows.length);
  });

  test('one inside another passes on what it looked at', () => {
    const inner = remembered((all) => all['units.csv'].rows.length);
    const outer = remembered((all) => inner(all) + 1);
    inner(tables);
    expect(outer(tables)).toBe(tables['units.csv'].rows.length + 1);
    expect(outer(without('units.csv'))).toBe(1);
  });
});

test('a finding of each table runs again for the changed one alone, in the order of the tables', () => {
  const runs: TableName[] = [];
  const find = ofEachTable((all, file) => {
    runs.push(file);
    return all[file].rows.length === 0 ? [file] : [];
  });
  const empty = find(tables);
  expect(runs).toEqual(tableNames);
  runs.length = 0;
  expect(find(without('units.csv'))).toEqual(
    tableNames.filter((file) => file === 'units.csv' || empty.includes(file)),
  );
  expect(runs).toEqual(['units.csv']);
});
