import { runAll, runStep, runTogether } from './steps.ts';

/** Checks the data, builds the pages into dist/ with their index, the pictures beside shared links and a map for search engines, makes one file of it for a stick, and lists the files for use without a network. */
const done =
  runAll([{ name: 'check-data' }, { name: 'build:pages' }]) &&
  (await runTogether([
    { name: 'build:search' },
    { name: 'build:one-file' },
    { name: 'build:pictures' },
    { name: 'build:sitemap' },
  ])) &&
  runStep({ name: 'build:offline' });
process.exit(done ? 0 : 1);
