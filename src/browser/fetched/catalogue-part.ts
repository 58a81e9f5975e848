import type { Catalogue } from '../../engine/index.ts';
import { fetchedOnce } from './fetched-once.ts';
import { packedFile } from './packed-file.ts';

const parts = new Map<string, () => Promise<Catalogue>>();

/**
 * One part of the catalogue, fetched from this site once a visit.
 * @param part a position id, `reading`, `colours`, `look` or `drawings`
 */
export const cataloguePart = (part: string): Promise<Catalogue> => {
  const fetched =
    parts.get(part) ??
    fetchedOnce(() => packedFile(`/catalogue/${part}.json`) as Promise<Catalogue>);
  parts.set(part, fetched);
  return fetched();
};
