import { LISTS } from '../src/offline/lists.ts';

/** What a first visit keeps on a device: what every page needs, and what one sees without a network. */
export const SHELL: readonly string[] = [
  '_astro/**',
  'index.html',
  'offline/index.html',
  'icon.svg',
  'manifest.webmanifest',
  'catalogue/reading.json',
  LISTS,
];

/**
 * What that may come to, in bytes that are not packed. A test holds the site to it, and not the build,
 * so that somebody with ten times the data can build theirs.
 */
export const MOST_SHELL_BYTES = 2_000_000;
