import type { z } from 'zod';
import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import type { plausibleRow } from '../../schemas/plausible.ts';
import { tableNames, type TableName, type Tables } from '../read-folder.ts';
import type { Fault } from '../fault.ts';
import type { Row } from '../read-table.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows, type GoodRow } from './lookups.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'plausible';
const FILE = 'plausible.csv';

type Bounds = z.output<typeof plausibleRow>;

/** The numbers of a cell as its schema reads it: one, several or none. */
export const numbersOf = (row: Row<unknown>, column: string): number[] => {
  const value: unknown = (row.value as Readonly<Record<string, unknown>> | undefined)?.[column];
  return [value].flat().filter((item): item is number => typeof item === 'number');
};

const isTable = (file: string): file is TableName => tableNames.some((name) => name === file);

const rowsAbout = (tables: Tables, file: TableName, { by, is }: Bounds): Row<unknown>[] =>
  tables[file].rows.filter(({ cells }) => by === '' || cells[by] === is);

/** A row of bounds that no number answers to guards nothing. */
const guardsNothing = (row: GoodRow<typeof FILE>): Fault =>
  cellFault(rule, FILE, row, 'column', {
    wrong: `${row.value.file} has no such numbers`,
    expected: 'a column that holds numbers',
  });

const aboutNoTable = (tables: Tables): Fault[] =>
  goodRows(tables, FILE)
    .filter(({ value }) => !isTable(value.file))
    .map(guardsNothing);

/** How many times further out than its numbers a bound may lie: room to grow, but not for a slip. */
const MOST_ROOM = 100;

/** Of fewer numbers each may be the only one of its size, so that without it a bound looks loose. */
const ENOUGH = 4;

/** How many times further from nought one number is than another on its side; one where it is not. */
const timesBeyond = (bound: number, number: number): number =>
  bound * number > 0 ? Math.max(1, bound / number) : 1;

/** Bounds that would let a slip of a thousand by; where a number lies outside, that is said alone. */
const looseFaults = (row: GoodRow<typeof FILE>, numbers: readonly number[]): Fault[] => {
  const { lowest, highest } = row.value;
  if (numbers.length < ENOUGH) return [];
  const [least, most] = [Math.min(...numbers), Math.max(...numbers)];
  const room = {
    lowest: lowest > 0 ? timesBeyond(least, lowest) : timesBeyond(lowest, least),
    highest: highest > 0 ? timesBeyond(highest, most) : timesBeyond(most, highest),
  };
  return (['lowest', 'highest'] as const)
    .filter((column) => room[column] > MOST_ROOM * (1 + FLOAT_ERROR))
    .map((column) =>
      cellFault(rule, FILE, row, column, {
        wrong: 'far from every number that it bounds',
        expected: `no more than ${String(MOST_ROOM)} times beyond ${String(column === 'lowest' ? least : most)}`,
      }),
    );
};

const faultsOf = (tables: Tables, file: TableName, bounds: GoodRow<typeof FILE>): Fault[] => {
  const { column, lowest, highest } = bounds.value;
  const numbers = rowsAbout(tables, file, bounds.value)
    .map((row) => ({ row, numbers: numbersOf(row, column) }))
    .filter(({ numbers: some }) => some.length > 0);
  if (numbers.length === 0) return tables[file].readable ? [guardsNothing(bounds)] : [];
  const outside = numbers.filter(({ numbers: some }) =>
    some.some((it) => it < lowest || it > highest),
  );
  if (outside.length === 0)
    return looseFaults(
      bounds,
      numbers.flatMap(({ numbers: some }) => some),
    );
  return outside.map(({ row }) =>
    cellFault(rule, file, row, column, {
      wrong: `far from every other ${column}`,
      expected: `${String(lowest)} to ${String(highest)}`,
      how: `where it is right all the same, widen the row of ${FILE}`,
    }),
  );
};

const ofTables = ofEachTable((tables, file) =>
  goodRows(tables, FILE)
    .filter(({ value }) => value.file === file)
    .flatMap((bounds) => faultsOf(tables, file, bounds)),
);

export const plausible: Check = {
  id: rule,
  about:
    'No number lies outside what the numbers of its column are, and no bound lies far from them.',
  needs: [FILE],
  guess: true,
  check: (tables) => [...aboutNoTable(tables), ...ofTables(tables)],
};
