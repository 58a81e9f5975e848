import { runAll } from './steps.ts';

/** Builds the whole site and serves it; the server prints its address. */
const served = runAll([{ name: 'build' }, { name: 'serve' }]);
process.exit(served ? 0 : 1);
