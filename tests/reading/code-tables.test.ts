import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { codeTables } from '../../src/reading/code-tables.ts';
import { listedCodes } from '../../src/reading/codes/listed.ts';
import { markingTables, type MarkingTable } from '../../src/schemas/marking-tables.ts';

const tables = codeTables(loadCatalogue());

/** Tables, a group of each, and how its codes begin. */
test.each([
  ['tolerance-letters', 'Latin', ['A', 'B', 'B', 'B', 'C']],
  ['eia96-codes', '', ['01', '02', '03']],
  ['eia96-multipliers', '', ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'H', 'R']],
])('%s stands in the order of its codes', (id, title, first) => {
  const group = tables.find((table) => table.id === id)?.groups.find((one) => one.title === title);
  expect(group?.rows.slice(0, first.length).map(({ cells }) => cells[0])).toEqual(first);
});

/** A cell of a table by the anchor of its row and the heading of its column. */
const cell = (id: string, row: string, heading: string): string | undefined => {
  const table = tables.find((one) => one.id === id);
  const at = table?.columns.indexOf(heading) ?? -1;
  return table?.groups.flatMap(({ rows }) => rows).find((one) => one.id === row)?.cells[at];
};

test.each([
  ['unit-words', 'f', 'Stands for', '1 F'],
  ['point-letters', 'small-k-capacitance', 'Stands for', '1 nF'],
  ['resistor-forms', 'resistor-plain', 'Value', '10 Ω to 10 MΩ'],
  ['value-forms', 'decimal-picofarad-small', 'Value', '0.1 pF to 0.99 pF'],
  ['value-forms', 'decimal-picofarad-small', 'Example', '0.5'],
  ['class1-codes', 'n030', 'Nominal, ppm/K', '−30'],
  ['class2-codes', 'x7r', 'Span, °C', '−55 to 125'],
  ['class2-codes', 'x7r', 'From', '−15 %'],
  ['class2-signs', 'iec-2-span-1', 'To', '125 °C'],
  ['voltage-codes', 'figure-letter-0a', 'Rated, V', '1'],
  ['date-schemes', 'iec-60062-early', 'Years', '1970 to 1977'],
  ['bodies', 'air', 'Name', 'air-spaced trimmer or tuning capacitor'],
  ['multipliers', 'figures-7', 'Times', '10⁷'],
  ['potentiometer-tapers', 'a-linear', 'Made in', 'British, German, American, old'],
])('%s, row %s, %s: %s', (id, row, heading, says) => {
  expect(cell(id, row, heading)?.replaceAll('\u00a0', ' ')).toBe(says);
});

test('each row has an anchor of its own', () => {
  for (const { id, groups } of tables) {
    const anchors = groups.flatMap(({ rows }) => rows.map((row) => row.id));
    expect(new Set(anchors).size, id).toBe(anchors.length);
    expect(anchors, id).not.toContain('');
  }
});

test('no page of a table shows a row by its id, a power as computers write it or a bare minus', () => {
  for (const { id, columns, groups } of tables) {
    expect(columns, id).not.toContain('Id');
    for (const { cells } of groups.flatMap(({ rows }) => rows))
      for (const text of cells.slice(1)) expect(text, id).not.toMatch(/\de-?\d+$|^-\d+(?:\.\d+)?$/);
  }
});

test('tables are parted by columns that they have', () => {
  const parted = Object.entries<MarkingTable>(markingTables).flatMap(([file, { row, partedBy }]) =>
    partedBy === undefined ? [] : [[file, partedBy, Object.keys(row.shape)] as const],
  );
  expect(parted.length).toBeGreaterThan(10);
  for (const [file, column, columns] of parted) expect(columns, file).toContain(column);
});

test.each([
  ['tolerance-letters', 'letter'],
  ['resistor-tolerances', 'letter'],
  ['voltage-codes', 'voltage'],
  ['class1-codes', 'temperature'],
  ['class2-codes', 'temperature'],
  ['potentiometer-tapers', 'taper'],
])('codes of %s lead to pages of their own: %s', (id, kind) => {
  const table = tables.find((one) => one.id === id);
  expect(table?.codes).toBe(kind);
  const codes = listedCodes(loadCatalogue()).filter((one) => one.kind === table?.codes);
  const known = new Set(codes.flatMap(({ code, also }) => [code, ...also]));
  const first = table?.groups.flatMap(({ rows }) => rows.map(({ cells }) => cells[0] ?? '')) ?? [];
  expect(first.some((code) => known.has(code))).toBe(true);
});
