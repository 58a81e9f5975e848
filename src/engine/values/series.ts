import { E_SERIES } from './e-series.generated.ts';

/** A preferred-number series of IEC 60063; the number is how many values a decade holds. */
export type SeriesName = keyof typeof E_SERIES;

/** Every series, the coarsest first. */
export const SERIES_NAMES = Object.keys(E_SERIES) as SeriesName[];

/** Whether a name is that of a series. */
export const isSeriesName = (name: string): name is SeriesName => Object.hasOwn(E_SERIES, name);

/** The values of one decade, from 1 up to 10, rising. */
export const decadeOf = (series: SeriesName): readonly number[] => E_SERIES[series];

/**
 * A series value in some decade, exactly as it would be written: 4.7 in decade -9 is 4.7e-9,
 * without the rounding of a multiplication.
 */
export const inDecade = (value: number, decade: number): number =>
  Number(`${String(value)}e${String(decade)}`);

/** Decades that have been written out: every part that is looked for asks for the same few. */
const written = new Map<string, readonly number[]>();

/** The values of a series in one decade, rising. */
const valuesIn = (series: SeriesName, decade: number): readonly number[] => {
  const key = `${series} ${String(decade)}`;
  const values = written.get(key) ?? decadeOf(series).map((value) => inDecade(value, decade));
  written.set(key, values);
  return values;
};

/** Every value of a series between two positive limits, both included, rising. */
export const valuesBetween = (series: SeriesName, low: number, high: number): number[] => {
  if (!(low > 0) || !(high >= low) || !Number.isFinite(high)) return [];
  const values: number[] = [];
  // Rounded outwards: the logarithm of a power of ten need not come out whole everywhere.
  const first = Math.floor(Math.log10(low));
  const last = Math.ceil(Math.log10(high));
  for (let decade = first; decade <= last; decade += 1)
    for (const member of valuesIn(series, decade))
      if (member >= low && member <= high) values.push(member);
  return values;
};
