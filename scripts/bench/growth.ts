import { cpSync, globSync, mkdtempSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { SHELL } from '../offline-shell.ts';
import { grow, type Growth } from './grown-data.ts';
import { tookScript } from './measured-step.ts';
import { show, type Row } from './measuring.ts';

const PROJECT = join(import.meta.dirname, '..', '..');
const COPIED = [
  'src',
  'scripts',
  'public',
  'data',
  'package.json',
  'astro.config.mjs',
  'tsconfig.json',
];
const THOUSAND = 1000;
const MILLION = 1e6;

/** What is grown, and how many times: one size to start from, then up to some 20,000 pages. */
const RUNS: readonly (readonly [what: Growth, times: number])[] = [
  ['types', 3],
  ['positions', 1],
  ['positions', 3],
  ['positions', 11],
];
/** What is looked ahead to. */
const FAR = 100;

/** What a whole site of grown data takes to build, index, keep and host. */
interface Site {
  what: Growth;
  times: number;
  pages: number;
  /** By the clock, s, as the others; and of processors. */
  build: number;
  processor: number;
  index: number;
  list: number;
  /** Of the largest process of the build, MB. */
  memory: number;
  /** On the host, bytes. */
  bytes: number;
  /** Of the index of words, bytes. */
  words: number;
  /** Of the lists of files to keep, bytes: fetched by those who keep the whole site. */
  lists: number;
  /** Of what a first visit keeps. */
  shell: number;
}

const bytesIn = (folder: string, patterns: readonly string[] = ['**/*']): number =>
  globSync([...patterns], { cwd: folder, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, { parentPath, name }) => sum + statSync(join(parentPath, name)).size, 0);

const measure = (folder: string, what: Growth, times: number): Site => {
  for (const path of COPIED) cpSync(join(PROJECT, path), join(folder, path), { recursive: true });
  symlinkSync(join(PROJECT, 'node_modules'), join(folder, 'node_modules'));
  grow(join(folder, 'data'), what, times);
  const build = tookScript(folder, 'build:pages');
  const index = tookScript(folder, 'build:search');
  const list = tookScript(folder, 'build:offline');
  const dist = join(folder, 'dist');
  return {
    what,
    times,
    pages: globSync('**/index.html', { cwd: dist }).length,
    build: build.seconds,
    processor: build.processor,
    index: index.seconds,
    list: list.seconds,
    memory: build.megabytes,
    bytes: bytesIn(dist),
    words: bytesIn(join(dist, 'pagefind')),
    lists: bytesIn(join(dist, 'offline')),
    shell: bytesIn(dist, SHELL),
  };
};

const site = (what: Growth, times: number): Site => {
  const folder = mkdtempSync(join(tmpdir(), 'understudy-grown-'));
  try {
    return measure(folder, what, times);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const rowsOf = (one: Site): Row[] => {
  const { what, times, pages } = one;
  const name = `${show(times)} times the ${what}`;
  const each = (seconds: number): string => `${show((seconds * THOUSAND) / pages)} ms a page`;
  const megabytes = (bytes: number): string => show(bytes / MILLION);
  return [
    [`${name}: pages`, show(pages), ''],
    [`${name}: build`, show(one.build), 's', `${each(one.build)}, ${show(one.memory)} MB`],
    [`${name}: the same of processors`, show(one.processor), 's', each(one.processor)],
    [`${name}: index`, show(one.index), 's', `${each(one.index)}, ${megabytes(one.words)} MB`],
    [`${name}: list of files to keep`, show(one.list), 's', each(one.list)],
    [
      `${name}: on the host`,
      megabytes(one.bytes),
      'MB',
      `${show(one.bytes / pages / THOUSAND)} kB a page`,
    ],
    [`${name}: kept at a first visit`, megabytes(one.shell), 'MB'],
    [`${name}: lists of the whole site`, megabytes(one.lists), 'MB'],
  ];
};

/** A hundred times as much, along the line through the smallest and the largest site. */
const far = (small: Site, large: Site): Row[] => {
  const at = (figure: (one: Site) => number): number =>
    figure(small) +
    ((figure(large) - figure(small)) * (FAR - small.times)) / (large.times - small.times);
  const name = `${show(FAR)} times the ${large.what}, along the line`;
  return [
    [`${name}: pages`, show(at((one) => one.pages)), ''],
    [`${name}: build`, show(at((one) => one.build)), 's'],
    [`${name}: the same of processors`, show(at((one) => one.processor)), 's'],
    [`${name}: index`, show(at((one) => one.index)), 's'],
    [`${name}: on the host`, show(at((one) => one.bytes) / MILLION), 'MB'],
    [`${name}: kept at a first visit`, show(at((one) => one.shell) / MILLION), 'MB'],
    [`${name}: lists of the whole site`, show(at((one) => one.lists) / MILLION), 'MB'],
  ];
};

/**
 * How building, indexing and hosting grow with the data: sites of made-up data, every position or
 * every type again under other names. Takes many minutes; runs only when it is asked for by name.
 */
export const growth = (): Row[] => {
  const sites = RUNS.map(([what, times]) => {
    console.error(`building ${show(times)} times the ${what}`);
    return site(what, times);
  });
  const large = sites.at(-1);
  const small = sites.find(({ times }) => times === 1);
  return [...sites.flatMap(rowsOf), ...(small && large ? far(small, large) : [])];
};
