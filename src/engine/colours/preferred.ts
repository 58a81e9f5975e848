import type { MarkingTables } from '../../schemas/markings.ts';
import { FLOAT_ERROR } from '../quantities/within.ts';
import { decadeOf, SERIES_NAMES, type SeriesName } from '../values/series.ts';
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
  seriesTolerances: readonly Pick<
    MarkingTables['seriesTolerances'][number],
    'series' | 'percent'
  >[];
}

const rank = (series: SeriesName): number => SERIES_NAMES.indexOf(series);

const suited = (
  rows: PreferredTables['seriesTolerances'],
  series: SeriesName,
  tolerance: Tolerance | undefined,
): boolean => {
  if (tolerance?.unit !== 'fraction') return true;
  const size = Math.max(tolerance.minus, tolerance.plus) * (1 + FLOAT_ERROR);
  // The finest series is for tighter parts as well, and close parts are sold in the coarser ones.
  const own = rows.find(({ percent }) => size >= percent / 100) ?? rows.at(-1);
  return own === undefined || rank(series) <= rank(own.series);
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
