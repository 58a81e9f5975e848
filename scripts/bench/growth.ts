import { cpSync, globSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { grow, type Growth } from './grown-data.ts';
import { tookScript } from './measured-step.ts';
import { show, type Row } from './measuring.ts';

const PROJECT = join(import.meta.dirname, '..', '..');
/** Inside the project, so that the copy finds its packages. */
const COPY = join(PROJECT, 'node_modules', '.bench', 'grown');
const COPIED = [
  'src',
  'scripts',
  'public',
  'data',
  'package.json',
  'astro.config.mjs',
  'tsconfig.json',
];
const MILLION = 1e6;

const RUNS: readonly (readonly [what: Growth, times: number])[] = [
  ['positions', 1],
  ['positions', 5],
  ['positions', 20],
  ['types', 2],
  ['types', 4],
];

const bytesIn = (folder: string): number =>
  globSync('**/*', { cwd: folder, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, { parentPath, name }) => sum + statSync(join(parentPath, name)).size, 0);

/** A whole site of grown data: what it takes to build, index, keep and host. */
const site = (what: Growth, times: number): Row[] => {
  rmSync(COPY, { recursive: true, force: true });
  mkdirSync(COPY, { recursive: true });
  for (const path of COPIED) cpSync(join(PROJECT, path), join(COPY, path), { recursive: true });
  grow(join(COPY, 'data'), what, times);
  const pages = tookScript(COPY, 'build:pages');
  const index = tookScript(COPY, 'build:search');
  const offline = tookScript(COPY, 'build:offline');
  const dist = join(COPY, 'dist');
  const count = globSync('**/index.html', { cwd: dist }).length;
  const bytes = bytesIn(dist);
  const name = `${show(times)} times the ${what}`;
  const each = (seconds: number): string => `${show((seconds * 1000) / count)} ms a page`;
  return [
    [`${name}: pages`, show(count), ''],
    [
      `${name}: build`,
      show(pages.seconds),
      's',
      `${each(pages.seconds)}, ${show(pages.megabytes)} MB`,
    ],
    [`${name}: index`, show(index.seconds), 's', each(index.seconds)],
    [`${name}: list of files to keep`, show(offline.seconds), 's', each(offline.seconds)],
    [
      `${name}: on the host`,
      show(bytes / MILLION),
      'MB',
      `${show(bytes / count / 1000)} kB a page`,
    ],
  ];
};

/**
 * How building, indexing and hosting grow with the data: sites of made-up data, every position or
 * every type again under other names. Takes many minutes; runs only when it is asked for by name.
 */
export const growth = (): Row[] => {
  try {
    return RUNS.flatMap(([what, times]) => site(what, times));
  } finally {
    rmSync(COPY, { recursive: true, force: true });
  }
};
