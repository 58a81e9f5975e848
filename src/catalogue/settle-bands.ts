import type { Band, Bounds } from '../engine/catalogue.ts';
import type { BandedFigureRow } from '../schemas/kinds.ts';
import { settleOne, type SettlingTables } from './settle.ts';

/** What is known of bands of values and ratings, by type and property. */
export type BandTable = Record<string, Record<string, Band[]>>;

const span = (low: number | undefined, high: number | undefined): Bounds | undefined =>
  low === undefined && high === undefined
    ? undefined
    : {
        ...(low === undefined ? {} : { least: low }),
        ...(high === undefined ? {} : { most: high }),
      };

const bandOf = (
  rows: readonly BandedFigureRow[],
  tables: Pick<SettlingTables, 'properties' | 'absorptionTests' | 'units'>,
): Band[] => {
  const [first] = rows;
  const property = tables.properties.find(({ id }) => id === first?.property);
  if (first === undefined || property === undefined) return [];
  const figures = rows.map((row) => ({
    ...row,
    status: 'known' as const,
    use: 'used' as const,
    test: '',
    disagreement: '',
  }));
  const values = span(first.value_min, first.value_max);
  const ratings = span(first.rating_min, first.rating_max);
  return [
    {
      ...(values === undefined ? {} : { values }),
      ...(ratings === undefined ? {} : { ratings }),
      knowledge: settleOne(figures, property, { types: [], figures, ...tables }),
    },
  ];
};

const bandKey = (row: BandedFigureRow): string =>
  [row.value_min, row.value_max, row.rating_min, row.rating_max].join(' ');

/** Figures of one band of one property are joined as those of a type are; bands keep their order. */
export const settleBands = (
  rows: readonly BandedFigureRow[],
  tables: Pick<SettlingTables, 'properties' | 'absorptionTests' | 'units'>,
): BandTable =>
  Object.fromEntries(
    [...Map.groupBy(rows, ({ type }) => type)].map(([type, ofType]) => [
      type,
      Object.fromEntries(
        [...Map.groupBy(ofType, ({ property }) => property)].map(([property, ofProperty]) => [
          property,
          [...Map.groupBy(ofProperty, bandKey).values()].flatMap((band) => bandOf(band, tables)),
        ]),
      ),
    ]),
  );
