import { SYMBOLS, type CircuitSymbolRow } from '../../schemas/circuits.ts';
import type { Fault } from '../fault.ts';
import { valuesOf, type TableName, type Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows, type GoodRow } from './lookups.ts';

const rule = 'circuit';

const fault = (
  row: GoodRow<'circuit-symbols.csv'>,
  column: string,
  wrong: string,
  expected: string,
): Fault => cellFault(rule, 'circuit-symbols.csv', row, column, { wrong, expected });

/** How many places a symbol takes, in words. */
const numberOf = ([least, most]: readonly [number, number]): string =>
  least === most ? String(least) : `${String(least)} to ${String(most)}`;

/** What a row says that its symbol does not take. */
const notTaken = (row: GoodRow<'circuit-symbols.csv'>): Fault[] => {
  const { symbol, places, name, how }: CircuitSymbolRow = row.value;
  const shape = SYMBOLS[symbol];
  const [least, most] = shape.places;
  const taken: readonly string[] = shape.how;
  return [
    ...(places.length < least || places.length > most
      ? [fault(row, 'places', `not the places of ${symbol}`, `${numberOf(shape.places)} of them`)]
      : []),
    ...(name !== '' && !shape.named
      ? [fault(row, 'name', `${symbol} bears no name`, 'nothing')]
      : []),
    ...how
      .filter((word) => !taken.includes(word))
      .map((word) =>
        fault(row, 'how', `${symbol} is not drawn ${word}`, taken.join(', ') || 'nothing'),
      ),
  ];
};

/** Symbols that stand outside of what their circuit takes up. */
const outside = (tables: Tables): Fault[] => {
  const frames = new Map(valuesOf(tables, 'circuits.csv').map((row) => [row.position, row]));
  return goodRows(tables, 'circuit-symbols.csv').flatMap((row) => {
    const frame = frames.get(row.value.position);
    return frame === undefined ||
      row.value.places.every(([x, y]) => x >= 0 && y >= 0 && x <= frame.width && y <= frame.height)
      ? []
      : [
          fault(
            row,
            'places',
            'outside of the circuit',
            `places within ${String(frame.width)} by ${String(frame.height)}`,
          ),
        ];
  });
};

/** Positions of a table without a circuit, or with one that does not show the part in question. */
const notShown = (tables: Tables, file: 'positions.csv' | 'kinds/positions.csv'): Fault[] => {
  // As the cells say it: a row with a fault of its own is there all the same.
  const cellsOf = (name: TableName) => tables[name].rows.map(({ cells }) => cells);
  const drawn = new Set(cellsOf('circuits.csv').map(({ position }) => position));
  const shown = new Set(
    cellsOf('circuit-symbols.csv')
      .filter(({ symbol }) => symbol?.startsWith('the-'))
      .map(({ position }) => position),
  );
  return goodRows(tables, file)
    .filter(({ value }) => !drawn.has(value.id) || !shown.has(value.id))
    .map((row) =>
      cellFault(rule, file, row, 'id', {
        wrong: drawn.has(row.value.id)
          ? 'a circuit without the part in question'
          : 'a position without a circuit',
        expected: drawn.has(row.value.id)
          ? `a symbol the-… of ${row.value.id} in circuit-symbols.csv`
          : `a row ${row.value.id} in circuits.csv and its symbols`,
      }),
    );
};

export const circuits: Check = {
  id: rule,
  about:
    'Every position has a circuit that shows the part in question, within its frame, of symbols with what they take.',
  needs: ['positions.csv', 'kinds/positions.csv', 'circuits.csv', 'circuit-symbols.csv'],
  check: (tables) => [
    ...goodRows(tables, 'circuit-symbols.csv').flatMap(notTaken),
    ...outside(tables),
    ...notShown(tables, 'positions.csv'),
    ...notShown(tables, 'kinds/positions.csv'),
  ],
};
