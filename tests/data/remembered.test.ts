import { expect, test } from 'vitest';
import { checkTables } from '../../src/catalogue/checks/index.ts';
import { readFolder, type Tables } from '../../src/catalogue/read-folder.ts';
import { realFolder } from './broken-copy.ts';

const { tables } = readFolder(realFolder);

test('a folder mended after a fault has none, and has it again when it is back', () => {
  const broken: Tables = { ...tables, 'units.csv': { ...tables['units.csv'], rows: [] } };
  const faults = checkTables(broken);
  expect(faults.length).toBeGreaterThan(100);
  expect(checkTables(tables)).toEqual([]);
  expect(checkTables(broken)).toEqual(faults);
});
