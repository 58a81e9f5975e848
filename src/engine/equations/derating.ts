import type { CategoryVoltageRow, DeratingRow } from '../../schemas/derating.ts';

/** The straight line of one derating row at a temperature (degC) inside its span. */
const shareIn = (row: DeratingRow, temperature: number): number =>
  row.to_c === row.from_c
    ? Math.min(row.share, row.end_share)
    : row.share +
      ((row.end_share - row.share) * (temperature - row.from_c)) / (row.to_c - row.from_c);

/** The rows of one guideline for one type, by rising temperature; sorted once for each table. */
const sorted = new WeakMap<readonly DeratingRow[], Map<string, DeratingRow[]>>();

const rowsFor = (
  rows: readonly DeratingRow[],
  guideline: string,
  type: string,
): readonly DeratingRow[] => {
  const known = sorted.get(rows) ?? new Map<string, DeratingRow[]>();
  sorted.set(rows, known);
  const key = `${guideline} ${type}`;
  const own =
    known.get(key) ??
    rows
      .filter((row) => row.guideline === guideline && row.types.includes(type))
      .sort((a, b) => a.from_c - b.from_c);
  known.set(key, own);
  return own;
};

/** Whether a row speaks of a rating (V). */
const speaksOf = ({ above_v: above = 0, up_to_v: upTo = Infinity }: DeratingRow, rated: number) =>
  rated > above && rated <= upTo;

const findBorders = (rows: readonly DeratingRow[], type: string): readonly number[] => {
  const own = rows.filter(({ types }) => types.includes(type));
  const borders = own.flatMap(({ above_v: above, up_to_v: upTo }) => [above ?? [], upTo ?? []]);
  return [...new Set(borders.flat())].toSorted((a, b) => a - b).concat(Infinity);
};

/** What has been found, by type; every part of every assessment asks. */
const bordersFound = new WeakMap<readonly DeratingRow[], Map<string, readonly number[]>>();

/** Ratings (V) at which what is allowed of a type may change, upwards; infinity is the last. */
export const ratingBorders = (rows: readonly DeratingRow[], type: string): readonly number[] => {
  const all = bordersFound.get(rows) ?? new Map<string, readonly number[]>();
  bordersFound.set(rows, all);
  const borders = all.get(type) ?? findBorders(rows, type);
  all.set(type, borders);
  return borders;
};

/** A kind of part by its type and its rated voltage (V). */
export interface Rated {
  type: string;
  rated: number;
}

/**
 * Share of the rated voltage that a guideline lets stand across a part at a temperature (degC).
 * Below the first span the first share holds; above the last nothing is allowed. `undefined`
 * where the guideline does not speak of the type at that rating.
 */
export const allowedShare = (
  rows: readonly DeratingRow[],
  guideline: string,
  { type, rated }: Rated,
  temperature: number,
): { share: number; row: DeratingRow } | undefined => {
  const own = rowsFor(rows, guideline, type).filter((row) => speaksOf(row, rated));
  const first = own[0];
  if (first === undefined) return undefined;
  if (temperature < first.from_c) return { share: first.share, row: first };
  // At the border of two spans the stricter one holds.
  const holding = own.filter((row) => temperature >= row.from_c && temperature <= row.to_c);
  const shares = holding.map((row) => ({ share: shareIn(row, temperature), row }));
  const strictest = shares.sort((a, b) => a.share - b.share)[0];
  return strictest ?? { share: 0, row: own.at(-1) ?? first };
};

/**
 * Share of the rated voltage (V) that a maker prints for a rating of a type at a temperature (degC)
 * above the one up to which the whole of it holds: a straight line down to the printed category
 * voltage. `undefined` where none is printed or the temperature is outside the line.
 */
export const categoryShare = (
  rows: readonly CategoryVoltageRow[],
  { type, rated }: Rated,
  temperature: number,
): { share: number; row: CategoryVoltageRow } | undefined => {
  const row = rows.find((one) => one.types.includes(type) && one.rated_v === rated);
  if (row === undefined || temperature <= row.from_c || temperature > row.to_c) return undefined;
  const part = (temperature - row.from_c) / (row.to_c - row.from_c);
  return { share: 1 - part * (1 - row.category_v / row.rated_v), row };
};

/** The guideline that holds the makers' own ceilings. */
export const MAKERS = 'maker';

/** The one of cautious use: where the visitor chooses none, and where the chosen one is silent. */
export const DEFAULT_GUIDELINE = 'workshop';

/** What is printed for the very rating of a part, which counts for the makers' own ceiling only. */
export const printedShare = (
  rows: readonly CategoryVoltageRow[],
  guideline: string,
  part: Rated,
  temperature: number,
): ReturnType<typeof categoryShare> =>
  guideline === MAKERS ? categoryShare(rows, part, temperature) : undefined;

/** Rules of a guideline by type, and what makers print for single ratings. */
export interface DeratingRules {
  rows: readonly DeratingRow[];
  categories: readonly CategoryVoltageRow[];
}

/**
 * Share of its rated voltage (V) that a guideline lets stand across a part at a temperature (degC):
 * of the makers' own what is printed for its very rating, if anything is.
 */
export const shareByRule = (
  { rows, categories }: DeratingRules,
  guideline: string,
  part: Rated,
  temperature: number,
): { share: number; row: DeratingRow | CategoryVoltageRow } | undefined =>
  printedShare(categories, guideline, part, temperature) ??
  allowedShare(rows, guideline, part, temperature);
