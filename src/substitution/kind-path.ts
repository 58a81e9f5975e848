import type { KindRow } from '../schemas/kinds.ts';

/** Address of a page about a type of some kind in a position. */
export const kindPath = (
  { plural }: Pick<KindRow, 'plural'>,
  type: string,
  position: string,
): `/${string}/in/${string}/` => `/${plural}/${type}/in/${position}/`;
