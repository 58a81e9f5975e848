import type { MarkingTables } from '../../schemas/markings.ts';
import type { SeriesRow } from '../../schemas/values.ts';
import type { Hints } from './reading.ts';
import { weights } from './weights.ts';

/** What the tokenizer looks things up in. */
export interface Lexicon {
  tables: MarkingTables;
  hints: Hints;
  /** Weight of a value by its significant figures: whether it is one that was made. */
  seriesWeight: (figures: string, withUnit: boolean) => number;
}

/** The number from 1 up to 10 that some significant figures make. */
const mantissaOf = (figures: string): number => Number(`${figures.charAt(0)}.${figures.slice(1)}`);

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** Puts together what the tokenizer needs from the marking tables and the preferred values. */
export const lexiconOf = (
  tables: MarkingTables,
  series: readonly SeriesRow[],
  hints: Hints,
): Lexicon => {
  const coarse = series.filter((row) => ['E3', 'E6', 'E12'].includes(row.series));
  const fine = series.filter((row) => row.series === 'E24');
  const seriesWeight = (figures: string, withUnit: boolean): number => {
    const mantissa = mantissaOf(figures);
    if (coarse.some((row) => near(row.value, mantissa))) return weights.coarseSeries;
    if (fine.some((row) => near(row.value, mantissa))) return weights.fineSeries;
    if (tables.oldMantissas.some((row) => near(row.value, mantissa))) return weights.oldValue;
    if (series.some((row) => near(row.value, mantissa))) return weights.precisionSeries;
    return withUnit ? weights.noSeriesWithUnit : weights.noSeries;
  };
  return { tables, hints, seriesWeight };
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

/** The less usual of two uses. */
export const rarer = (a: (typeof order)[number], b: (typeof order)[number]) =>
  order.indexOf(a) > order.indexOf(b) ? a : b;
