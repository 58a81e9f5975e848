import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Catalogue } from '../../catalogue.ts';
import { significant } from './numbers.ts';
import { SERIES_NAMES } from '../../values/series.ts';
import { finestFor, type SeriesTolerance } from '../../values/series-made.ts';
import { weights } from '../meanings/weights.ts';

/** How a value is written: with few figures, so that many can be told apart, or with its unit. */
export type Written = 'bare' | 'precise' | 'unit';

/** The coarsest series that a value is in; `old` where it was usual before there were series. */
export type SeriesPlace = Catalogue['series'][number]['series'] | 'old';

/** The place of a value by its significant figures; nothing where it is in no series. */
export type SeriesPlaces = ReadonlyMap<string, SeriesPlace>;

/** The significant figures of a number from 1 up to 10. */
const figuresOf = (mantissa: number): string =>
  significant(String(Math.round(mantissa * 1000)).padStart(4, '0'));

/** Where every value stands that was ever usual. */
export const seriesPlacesOf = (
  series: Catalogue['series'],
  oldMantissas: MarkingTables['oldMantissas'],
): SeriesPlaces => {
  const places = new Map<string, SeriesPlace>();
  const add = (value: number, place: SeriesPlace): void => {
    const figures = figuresOf(value);
    if (!places.has(figures)) places.set(figures, place);
  };
  // What was usual before there were series is likelier than a value of the precise ones.
  for (const name of SERIES_NAMES) {
    for (const row of series) if (row.series === name) add(row.value, name);
    if (name === 'E24') for (const { value } of oldMantissas) add(value, 'old');
  }
  return places;
};

/**
 * How many series beyond the one for its tolerance a value is in: none or less where parts of such
 * a tolerance are made in it.
 */
export const beyondSeriesOf = (
  rows: readonly SeriesTolerance[],
  place: SeriesPlace,
  tolerance: number,
): number => {
  if (place === 'old') return SERIES_NAMES.length;
  const finest = finestFor(rows, tolerance);
  return SERIES_NAMES.indexOf(place) - (finest === undefined ? 0 : SERIES_NAMES.indexOf(finest));
};

/** Weight of a value by its significant figures: whether it is one that was made. */
export const seriesWeight = (places: SeriesPlaces, figures: string, written: Written): number => {
  switch (places.get(figures)) {
    case 'E3':
    case 'E6':
    case 'E12':
      return weights.coarseSeries;
    case 'E24':
      return weights.fineSeries;
    case 'old':
      return weights.oldValue;
    case undefined:
      return weights.noSeries[written];
    default:
      return weights.precisionSeries[written];
  }
};
