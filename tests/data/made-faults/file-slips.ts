import { orders } from '../../../src/catalogue/checks/number-order.ts';
import type { TableName } from '../../../src/catalogue/index.ts';
import type { CellsOfRow } from '../broken-copy.ts';

/** A table with one thing wrong in it, and the line where that is. */
export interface MadeFault {
  kind: string;
  file: TableName;
  line: number;
  /** What was done, for the list of those that were not found. */
  what: string;
  /** The file as text; where its bytes are no text, with a mark in their place. */
  text: string;
  /** The file as bytes, where they say other than its text. */
  bytes?: Uint8Array;
}

/** A table as it stands, in pieces. */
export interface Intact {
  file: TableName;
  text: string;
  rows: readonly CellsOfRow[];
}

const lineOf = (row: CellsOfRow): number => Object.values(row)[0]?.line ?? 0;

const withLine = ({ text }: Intact, line: number, change: (old: string) => string): string =>
  text
    .split('\n')
    .map((old, index) => (index + 1 === line ? change(old) : old))
    .join('\n');

/** Both ends of a range in each other's place. */
const swapped = (table: Intact, row: CellsOfRow): MadeFault[] =>
  orders
    .filter(({ file }) => file === table.file)
    .flatMap(({ columns }) => {
      const filled = columns.flatMap((column) => {
        const cell = row[column];
        return cell === undefined || cell.text === '' ? [] : [cell];
      });
      const [low, high] = [filled[0], filled.at(-1)];
      if (low === undefined || high === undefined || Number(low.text) === Number(high.text)) {
        return [];
      }
      const [first, second] = low.from < high.from ? [low, high] : [high, low];
      const { text } = table;
      return [
        {
          kind: 'ends of a range swapped',
          file: table.file,
          line: low.line,
          what: `${low.text} and ${high.text}`,
          text:
            text.slice(0, first.from) +
            text.slice(second.from, second.to) +
            text.slice(first.to, second.from) +
            text.slice(first.from, first.to) +
            text.slice(second.to),
        },
      ];
    });

const ofRow = (
  kind: string,
  table: Intact,
  row: CellsOfRow,
  change: (old: string) => string,
  offset = 0,
): MadeFault => ({
  kind,
  file: table.file,
  line: lineOf(row) + offset,
  what: `line ${String(lineOf(row))}`,
  text: withLine(table, lineOf(row), change),
});

/** A byte that no text has, before the last letter of a row. */
const strayByte = (table: Intact, row: CellsOfRow): MadeFault => {
  const made = ofRow(
    'stray byte',
    table,
    row,
    (line) => `${line.slice(0, -1)}\uFFFF${line.slice(-1)}`,
  );
  const [before = '', after = ''] = made.text.split('\uFFFF');
  const encode = (part: string): Uint8Array => new TextEncoder().encode(part);
  return { ...made, bytes: Uint8Array.from([...encode(before), 0xff, ...encode(after)]) };
};

/** The faults that a whole row can have. */
export const rowFaults = (table: Intact, row: CellsOfRow): MadeFault[] => [
  ...swapped(table, row),
  ofRow('row twice', table, row, (line) => `${line}\n${line}`, 1),
  ofRow('cell missing', table, row, (line) => line.slice(line.indexOf(',') + 1)),
  ofRow('cell too many', table, row, (line) => `${line},`),
  ofRow('carriage return', table, row, (line) => `${line}\r`),
  ofRow('empty line', table, row, (line) => `${line}\n`, 1),
  strayByte(table, row),
];

const ofHeader = (kind: string, { file, text }: Intact, broken: string): MadeFault[] =>
  broken === text ? [] : [{ kind, file, line: 1, what: 'the header', text: broken }];

/** The faults that a whole file can have. */
export const fileFaults = (table: Intact): MadeFault[] => {
  const { text } = table;
  const header = text.slice(0, text.indexOf('\n'));
  const names = header.split(',');
  const without = names.slice(0, -1).join(',');
  const turned = [...names.slice(1), ...names.slice(0, 1)].join(',');
  return [
    ...ofHeader('byte order mark', table, `\uFEFF${text}`),
    ...ofHeader('carriage returns', table, text.replaceAll('\n', '\r\n')),
    ...ofHeader('column missing', table, text.replace(header, without)),
    ...ofHeader('columns in another order', table, text.replace(header, turned)),
    ...ofHeader('column misspelt', table, text.replace(header, `${header}x`)),
  ];
};
