import { globSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { SITE } from '../site-folder.ts';
import { writeBareSite, type Bare } from './bare-site.ts';
import { took, tookScript, type Took } from './measured-step.ts';
import { show, type Row } from './measuring.ts';

const PROJECT = join(import.meta.dirname, '..', '..');
/** Inside the project, so that the bare site finds its Astro. */
const BARE = join(PROJECT, 'node_modules', '.bench', 'bare');
/** Times that ours may take as long as the bare build. */
const MOST_TIMES = 1.5;
/** What a build of so many pages may take, s and MB. */
const BUDGET = { pages: 3000, seconds: 30, megabytes: 1000 };

/** Sizes of the files of a built site that a pattern names, bytes. */
const sizesOf = (site: string, pattern: string): number[] =>
  globSync(pattern, { cwd: site })
    .toSorted()
    .map((file) => statSync(join(site, file)).size);

/** What stands beside a time by the clock. */
const besides = ({ megabytes, processor }: Took): string =>
  `${show(processor)} s of processors, ${show(megabytes)} MB`;

const bareBuild = (bare: Bare): Took => {
  writeBareSite(BARE, bare);
  try {
    return took(BARE, 'npx', ['astro', 'build']);
  } finally {
    rmSync(BARE, { recursive: true, force: true });
  }
};

/**
 * The whole build, step by step, beside a bare Astro build of as many pages of the same size on the
 * same machine; and beside one that has as many JSON files as well, which tells what is
 * the work of the engine and what is Astro's. By the clock, so on a machine that does nothing else.
 */
export const building = (): Row[] => {
  const ours = tookScript(PROJECT, 'build:pages');
  const pages = sizesOf(join(PROJECT, SITE), '**/index.html');
  const files = sizesOf(join(PROJECT, SITE), '**/*.json');
  const bare = bareBuild({ pages, files: [] });
  const like = bareBuild({ pages, files });
  const steps = [
    'build:search',
    'build:one-file',
    'build:pictures',
    'build:sitemap',
    'build:offline',
  ].map((name) => [name, tookScript(PROJECT, name)] as const);
  const whole = tookScript(PROJECT, 'build');
  const scaled = (most: number): string =>
    `at most ${show((most * pages.length) / BUDGET.pages)} for as many pages`;
  return [
    ['pages', String(pages.length), ''],
    ['build:pages', show(ours.seconds), 's', besides(ours)],
    ['pages a second', show(pages.length / ours.seconds), 'pages/s'],
    ['bare Astro, the same pages', show(bare.seconds), 's', besides(bare)],
    [
      'ours beside the bare build',
      show(ours.seconds / bare.seconds),
      'times',
      `at most ${show(MOST_TIMES)}`,
    ],
    ['bare Astro, as many JSON files too', show(like.seconds), 's', besides(like)],
    ['ours beside that', show(ours.seconds / like.seconds), 'times'],
    [
      'the same in time of processors',
      show(ours.processor / bare.processor),
      'times',
      `${show(ours.processor / like.processor)} beside the second`,
    ],
    ...steps.map(([name, step]): Row => [name, show(step.seconds), 's', besides(step)]),
    ['whole build', show(whole.seconds), 's', scaled(BUDGET.seconds)],
    ['its memory', show(whole.megabytes), 'MB', `at most ${show(BUDGET.megabytes)}`],
  ];
};
