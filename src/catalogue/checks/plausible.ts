import type { z } from 'zod';
import type { plausibleRow } from '../../schemas/plausible.ts';
import { tableNames, valuesOf, type TableName, type Tables } from '../read-folder.ts';
import type { Fault } from '../fault.ts';
import type { Row } from '../read-table.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'plausible';
const FILE = 'plausible.csv';

type Bounds = z.output<typeof plausibleRow>;

/** The numbers of a cell as its schema reads it: one, several or none. */
export const numbersOf = (row: Row<unknown>, column: string): number[] => {
  const value: unknown = (row.value as Readonly<Record<string, unknown>> | undefined)?.[column];
  return [value].flat().filter((item): item is number => typeof item === 'number');
};

const isTable = (file: string): file is TableName => tableNames.some((name) => name === file);

const rowsAbout = (tables: Tables, { file, by, is }: Bounds): Row<unknown>[] =>
  isTable(file) ? tables[file].rows.filter(({ cells }) => by === '' || cells[by] === is) : [];

/** A row of bounds that no number answers to guards nothing. */
const emptyFaults = (tables: Tables): Fault[] =>
  goodRows(tables, FILE).flatMap((row) => {
    const { column, file } = row.value;
    if (isTable(file) && !tables[file].readable) return [];
    if (rowsAbout(tables, row.value).some((one) => numbersOf(one, column).length > 0)) return [];
    return [
      cellFault(rule, FILE, row, 'column', {
        wrong: `${row.value.file} has no such numbers`,
        expected: 'a column that holds numbers',
      }),
    ];
  });

export const plausible: Check = {
  id: rule,
  about: 'No number lies outside what the numbers of its column are.',
  needs: [FILE],
  guess: true,
  check: (tables) => [
    ...emptyFaults(tables),
    ...valuesOf(tables, FILE).flatMap((bounds) => {
      const { file, column, lowest, highest } = bounds;
      if (!isTable(file)) return [];
      return rowsAbout(tables, bounds)
        .filter((row) => numbersOf(row, column).some((it) => it < lowest || it > highest))
        .map((row) =>
          cellFault(rule, file, row, column, {
            wrong: `far from every other ${column}`,
            expected: `${String(lowest)} to ${String(highest)}`,
            how: `where it is right all the same, widen the row of ${FILE}`,
          }),
        );
    }),
  ],
};
