import { resolve } from 'node:path';
import type { Catalogue } from '../engine/catalogue.ts';
import { assembleCatalogue } from './assemble.ts';
import { checkTables } from './checks/index.ts';
import { dataFolder } from './data-folder.ts';
import { DataFaults, inReadingOrder, type Fault } from './fault.ts';
import { readOwnFolder } from './own-tables.ts';
import { readFolder } from './read-folder.ts';

const loaded = new Map<string, Catalogue>();

/** Every fault of a data folder, in reading order; none for a folder that may be used. */
export const checkFolder = (folder: string = dataFolder()): Fault[] => {
  const { tables, faults } = readFolder(folder);
  return inReadingOrder([...faults, ...checkTables(tables)]);
};

/**
 * Reads a data folder, checks it, and returns what the engine reckons from. A folder is read once a
 * process; later calls return the same catalogue.
 *
 * @param folder the folder with the tables; this project's own by default.
 * @throws DataFaults with every fault, if there is any.
 */
export const loadCatalogue = (folder: string = dataFolder()): Catalogue => {
  const path = resolve(folder);
  const known = loaded.get(path);
  if (known !== undefined) return known;
  const { tables, faults } = path === resolve(dataFolder()) ? readOwnFolder() : readFolder(path);
  const all = inReadingOrder([...faults, ...checkTables(tables)]);
  if (all.length > 0) throw new DataFaults(all);
  const catalogue = assembleCatalogue(tables);
  loaded.set(path, catalogue);
  return catalogue;
};
