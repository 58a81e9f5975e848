import type { Catalogue } from '../../engine/index.ts';

type Tables = Catalogue['markings'];

/** What codes begin with whose slope, figure times multiplier, has a name in the trade. */
const namedSlopes = ({ class1Signs, class1Codes }: Tables, system: string): string[] => {
  const named = new Set(class1Codes.map((row) => row.typ_ppm));
  const signs = class1Signs.filter((row) => row.system === system && row.use === 'usual');
  const multipliers = signs.filter(({ place }) => place === 'multiplier');
  return signs
    .filter(({ place }) => place === 'figure')
    .flatMap((figure) =>
      multipliers
        // Nought times anything is nought; it is written with the first of them.
        .filter((__, index) => figure.value !== 0 || index === 0)
        .filter(({ value }) => named.has(Math.round(figure.value * value) + 0))
        .map(({ symbol }) => figure.symbol + symbol),
    );
};

/** Temperature codes that are met, and that rules make which no table lists one by one. */
export const madeCodes = (tables: Tables): string[] =>
  tables.metCodes.flatMap(({ system, begins, ends }) =>
    (begins.length > 0 ? begins : namedSlopes(tables, system)).flatMap((begin) =>
      ends.map((end) => begin + end),
    ),
  );
