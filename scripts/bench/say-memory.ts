import { appendFileSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

/**
 * Loaded into a process that is measured, before its own modules: when that ends, it adds a line with
 * the most memory that it held, kB, to the file that `SAY_MEMORY` names.
 */
const file = process.env['SAY_MEMORY'];
if (isMainThread && file !== undefined)
  process.on('exit', () => appendFileSync(file, `${String(process.resourceUsage().maxRSS)}\n`));
