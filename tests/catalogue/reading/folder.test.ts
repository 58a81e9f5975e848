import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { dataFolder } from '../../../src/catalogue/data-folder.ts';
import { DataFaults } from '../../../src/catalogue/fault.ts';
import { checkFolder, loadCatalogue } from '../../../src/catalogue/load.ts';
import { readFolder, tableNames, valuesOf } from '../../../src/catalogue/read-folder.ts';
import { brokenSealsOf } from '../../../src/catalogue/sealed-folder.ts';
import { tables as registry } from '../../../src/schemas/tables.ts';
import type { Table } from '../../../src/schemas/table.ts';

/** Runs something on a folder of such files. */
const inFolder = <Result>(
  files: Readonly<Record<string, string>>,
  run: (folder: string) => Result,
): Result => {
  const folder = mkdtempSync(join(tmpdir(), 'folder-'));
  try {
    for (const [file, content] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), content);
    }
    return run(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const UNITS = 'unit,si,factor,name\nV,V,1,volt\n';

describe('a folder of tables', () => {
  test('gives what is there, and names every table that is not', () => {
    inFolder({ 'units.csv': UNITS, 'kinds/kinds.csv': 'id\n' }, (folder) => {
      const { tables, faults } = readFolder(folder);
      expect(valuesOf(tables, 'units.csv')).toEqual([
        { unit: 'V', si: 'V', factor: 1, name: 'volt' },
      ]);
      expect(tables['units.csv'].readable).toBe(true);
      expect(tables['types.csv']).toEqual({ file: 'types.csv', readable: false, rows: [] });
      const missing = faults.filter(({ rule }) => rule === 'missing-table');
      expect(missing.map(({ file }) => file)).toEqual(
        tableNames.filter((file) => file !== 'units.csv' && file !== 'kinds/kinds.csv'),
      );
      expect(missing.find(({ file }) => file === 'voltages.csv')).toMatchObject({
        line: 1,
        column: 1,
        got: '',
        expected: 'a table of volts,kind,families,source,locator,basis,note',
      });
      expect(faults.some(({ file }) => file === 'kinds/kinds.csv')).toBe(true);
    });
  });

  test('rows with a fault have no value', () => {
    inFolder({ 'units.csv': `${UNITS}A,A,much,ampere\n` }, (folder) => {
      const { tables } = readFolder(folder);
      expect(tables['units.csv'].rows).toHaveLength(2);
      expect(valuesOf(tables, 'units.csv')).toHaveLength(1);
    });
  });
});

/** Headers of all tables, the series of preferred values, and the source that they are from. */
const smallest = (): Record<string, string> => {
  const real = (file: string): string => readFileSync(join(dataFolder(), file), 'utf8');
  const lines = real('sources.csv').split('\n');
  const cited = lines.filter((line, at) => at === 0 || line.startsWith('zh-wikipedia-e-series,'));
  const headers = tableNames.map((file) => {
    const { row }: Table = registry[file];
    return [file, `${Object.keys(row.shape).join(',')}\n`];
  });
  return {
    ...(Object.fromEntries(headers) as Record<string, string>),
    'e-series.csv': real('e-series.csv'),
    'sources.csv': `${cited.join('\n')}\n`,
  };
};

describe('the catalogue of a folder', () => {
  test('is read once', () => {
    inFolder(smallest(), (folder) => {
      expect(checkFolder(folder)).toEqual([]);
      const catalogue = loadCatalogue(folder);
      expect(catalogue.series).toHaveLength(3 + 6 + 12 + 24 + 48 + 96 + 192);
      expect(loadCatalogue(folder)).toBe(catalogue);
      expect(loadCatalogue(join(folder, 'kinds', '..'))).toBe(catalogue);
    });
  });

  test('is not made where a table or a rule has a fault, and all of them are told in order', () => {
    const files = smallest();
    const series = (files['e-series.csv'] ?? '').replace('\nE3,2,2.2,', '\nE3,2,2.3,');
    const units = `${UNITS.trimEnd()},more\n${UNITS.split('\n')[1] ?? ''}\n`;
    inFolder({ ...files, 'units.csv': units, 'e-series.csv': series }, (folder) => {
      const faults = checkFolder(folder);
      expect(faults.map(({ file, line, rule }) => `${file}:${String(line)} ${rule}`)).toEqual([
        'e-series.csv:3 e-series',
        'units.csv:2 cell-count',
        'units.csv:3 duplicate-key',
      ]);
      let thrown: unknown;
      try {
        loadCatalogue(folder);
      } catch (error) {
        thrown = error;
      }
      expect(thrown).toBeInstanceOf(DataFaults);
      expect(thrown).toMatchObject({ name: 'DataFaults', faults });
      const message = thrown instanceof Error ? thrown.message.split('\n') : [];
      expect(message).toHaveLength(4);
      expect(message[0]).toContain('3 faults');
      expect(message[1]).toMatch(/^e-series\.csv:3:6: e-series: /);
    });
  });
});

// Prints are the first six digits of SHA-256: of `abc` as FIPS 180-2 has it, of nothing as is known.
const ABC = 'ba7816';
const NOTHING = 'e3b0c4';

describe('a sealed folder', () => {
  const sealed = (seal: string, except: string[] = []): string[] =>
    inFolder({ 'units.csv': 'abc\n', 'voltages.csv': 'abc\n', 'seals.txt': seal }, (folder) =>
      brokenSealsOf(folder, new Set(except)).map(({ file, line }) => `${file}:${String(line)}`),
    );
  const [units, voltages] = ['units.csv', 'voltages.csv'].map(
    (file) => `${file} ${ABC} ${NOTHING}\n`,
  );

  test.each([
    ['both as they were', `${units ?? ''}${voltages ?? ''}`, []],
    ['one that changed', `units.csv ${NOTHING} ${NOTHING}\n${voltages ?? ''}`, ['units.csv:1']],
    ['one without a seal', units ?? '', ['voltages.csv:1']],
    ['a seal of a table that is gone', `${units ?? ''}${voltages ?? ''}types.csv ${ABC}\n`, []],
  ])('%s', (_what, seal, broken) => {
    expect(sealed(seal)).toEqual(broken);
  });

  test('passes over what has other faults', () => {
    expect(sealed('', ['units.csv'])).toEqual(['voltages.csv:1']);
  });

  test('has no faults where nothing was sealed', () => {
    inFolder({ 'units.csv': 'abc\n' }, (folder) => {
      expect(brokenSealsOf(folder, new Set())).toEqual([]);
    });
  });
});

describe('where the tables are', () => {
  const found = (files: readonly string[], module: string): string =>
    inFolder(Object.fromEntries(files.map((file) => [file, ''])), (folder) =>
      dataFolder(pathToFileURL(join(folder, module)).href).replace(folder, '.'),
    );

  test.each([
    ['beside the module', ['package.json', 'data/sources.csv'], 'read.js', './data'],
    ['above it', ['package.json', 'data/sources.csv'], 'src/catalogue/read.js', './data'],
    [
      'not in a built site, nor in a package without tables',
      [
        'package.json',
        'data/sources.csv',
        'dist/data/sources.csv',
        'dist/x/package.json',
        'dist/x/data/y',
      ],
      'dist/x/read.js',
      './data',
    ],
    ['else where one works', ['data/sources.csv'], 'src/read.js', join(process.cwd(), 'data')],
  ])('%s', (_what, files, module, folder) => {
    expect(found(files, module)).toBe(folder);
  });

  test('of a module that no file holds: from where one works', () => {
    expect(dataFolder('node:internal')).toBe(join(process.cwd(), 'data'));
  });
});
