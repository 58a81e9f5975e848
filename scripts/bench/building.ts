import { globSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { writeBareSite } from './bare-site.ts';
import { took, tookScript, type Took } from './measured-step.ts';
import { show, type Row } from './measuring.ts';

const PROJECT = join(import.meta.dirname, '..', '..');
/** Inside the project, so that the bare site finds its Astro. */
const BARE = join(PROJECT, 'node_modules', '.bench', 'bare');
/** Times that ours may take as long as the bare build. */
const MOST_TIMES = 1.5;
/** What a build of so many pages may take, s and MB. */
const BUDGET = { pages: 3000, seconds: 30, megabytes: 1000 };

/** Sizes of the pages of a built site, bytes. */
const pageSizes = (site: string): number[] =>
  globSync('**/*.html', { cwd: site })
    .toSorted()
    .filter((file) => file.endsWith('index.html'))
    .map((file) => statSync(join(site, file)).size);

const bareBuild = (sizes: readonly number[]): Took => {
  writeBareSite(BARE, sizes);
  try {
    return took(BARE, 'npx', ['astro', 'build']);
  } finally {
    rmSync(BARE, { recursive: true, force: true });
  }
};

/**
 * The whole build, step by step, beside a bare Astro build of as many pages of the same size on the
 * same machine. By the clock, so on a machine that does nothing else.
 */
export const building = (): Row[] => {
  const ours = tookScript(PROJECT, 'build:pages');
  const sizes = pageSizes(join(PROJECT, 'dist'));
  const bare = bareBuild(sizes);
  const steps = ['build:search', 'build:one-file', 'build:pictures', 'build:offline'].map(
    (name) => [name, tookScript(PROJECT, name)] as const,
  );
  const whole = tookScript(PROJECT, 'build');
  const scaled = (most: number): string =>
    `at most ${show((most * sizes.length) / BUDGET.pages)} for as many pages`;
  return [
    ['pages', String(sizes.length), ''],
    ['build:pages', show(ours.seconds), 's', `${show(ours.megabytes)} MB`],
    ['pages a second', show(sizes.length / ours.seconds), 'pages/s'],
    ['bare Astro, the same pages', show(bare.seconds), 's', `${show(bare.megabytes)} MB`],
    [
      'ours beside the bare build',
      show(ours.seconds / bare.seconds),
      'times',
      `at most ${show(MOST_TIMES)}`,
    ],
    ...steps.map(([name, { seconds, megabytes }]): Row => [
      name,
      show(seconds),
      's',
      `${show(megabytes)} MB in Node`,
    ]),
    ['whole build', show(whole.seconds), 's', scaled(BUDGET.seconds)],
    ['its memory', show(whole.megabytes), 'MB', `at most ${show(BUDGET.megabytes)}`],
  ];
};
