import type { Fault } from '../fault.ts';
import type { Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows, type GoodRow } from './lookups.ts';

const rule = 'e-series';

type SeriesRow = GoodRow<'e-series.csv'>;

/** The series of IEC 60063 in two families; each member holds the one before it. */
const families = [
  ['E3', 'E6', 'E12', 'E24'],
  ['E48', 'E96', 'E192'],
] as const;

type SeriesName = (typeof families)[number][number];

/** Values of a decade, which the name of a series says. */
const sizeOf = (series: string): number => Number(series.slice(1));

/** Digits after the point: two significant ones up to E24, three from E48 on. */
const placesOf = (series: string): number => (sizeOf(series) <= 24 ? 1 : 2);

/**
 * How far a preferred value may be from the exact power of ten: the rounding of its last digit, and
 * up to 5 % where history has settled on another value, as with 3.0 for 2.87.
 */
const mayDiffer = (series: string, exact: number): number =>
  placesOf(series) === 1 ? 0.05 * exact : 0.0065;

const oneSeries = (series: string, rows: readonly SeriesRow[]): Fault[] => {
  const size = sizeOf(series);
  const gap = rows.findIndex((row, index) => row.value.position !== index + 1);
  const gapped = rows[gap];
  if (gapped !== undefined) {
    return [
      cellFault(rule, 'e-series.csv', gapped, 'position', {
        wrong: `positions of ${series} are not numbered from 1 without a gap`,
        expected: String(gap + 1),
      }),
    ];
  }
  const faults: Fault[] = [];
  const last = rows.at(-1);
  if (last !== undefined && rows.length !== size) {
    faults.push(
      cellFault(rule, 'e-series.csv', last, 'position', {
        wrong: `${series} has ${rows.length} values`,
        expected: `${size} values`,
      }),
    );
  }
  for (const [index, row] of rows.entries()) {
    const before = rows[index - 1]?.value.value ?? 0;
    const exact = 10 ** ((row.value.position - 1) / size);
    const { value } = row.value;
    if (value <= before) {
      faults.push(
        cellFault(rule, 'e-series.csv', row, 'value', {
          wrong: `${series} does not rise`,
          expected: `a value above ${before}`,
        }),
      );
    } else if (
      Number(value.toFixed(placesOf(series))) !== value ||
      Math.abs(value - exact) > mayDiffer(series, exact)
    ) {
      faults.push(
        cellFault(rule, 'e-series.csv', row, 'value', {
          wrong: `not a value of ${series}`,
          expected: `about ${exact.toFixed(3)}, with ${placesOf(series)} digits after the point`,
        }),
      );
    }
  }
  return faults;
};

const subset = (
  small: readonly SeriesRow[],
  name: string,
  large: readonly SeriesRow[],
): Fault[] => {
  const values = new Set(large.map((row) => row.value.value));
  return small
    .filter((row) => !values.has(row.value.value))
    .map((row) =>
      cellFault(rule, 'e-series.csv', row, 'value', {
        wrong: `${row.value.series} has a value that ${name} does not have`,
        expected: `a value of ${name}`,
      }),
    );
};

const missing = (tables: Tables, series: string): Fault[] =>
  tables['e-series.csv'].rows.some(({ cells }) => cells['series'] === series)
    ? []
    : [
        {
          file: 'e-series.csv',
          line: 1,
          column: 1,
          rule,
          wrong: `no series ${series}`,
          got: '',
          expected: `${sizeOf(series)} rows of ${series}`,
        },
      ];

export const eSeries: Check = {
  id: rule,
  about: 'Preferred values are those of IEC 60063 in number, order and nesting.',
  needs: ['e-series.csv'],
  check: (tables) => {
    const bySeries = Map.groupBy(goodRows(tables, 'e-series.csv'), (row) => row.value.series);
    const rowsOf = (series: SeriesName): SeriesRow[] => bySeries.get(series) ?? [];
    const faults = families.flatMap((family) =>
      family.flatMap((series, index) => {
        const larger = family[index + 1];
        return [
          ...missing(tables, series),
          ...oneSeries(series, rowsOf(series)),
          ...(larger === undefined || rowsOf(larger).length === 0
            ? []
            : subset(rowsOf(series), larger, rowsOf(larger))),
        ];
      }),
    );
    // A value that is wrong in its own series is hardly ever in the larger one: said once.
    const lines = faults.map(({ line }) => line);
    return faults.filter(({ line }, index) => line === 1 || lines.indexOf(line) === index);
  },
};
