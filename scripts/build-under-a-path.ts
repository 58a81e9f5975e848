/**
 * Builds the site once more, to be served under a path: `npm run build:under-a-path`. Not every host
 * gives a site the top of its address; the browser tests look at this one under that path.
 */
import { runStep, runTogether } from './steps.ts';
import { UNDER_A_PATH } from './under-a-path.ts';

process.env['BASE'] = UNDER_A_PATH.base;
process.env['SITE_FOLDER'] = UNDER_A_PATH.folder;
const done =
  runStep({ name: 'build:pages' }) &&
  (await runTogether([{ name: 'build:search' }, { name: 'build:one-file' }])) &&
  runStep({ name: 'build:offline' });
process.exit(done ? 0 : 1);
