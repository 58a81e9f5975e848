import { runAll } from './steps.ts';

/** Checks the data, builds the pages and the search index into dist/. */
const done = runAll([{ name: 'check-data' }, { name: 'build:pages' }, { name: 'build:search' }]);
process.exit(done ? 0 : 1);
