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
  test.each(['schemas', 'markup', 'offline', 'packed'])(
    '%s takes nothing from others',
    (folder) => {
      expect(outside(folder)).toEqual([]);
    },
  );

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

/** Folders of a part of the sources that is parted by what its modules know, from the ones that know least on. */
const PARTED: readonly { of: string; folders: readonly string[] }[] = [
  {
    of: 'job',
    folders: ['model', 'keeping', 'list', 'understanding', 'planning', 'ordering', 'bench'],
  },
  {
    of: 'engine/markings',
    folders: [
      'text',
      'meanings',
      'lexicon',
      'values',
      'ratings',
      'sections',
      'beside',
      'ways',
      'composing',
      'ranking',
    ],
  },
];

describe.each(PARTED)('the folders of $of', ({ of, folders }) => {
  const folderOf = (path: string): string => path.slice(of.length + 1).split('/')[0] ?? '';
  const own = imports.filter(({ from, to }) => within(of, from) && within(of, to));

  test('are all of them', () => {
    const there = files
      .map((file) => relative('src', file))
      .filter((file) => within(of, file) && file.slice(of.length + 1).includes('/'));
    expect(new Set(there.map(folderOf))).toEqual(new Set(folders));
  });

  test.each(folders)('%s takes only from those before it', (folder) => {
    const before = folders.slice(0, folders.indexOf(folder) + 1);
    const taken = own.filter(({ from }) => folderOf(from) === folder);
    expect(taken).not.toEqual([]);
    expect(taken.filter(({ to }) => !before.includes(folderOf(to)))).toEqual([]);
  });
});

test('a job is taken from by others through its index', () => {
  const taken = imports.filter(({ from, to }) => !within('job', from) && within('job', to));
  expect(taken).not.toEqual([]);
  expect(taken.filter(({ to }) => to !== 'job/index.ts')).toEqual([]);
});
