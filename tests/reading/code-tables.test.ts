import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { codeTables } from '../../src/reading/code-tables.ts';

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
