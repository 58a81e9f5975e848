import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { capacitances } from '../../src/catalogue/checks/capacitance-bounds.ts';
import { checks } from '../../src/catalogue/checks/index.ts';
import { orders } from '../../src/catalogue/checks/number-order.ts';
import { dataFolder } from '../../src/catalogue/data-folder.ts';
import { checkFolder, loadCatalogue, printFault } from '../../src/catalogue/index.ts';
import { tables } from '../../src/schemas/tables.ts';
import { realFolder } from './broken-copy.ts';

describe('the data of this project', () => {
  test('are without a fault', () => {
    expect(checkFolder().map(printFault)).toEqual([]);
  });

  test('load once a process', () => {
    expect(loadCatalogue()).toBe(loadCatalogue(realFolder));
  });

  test('say of every type and every property what is known, if only that nothing is', () => {
    const { types, properties, knowledge } = loadCatalogue();
    for (const type of Object.keys(types)) {
      expect(Object.keys(knowledge[type] ?? {})).toEqual(Object.keys(properties));
    }
  });

  test('come to ranges in order', () => {
    const { knowledge } = loadCatalogue();
    const known = Object.values(knowledge)
      .flatMap((properties) => Object.values(properties))
      .flatMap((known) => (known.status === 'known' ? [known.range] : []));
    expect(known.length).toBeGreaterThan(0);
    for (const { min, typ, max } of known) {
      expect(min).toBeLessThanOrEqual(typ);
      expect(typ).toBeLessThanOrEqual(max);
    }
  });

  test('hold nothing that JSON cannot', () => {
    const catalogue = loadCatalogue();
    expect(JSON.parse(JSON.stringify(catalogue))).toEqual(catalogue);
  });
});

describe('the data folder', () => {
  const project = join(realFolder, '..');

  test.each(['src/catalogue/data-folder.ts', 'dist/chunks/page.mjs', 'dist/data/deep/page.mjs'])(
    'is found from %s',
    (module) => {
      expect(dataFolder(pathToFileURL(join(project, module)).href)).toBe(join(project, 'data'));
    },
  );

  test('is the one of the working directory for a module that is no file', () => {
    expect(dataFolder('data:text/javascript,0')).toBe(join(process.cwd(), 'data'));
  });

  test('is the one of the working directory for a module outside any project', () => {
    expect(dataFolder('file:///nowhere/page.mjs')).toBe(join(process.cwd(), 'data'));
  });
});

test('every rule says what it asks', () => {
  for (const { about } of checks) expect(about).toMatch(/^[A-Z].+\.$/);
});

test('rules name columns that their tables have', () => {
  for (const { file, columns } of [...orders, ...capacitances]) {
    expect(Object.keys(tables[file].row.shape)).toEqual(expect.arrayContaining([...columns]));
  }
});
