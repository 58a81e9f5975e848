import type { Catalogue } from '../../engine/index.ts';

type Tables = Catalogue['markings'];

/** Signs of one place of a system, in the order of their table. */
const placeOf = <Sign extends { system: string; place: string; use: string }>(
  rows: readonly Sign[],
  system: string,
  place: string,
): Sign[] =>
  rows.filter((row) => row.system === system && row.place === place && row.use === 'usual');

/** Spans and changes of the class 2 codes that are met; the rules make many more. */
const SPANS_MET = ['X5', 'X6', 'X7', 'X8', 'Y5', 'Y6', 'Y7', 'Z5'];
const CHANGES_MET = 'FPRSTUV';

/** Codes of class 2 in three signs, such as X8R or Y5U. */
const classTwo = ({ class2Signs }: Tables): string[] => {
  const changes = placeOf(class2Signs, 'eia-2', 'change').filter(({ symbol }) =>
    CHANGES_MET.includes(symbol),
  );
  return SPANS_MET.flatMap((span) => changes.map(({ symbol }) => span + symbol));
};

/** Spreads of the class 1 codes that are met. */
const SPREADS_MET = 'GHJK';

/** Codes of class 1 in three signs, such as R2H, for the slopes that have a name in the trade. */
const classOne = ({ class1Signs, class1Codes }: Tables): string[] => {
  const named = new Set(class1Codes.map((row) => row.typ_ppm));
  const spreads = placeOf(class1Signs, 'eia-1', 'spread').filter(({ symbol }) =>
    SPREADS_MET.includes(symbol),
  );
  return placeOf(class1Signs, 'eia-1', 'figure').flatMap((figure) =>
    placeOf(class1Signs, 'eia-1', 'multiplier')
      // Nought times anything is nought; it is written with the first of them.
      .filter((__, index) => figure.value !== 0 || index === 0)
      .filter(({ value }) => named.has(Math.round(figure.value * value) + 0))
      .flatMap(({ symbol }) => spreads.map((spread) => figure.symbol + symbol + spread.symbol)),
  );
};

/** Temperature codes that are met, and that rules make which no table lists one by one. */
export const madeCodes = (tables: Tables): string[] => [...classTwo(tables), ...classOne(tables)];
