import { expandDesignators } from '../model/designators.ts';
import { emptyLine, MOST_LINES, type BadRow, type Line } from '../model/job.ts';
import type { Mapping } from './columns.ts';
import { withoutThousands } from './decimal-sign.ts';
import type { Row } from './delimited.ts';
import { plainCell } from './safe-cell.ts';

/** What a table became: every row but the header is a line or a bad row. */
export interface LinesIn {
  lines: Line[];
  badRows: BadRow[];
  /** One sentence each, such as a quantity that differs from the designators. */
  said: string[];
}

/** Names that cannot be the key of a plain object without harm. */
const HARMFUL = new Set(['__proto__', '']);

/** A name of its own for each column, for the cells that no field is found for. */
const namesOf = (head: readonly string[], width: number): string[] => {
  const seen = new Set<string>();
  return Array.from({ length: width }, (_, at) => {
    const said = plainCell(head[at] ?? '');
    const plain = HARMFUL.has(said.trim()) ? `column ${String(at + 1)}` : said;
    let name = plain;
    for (let next = 2; seen.has(name); next++) name = `${plain} (${String(next)})`;
    seen.add(name);
    return name;
  });
};

interface Columns extends Mapping {
  names: readonly string[];
}

const reasonAgainst = ({ cells }: Row, { fields, names }: Columns): string | undefined => {
  if (cells.length > names.length)
    return `It has ${String(cells.length)} cells for ${String(names.length)} columns; a comma inside a cell may have split it.`;
  const says = fields.some((field, at) => field !== undefined && (cells[at] ?? '').trim() !== '');
  return says ? undefined : 'None of the columns that are understood says anything.';
};

const lineOf = ({ cells }: Row, { fields, names, decimal }: Columns, id: string): Line => {
  const line = emptyLine(id);
  const rest = new Map<string, string>();
  cells.forEach((cell, at) => {
    const field = fields[at];
    const text = plainCell(cell);
    // The designators are what counts; a quantity is kept beside them.
    if (field !== undefined && field !== 'quantity')
      line[field] = withoutThousands(text, field, decimal);
    else if (text !== '') rest.set(names[at] ?? '', text);
  });
  return { ...line, rest: Object.fromEntries(rest) };
};

const quantityFault = (row: Row, line: Line, { fields }: Columns): string | undefined => {
  const cell = row.cells[fields.indexOf('quantity')]?.trim() ?? '';
  const { list } = expandDesignators(line.designators);
  if (cell === '' || list.length === 0 || Number(cell) === list.length) return undefined;
  return `Row ${String(row.row)} says ${cell} ${cell === '1' ? 'part' : 'parts'} and names ${String(list.length)}.`;
};

/**
 * The lines of a table whose columns are known. Rows that make no line are kept with the reason;
 * cells of no known column go into `rest` under the column's name.
 * @param idOf a new id for each line, unique in the job
 */
export const linesFromRows = (
  rows: readonly Row[],
  mapping: Mapping,
  idOf: (at: number) => string = (at) => `line-${String(at + 1)}`,
): LinesIn => {
  const head = mapping.hasHeader ? rows[0] : undefined;
  const body = mapping.hasHeader ? rows.slice(1) : rows;
  // Without a header every cell has a column, however ragged the rows are.
  const width = Math.max(
    head?.cells.length ?? body.reduce((most, { cells }) => Math.max(most, cells.length), 0),
    mapping.fields.findLastIndex((field) => field !== undefined) + 1,
  );
  const columns = { ...mapping, names: namesOf(head?.cells ?? [], width) };
  const made: LinesIn = { lines: [], badRows: [], said: [] };
  for (const row of body) {
    const isFull = made.lines.length >= MOST_LINES;
    const reason = isFull ? 'A job holds 20,000 lines.' : reasonAgainst(row, columns);
    if (reason !== undefined) {
      made.badRows.push({ row: row.row, cells: row.cells, reason });
      continue;
    }
    const line = lineOf(row, columns, idOf(made.lines.length));
    made.lines.push(line);
    const fault = quantityFault(row, line, columns);
    if (fault !== undefined) made.said.push(fault);
  }
  return made;
};
