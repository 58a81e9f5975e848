import type { Catalogue } from '../engine/index.ts';
import { unpackRows } from '../packed/rows.ts';

/** Id of the element of the file that holds the catalogue, once. */
export const CATALOGUE_ID = 'catalogue';

let read: Catalogue | undefined;

/** The whole catalogue, read when it is first wanted; written by the build, so its shape is trusted. */
export const wholeCatalogue = (): Catalogue => {
  read ??= unpackRows(
    JSON.parse(document.getElementById(CATALOGUE_ID)?.textContent ?? ''),
  ) as Catalogue;
  return read;
};
