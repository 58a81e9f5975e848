import type { Catalogue, Reading } from '../engine/index.ts';

/** The sum that only parts with a wiper lead to. */
const OF_WIPERS = 'trimmer-wiper';

/**
 * The catalogue for leading on from readings: where the likeliest has a taper, only kinds of parts
 * with a wiper are left, panel pots first.
 */
export const withWipers = (catalogue: Catalogue, [best]: readonly Reading[]): Catalogue =>
  best?.taper === undefined
    ? catalogue
    : {
        ...catalogue,
        kinds: Object.fromEntries(
          Object.entries(catalogue.kinds)
            .filter(([, { sums }]) => sums.includes(OF_WIPERS))
            .reverse(),
        ),
      };
