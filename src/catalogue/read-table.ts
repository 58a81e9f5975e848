import type { z } from 'zod';
import {
  firstOfEachCell,
  forbiddenCharacters,
  schemaFaults,
  type CellFault,
} from './cell-faults.ts';
import type { Fault } from './fault.ts';
import { readHeader } from './header.ts';
import { readText } from './read-text.ts';
import { splitLine, splitLines, type SplitLine } from './split-line.ts';

/** One row of a table, as it stands in its file and as its schema reads it. */
export interface Row<Value> {
  /** Line in the file, from 1. */
  line: number;
  /** What stands in each column. */
  cells: Readonly<Record<string, string>>;
  /** The character, from 1, at which each cell starts. */
  columns: Readonly<Record<string, number>>;
  /** The row as its schema reads it; missing where the row has a fault. */
  value?: Value;
}

/** One table as it was read. */
export interface ReadTable<Value> {
  file: string;
  /** The file is there and its header is right, so that what it lacks is really lacking. */
  readable: boolean;
  rows: Row<Value>[];
}

/** A table as it was read, and every fault that shows without looking at other tables. */
export interface TableReading<Value> {
  table: ReadTable<Value>;
  faults: Fault[];
}

/** A quoted cell that runs on for more lines than this is a forgotten quote. */
const MOST_LINES_OF_A_BROKEN_CELL = 20;

/** How many lines a cell that is open at the end of its line runs on, if it ends in good order. */
const brokenOver = (lines: readonly string[], from: number, width: number): number => {
  let joined = lines[from] ?? '';
  for (let more = 1; more <= MOST_LINES_OF_A_BROKEN_CELL; more += 1) {
    const next = lines[from + more];
    if (next === undefined) return 0;
    // A space stands for the line feed: only the shape of the record matters here.
    joined += ` ${next}`;
    const split = splitLine(joined);
    if (split.ok) return split.cells.length === width ? more : 0;
    if (split.reason === 'stray') return 0;
  }
  return 0;
};

/** The cells of a line and the characters at which they start, by column; what lacks is empty. */
const byColumn = (
  names: readonly string[],
  { cells, starts }: SplitLine,
): Pick<Row<never>, 'cells' | 'columns'> => ({
  cells: Object.fromEntries(names.map((name, at) => [name, cells[at] ?? ''])),
  columns: Object.fromEntries(names.map((name, at) => [name, (starts[at] ?? 0) + 1])),
});

/** What is wrong with the shape of a line, so that its cells cannot be told apart for certain. */
const shapeFault = (
  text: string,
  split: SplitLine,
  width: number,
  runsOn: number,
): Omit<Fault, 'file' | 'line'> | undefined => {
  if (!split.ok) {
    const broken = runsOn > 0;
    return {
      column: (split.starts[split.cell] ?? 0) + 1,
      rule: broken ? 'newline-in-cell' : 'quotes',
      wrong: broken ? 'a cell goes on over the end of its line' : 'quotes out of order',
      got: split.cells[split.cell] ?? '',
      expected: broken
        ? 'every cell on one line'
        : 'a cell quoted from end to end, with each quote inside it doubled',
    };
  }
  if (split.cells.length === width) return undefined;
  const over = split.starts[width] ?? [...text].length;
  return {
    column: over + 1,
    rule: 'cell-count',
    wrong: `${split.cells.length} cells in this row`,
    got: text,
    expected: `${width} cells, as in the header`,
  };
};

/** What is wrong with the cells of a row, and the row as its schema reads it if nothing is. */
const judge = <Schema extends z.ZodObject>(
  cells: Readonly<Record<string, string>>,
  schema: Schema | undefined,
): { faults: CellFault[]; value?: z.output<Schema> } => {
  const parsed = schema?.safeParse(cells);
  const faults = firstOfEachCell([
    ...forbiddenCharacters(cells),
    ...schemaFaults(cells, parsed?.error?.issues ?? []),
  ]);
  return faults.length === 0 && parsed?.success === true
    ? { faults, value: parsed.data }
    : { faults };
};

/**
 * Reads one table: comma-separated values by RFC 4180, one record a line, the columns of the
 * schema exactly and in order, every cell as the schema has it. Never throws for what stands in
 * the file: everything wrong with it is in `faults`.
 */
export const readTable = <Schema extends z.ZodObject>(
  file: string,
  bytes: Uint8Array,
  schema: Schema,
): TableReading<z.output<Schema>> => {
  const { lines, faults } = readText(file, bytes);
  const header = readHeader(file, lines[0] ?? '', Object.keys(schema.shape));
  faults.push(...header.faults);
  const rows: Row<z.output<Schema>>[] = [];
  const splits = splitLines(lines);

  /** Reads the row at an index of the lines; returns how many lines it takes. */
  const readRow = (index: number): number => {
    const text = lines[index] ?? '';
    const line = index + 1;
    if (text.trim() === '') {
      const wrong = 'a line without a row';
      const expected = 'one row on every line';
      faults.push({ file, line, column: 1, rule: 'blank-line', wrong, got: text, expected });
      return 1;
    }
    const split = splits[index] ?? splitLine(text);
    const { cells, columns } = byColumn(header.columns, split);
    const row: Row<z.output<Schema>> = { line, cells, columns };
    rows.push(row);

    const open = !split.ok && split.reason === 'open';
    const runsOn = open ? brokenOver(lines, index, header.columns.length) : 0;
    const shape = shapeFault(text, split, header.columns.length, runsOn);
    if (shape !== undefined) {
      faults.push({ file, line, ...shape });
      return 1 + runsOn;
    }
    const judged = judge(cells, header.right ? schema : undefined);
    for (const { name, ...fault } of judged.faults) {
      faults.push({ file, line, column: columns[name] ?? 1, got: cells[name] ?? '', ...fault });
    }
    if (judged.value !== undefined) row.value = judged.value;
    return 1;
  };

  let next = 1;
  while (next < lines.length) next += readRow(next);
  return { table: { file, readable: header.right, rows }, faults };
};
