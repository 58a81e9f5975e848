import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Fault } from './fault.ts';
import { tableNames } from './read-folder.ts';
import { readSeals, sealFaults, SEALS_FILE } from './seals.ts';

/**
 * Lines of a data folder that are not as they were sealed; none where the folder has no seals.
 *
 * @param except tables that have other faults: those say better what is wrong with a line.
 */
export const brokenSealsOf = (folder: string, except: ReadonlySet<string>): Fault[] => {
  const path = join(folder, SEALS_FILE);
  if (!existsSync(path)) return [];
  const seals = readSeals(readFileSync(path, 'utf8'));
  return tableNames
    .filter((file) => !except.has(file) && existsSync(join(folder, file)))
    .flatMap((file) => sealFaults(file, readFileSync(join(folder, file)), seals.get(file)));
};
