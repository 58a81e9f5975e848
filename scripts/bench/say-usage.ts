import { appendFileSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

/**
 * Loaded into a process that is measured, before its own modules: when that ends, it adds a line with
 * the most memory that it held, kB, and the processor time that it took, µs, to the file that
 * `SAY_USAGE` names.
 */
const file = process.env['SAY_USAGE'];
if (isMainThread && file !== undefined)
  process.on('exit', () => {
    const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
    appendFileSync(file, `${String(maxRSS)} ${String(userCPUTime + systemCPUTime)}\n`);
  });
