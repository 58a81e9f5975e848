import type { MarkingTables } from '../../schemas/markings.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Hints } from './reading.ts';
import { weights } from './weights.ts';

/** How a value is written: with few figures, so that many can be told apart, or with its unit. */
export type Written = 'bare' | 'precise' | 'unit';

/** What the tokenizer looks things up in. */
export interface Lexicon {
  tables: MarkingTables;
  types: Catalogue['types'];
  hints: Hints;
  /** Weight of a value by its significant figures: whether it is one that was made. */
  seriesWeight: (figures: string, written: Written) => number;
}

/** The number from 1 up to 10 that some significant figures make. */
const mantissaOf = (figures: string): number => Number(`${figures.charAt(0)}.${figures.slice(1)}`);

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** Puts together what the tokenizer needs from the marking tables and the preferred values. */
export const lexiconOf = (
  { markings: tables, series, types }: Pick<Catalogue, 'markings' | 'series' | 'types'>,
  hints: Hints,
): Lexicon => {
  const coarse = series.filter((row) => ['E3', 'E6', 'E12'].includes(row.series));
  const fine = series.filter((row) => row.series === 'E24');
  const seriesWeight = (figures: string, written: Written): number => {
    const mantissa = mantissaOf(figures);
    if (coarse.some((row) => near(row.value, mantissa))) return weights.coarseSeries;
    if (fine.some((row) => near(row.value, mantissa))) return weights.fineSeries;
    if (tables.oldMantissas.some((row) => near(row.value, mantissa))) return weights.oldValue;
    if (series.some((row) => near(row.value, mantissa))) {
      return weights.precisionSeries[written];
    }
    return weights.noSeries[written];
  };
  const family = types[hints.type ?? '']?.family;
  const body = hints.body ?? tables.bodies.find((row) => row.family === family)?.id;
  return {
    tables,
    types,
    hints: body === undefined ? hints : { ...hints, body },
    seriesWeight,
  };
};

/** What two rows have in common, an empty list standing for everything; nothing if they exclude each other. */
export const common = (
  a: readonly string[],
  b: readonly string[],
): readonly string[] | undefined => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both = a.filter((item) => b.includes(item));
  return both.length === 0 ? undefined : both;
};

const order = ['usual', 'other', 'rare'] as const;

/**
 * What letters cost that are in the other case than their table has them; far more where the letter
 * as written is a unit wherever it stands.
 */
export const caseCost = (lexicon: Lexicon, written: string, inTable: string): number => {
  if (written === inTable) return 0;
  const isUnit = lexicon.tables.pointLetters.some(
    (row) =>
      written.includes(row.letter) &&
      row.use === 'usual' &&
      row.bodies.length === 0 &&
      (row.origins.length === 0 || row.origins.includes('international')),
  );
  return isUnit ? weights.otherCaseOfUnit : weights.otherCase;
};

/** Rows with the usual ones first, those of the same use in the order of their table. */
export const inOrderOfUse = <Row extends { use: (typeof order)[number] }>(
  rows: readonly Row[],
): Row[] => [...rows].sort((a, b) => order.indexOf(a.use) - order.indexOf(b.use));

/** The less usual of two uses. */
export const rarer = (a: (typeof order)[number], b: (typeof order)[number]) =>
  order.indexOf(a) > order.indexOf(b) ? a : b;
