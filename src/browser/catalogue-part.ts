import type { Catalogue } from '../engine/index.ts';
import { siteFile } from './site-file.ts';

const loading = new Map<string, Promise<Catalogue>>();

/**
 * One part of the catalogue, fetched from this site once a visit.
 * @param part a position id, `reading`, `colours`, `look` or `drawings`
 */
export const cataloguePart = (part: string): Promise<Catalogue> => {
  const known = loading.get(part);
  if (known !== undefined) return known;
  const fetched = siteFile(`/catalogue/${part}.json`) as Promise<Catalogue>;
  // A failure, such as no network, is not kept: the next change tries again.
  fetched.catch(() => loading.delete(part));
  loading.set(part, fetched);
  return fetched;
};
