import type { MarkingTables } from '../../schemas/markings.ts';
import { decadeOf, SERIES_NAMES, type SeriesName } from '../values/series.ts';
import { finestFor, type SeriesTolerance } from '../values/series-made.ts';
import type { Tolerance } from '../markings/meanings/reading.ts';

/** How a value stands to the series of preferred numbers. */
export interface Preference {
  /** The coarsest series that has it. */
  series?: SeriesName;
  /** Whether it was usual before there were series. */
  old: boolean;
  /** Whether parts of its tolerance are made in that series; true where nothing is known. */
  suits: boolean;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** The number from 1 up to 10 that some figures make; nothing for noughts. */
export const mantissaOf = (figures: string): number | undefined => {
  const digits = figures.replace(/^0+/, '');
  return digits === '' ? undefined : Number(`${digits.charAt(0)}.${digits.slice(1)}`);
};

/** The tables that tell which values are made, and were. */
export interface PreferredTables {
  oldMantissas: readonly Pick<MarkingTables['oldMantissas'][number], 'value'>[];
  /** From the coarsest on. */
  seriesTolerances: readonly SeriesTolerance[];
}

const rank = (series: SeriesName): number => SERIES_NAMES.indexOf(series);

const suited = (
  rows: PreferredTables['seriesTolerances'],
  series: SeriesName,
  tolerance: Tolerance | undefined,
): boolean => {
  if (tolerance?.unit !== 'fraction') return true;
  // Close parts are sold in the coarser series as well.
  const finest = finestFor(rows, Math.max(tolerance.minus, tolerance.plus));
  return finest === undefined || rank(series) <= rank(finest);
};

/** How figures stand to the series, given the tolerance. */
export const preferenceOf = (
  figures: string,
  tolerance: Tolerance | undefined,
  { oldMantissas, seriesTolerances }: PreferredTables,
): Preference => {
  const mantissa = mantissaOf(figures);
  if (mantissa === undefined) return { old: false, suits: false };
  const series = SERIES_NAMES.find((name) =>
    decadeOf(name).some((member) => near(member, mantissa)),
  );
  const old = oldMantissas.some((row) => near(row.value, mantissa));
  return series === undefined
    ? { old, suits: false }
    : { series, old, suits: suited(seriesTolerances, series, tolerance) };
};

/** What a value in figures is worth by the series that it is in, as `markings/colour-weights.csv` names it. */
export type Standing =
  | 'coarse-series'
  | 'fine-series'
  | 'precision-series'
  | 'old-value'
  | 'unsuited-series'
  | 'too-fine-series'
  | 'no-series';

const COARSE: readonly SeriesName[] = ['E3', 'E6', 'E12'];

/** What a preference comes to. */
export const standingOf = ({ series, old, suits }: Preference): Standing => {
  if (series === undefined) return old ? 'old-value' : 'no-series';
  const isFine = series === 'E24';
  const isPrecision = !isFine && !COARSE.includes(series);
  if (!suits) return isPrecision && !old ? 'too-fine-series' : 'unsuited-series';
  if (isPrecision) return 'precision-series';
  return isFine ? 'fine-series' : 'coarse-series';
};
