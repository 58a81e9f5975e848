import type { z } from 'zod';
import { cellExpectation } from './cell-expectation.ts';
import type { Fault } from './fault.ts';
import { headerFaults } from './header.ts';
import { splitLine } from './split-line.ts';

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

const BYTE_ORDER_MARK = '\uFEFF';

/** Characters that no cell may hold, with the rule that forbids each. */
const forbidden = [
  {
    rule: 'utf-8',
    pattern: /\uFFFD/,
    wrong: 'bytes that are not UTF-8',
    expected: 'valid UTF-8',
  },
  {
    rule: 'control-character',
    // Finding control characters is the purpose here.
    pattern: /\p{Cc}/u,
    wrong: 'a character that cannot be seen',
    expected: 'text without tabs and other control characters',
  },
  {
    rule: 'space-around',
    pattern: /^\s|\s$/,
    wrong: 'space before or after the text of a cell',
    expected: 'a cell without space round it',
  },
] as const;

/** Faults of the file as a whole, and its text without what would only repeat them. */
const readText = (file: string, bytes: Uint8Array): { lines: string[]; faults: Fault[] } => {
  const faults: Fault[] = [];
  const add = (fault: Omit<Fault, 'file'>): void => void faults.push({ file, ...fault });
  let text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  if (text.startsWith(BYTE_ORDER_MARK)) {
    add({
      line: 1,
      column: 1,
      rule: 'byte-order-mark',
      wrong: 'the file starts with a byte order mark',
      got: BYTE_ORDER_MARK,
      expected: 'the first column name at once',
    });
    text = text.slice(BYTE_ORDER_MARK.length);
  }
  const returns = text.split('\r').length - 1;
  if (returns > 0) {
    const before = text.slice(0, text.indexOf('\r')).split('\n');
    add({
      line: before.length,
      column: [...(before.at(-1) ?? '')].length + 1,
      rule: 'line-ending',
      wrong: `a carriage return, first of ${returns}`,
      got: '\r',
      expected: 'lines that end in a line feed alone',
    });
    text = text.replaceAll('\r', '');
  }
  const lines = text.split('\n');
  const last = lines.pop() ?? '';
  if (last !== '') {
    add({
      line: lines.length + 1,
      column: [...last].length + 1,
      rule: 'end-of-file',
      wrong: 'the last line is not ended',
      got: last,
      expected: 'a line feed at the end of the file',
    });
    lines.push(last);
  }
  return { lines, faults };
};

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
  const columns = Object.keys(schema.shape);
  const header = headerFaults(file, lines[0] ?? '', columns);
  faults.push(...header.faults);
  const rows: Row<z.output<Schema>>[] = [];
  let skip = 0;

  lines.slice(1).forEach((text, index) => {
    const line = index + 2;
    if (skip > 0) {
      skip -= 1;
      return;
    }
    if (text.trim() === '') {
      faults.push({
        file,
        line,
        column: 1,
        rule: 'blank-line',
        wrong: 'a line without a row',
        got: text,
        expected: 'one row on every line',
      });
      return;
    }
    const split = splitLine(text);
    const cells = Object.fromEntries(
      header.columns.map((name, at) => [name, split.cells[at] ?? '']),
    );
    const starts = Object.fromEntries(
      header.columns.map((name, at) => [name, (split.starts[at] ?? 0) + 1]),
    );
    const row: Row<z.output<Schema>> = { line, cells, columns: starts };
    rows.push(row);

    if (!split.ok) {
      const runsOn =
        split.reason === 'open' ? brokenOver(lines, line - 1, header.columns.length) : 0;
      skip = runsOn;
      faults.push({
        file,
        line,
        column: (split.starts[split.cell] ?? 0) + 1,
        rule: runsOn > 0 ? 'newline-in-cell' : 'quotes',
        wrong: runsOn > 0 ? 'a cell goes on over the end of its line' : 'quotes out of order',
        got: split.cells[split.cell] ?? '',
        expected:
          runsOn > 0
            ? 'every cell on one line'
            : 'a cell quoted from end to end, with each quote inside it doubled',
      });
      return;
    }
    if (split.cells.length !== header.columns.length) {
      const over = split.starts[header.columns.length];
      faults.push({
        file,
        line,
        column: over === undefined ? [...text].length + 1 : over + 1,
        rule: 'cell-count',
        wrong: `${split.cells.length} cells in this row`,
        got: text,
        expected: `${header.columns.length} cells, as in the header`,
      });
      return;
    }

    const faulty = new Set<string>();
    const addCellFault = (
      name: string,
      fault: Pick<Fault, 'rule' | 'wrong' | 'expected'>,
    ): void => {
      // One fault a cell: what the schema says of a mangled cell would only repeat the first.
      if (faulty.has(name)) return;
      faulty.add(name);
      faults.push({ file, line, column: starts[name] ?? 1, ...fault, got: cells[name] ?? '' });
    };
    for (const name of header.columns) {
      for (const { pattern, ...fault } of forbidden) {
        if (pattern.test(cells[name] ?? '')) addCellFault(name, fault);
      }
    }
    if (!header.right) return;
    const parsed = schema.safeParse(cells);
    for (const issue of parsed.error?.issues ?? []) {
      const name = String(issue.path[0] ?? columns[0]);
      const empty = cells[name] === '';
      addCellFault(name, {
        rule: empty ? 'empty-cell' : 'cell',
        wrong: empty ? `nothing in ${name}` : `${name} is not as it should be`,
        expected: cellExpectation(issue),
      });
    }
    if (parsed.success && faulty.size === 0) row.value = parsed.data;
  });

  return { table: { file, readable: header.right, rows }, faults };
};
