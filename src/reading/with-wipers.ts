import type { Catalogue, Reading } from '../engine/index.ts';

/**
 * The catalogue for leading on from readings: where the likeliest has a taper, only kinds of parts
 * with a wiper are left, panel pots first.
 */
export const withWipers = (catalogue: Catalogue, [best]: readonly Reading[]): Catalogue => {
  if (best?.taper === undefined) return catalogue;
  const kinds = Object.entries(catalogue.kinds);
  return {
    ...catalogue,
    kinds: Object.fromEntries(
      ['panel', 'preset'].flatMap((wanted) => kinds.filter(([, { wiper }]) => wiper === wanted)),
    ),
  };
};
