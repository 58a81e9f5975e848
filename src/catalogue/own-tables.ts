import { dataFolder } from './data-folder.ts';
import { readFolder } from './read-folder.ts';

let read: ReturnType<typeof readFolder> | undefined;

/**
 * This project's own tables with what is wrong in them, read once a process: a build wants them for
 * the catalogue, for the pages of the tables and for those of the evidence.
 */
export const readOwnFolder = (): ReturnType<typeof readFolder> =>
  (read ??= readFolder(dataFolder()));
