import { globSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { describe, expect, test } from 'vitest';

/** Which modules may import which: what DEVELOPERS.md says of directions, held to the sources. */

interface Import {
  from: string;
  to: string;
  /** Whether only types are taken, of which nothing is left when it runs. */
  isOfTypes: boolean;
}

const STATEMENT = /^(?:import|export)( type)? ?(\{[^}]*\}|[^;'{]*?) ?from '(\.[^']*)'/gmsu;
const isOfTypes = (word: string | undefined, names: string): boolean =>
  word !== undefined || /^\{(?:\s*type [^,}]+,?)+\s*\}$/u.test(names);

const pathOf = (path: string): string => path.split(sep).join('/');
const files = globSync('src/**/*.{ts,astro}').map(pathOf);
const imports = files.flatMap((file): Import[] =>
  [...readFileSync(file, 'utf8').matchAll(STATEMENT)].map(([, word, names = '', path = '']) => ({
    from: relative('src', file),
    to: pathOf(relative('src', join(dirname(file), path))),
    isOfTypes: isOfTypes(word, names),
  })),
);
const within = (folder: string, path: string): boolean => path.startsWith(`${folder}/`);

/** What a folder takes from outside itself. */
const outside = (folder: string): Import[] =>
  imports.filter(({ from, to }) => within(folder, from) && !within(folder, to));

test('imports are found', () => {
  expect(imports.length).toBeGreaterThan(2000);
  expect(imports).toContainEqual({
    from: 'job/ordering/order.ts',
    to: 'job/ordering/bought.ts',
    isOfTypes: false,
  });
});

describe('one direction', () => {
  test.each(['schemas', 'markup', 'offline'])('%s takes nothing from others', (folder) => {
    expect(outside(folder)).toEqual([]);
  });

  test('the engine takes nothing but types of rows', () => {
    expect(outside('engine').filter((one) => !one.isOfTypes || !within('schemas', one.to))).toEqual(
      [],
    );
  });

  test.each([
    ['browser', ['browser', 'components', 'layouts', 'one-file', 'pages']],
    ['one-file', ['one-file']],
    ['job-view', ['browser', 'job-view', 'pages']],
    ['building', ['building', 'components', 'pages']],
  ])('%s is taken by nothing but %j', (folder, takers) => {
    const taken = imports.filter(({ to }) => within(folder, to));
    expect(taken).not.toEqual([]);
    expect(taken.filter(({ from }) => !takers.some((taker) => within(taker, from)))).toEqual([]);
  });

  test('no module needs one that needs it', () => {
    const needs = Map.groupBy(
      imports.filter((one) => !one.isOfTypes),
      ({ from }) => from,
    );
    const done = new Set<string>();
    const rings: string[][] = [];
    const walk = (module: string, way: readonly string[]): void => {
      if (way.includes(module)) rings.push([...way.slice(way.indexOf(module)), module]);
      if (way.includes(module) || done.has(module)) return;
      for (const { to } of needs.get(module) ?? []) walk(to, [...way, module]);
      done.add(module);
    };
    for (const module of needs.keys()) walk(module, []);
    expect(rings).toEqual([]);
  });
});

describe('the folders of a job', () => {
  const FOLDERS = ['model', 'keeping', 'list', 'understanding', 'planning', 'ordering', 'bench'];
  const folderOf = (path: string): string => path.split('/')[1] ?? '';
  const own = imports.filter(({ from, to }) => within('job', from) && within('job', to));

  test('are all of them', () => {
    const there = files.filter((file) => file.split('/').length > 3 && within('src/job', file));
    expect(new Set(there.map((file) => file.split('/')[2]))).toEqual(new Set(FOLDERS));
  });

  test.each(FOLDERS)('%s takes only from those before it', (folder) => {
    const before = FOLDERS.slice(0, FOLDERS.indexOf(folder) + 1);
    const taken = own.filter(({ from }) => folderOf(from) === folder);
    expect(taken.filter(({ to }) => !before.includes(folderOf(to)))).toEqual([]);
  });

  test('are taken from by others through their index', () => {
    const taken = imports.filter(({ from, to }) => !within('job', from) && within('job', to));
    expect(taken).not.toEqual([]);
    expect(taken.filter(({ to }) => to !== 'job/index.ts')).toEqual([]);
  });
});
