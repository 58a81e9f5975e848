import type { TableName } from '../../../src/catalogue/index.ts';
import { E_SERIES } from '../../../src/engine/values/e-series.generated.ts';
import { tables } from '../../../src/schemas/tables.ts';
import type { Table } from '../../../src/schemas/table.ts';
import type { CellsOfRow } from '../broken-copy.ts';

/** The ways in which one cell comes to be wrong when a person types or pastes it. */
export interface Slip {
  kind: string;
  /**
   * What stands in the cell by mistake, as it is written in the file; nothing where the slip makes
   * no sense for the cell or changes nothing that it means.
   */
  slip: (
    cell: string,
    at: { file: TableName; column: string; row: CellsOfRow },
  ) => string | undefined;
}

const NUMBER = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/;

/** Whether a column reads what stands in it as a number: a name such as 7805 is none, nor is a note. */
const isReadAsNumber = (file: TableName, column: string, cell: string): boolean =>
  typeof (tables[file] as Table).row.shape[column]?.safeParse(cell).data === 'number';

const times =
  (factor: number): Slip['slip'] =>
  (cell, { file, column }) => {
    if (!NUMBER.test(cell) || Number(cell) === 0 || !isReadAsNumber(file, column, cell))
      return undefined;
    return String(Number((Number(cell) * factor).toPrecision(12)));
  };

/** The first two digits that differ, the other way round: 4.7 becomes 7.4. */
const transposed = (cell: string): string | undefined => {
  if (!NUMBER.test(cell)) return undefined;
  const slipped = cell.replace(/(\d)(\.?)(?!\1)(\d)/, '$3$2$1');
  return slipped === cell || /^-?0\d/.test(slipped) ? undefined : slipped;
};

const PREFERRED: readonly number[] = E_SERIES.E24;

/** Columns that hold preferred values, one a cell. */
const VALUE_COLUMN = /^(?:c_(?:min|max)|capacitance|value(?:_min|_max)?|esr_(?:min|max))$/;

/** The next number of two digits that no series up to E24 has, in place of one of its values. */
const offSeries = (file: TableName, column: string, cell: string): string | undefined => {
  if (!VALUE_COLUMN.test(column) || !NUMBER.test(cell) || Number(cell) <= 0) return undefined;
  if (!isReadAsNumber(file, column, cell)) return undefined;
  const decade = 10 ** Math.floor(Math.log10(Number(cell)) + 1e-9);
  const mantissa = Number((Number(cell) / decade).toPrecision(6));
  if (!PREFERRED.includes(mantissa)) return undefined;
  const next = Array.from({ length: 9 }, (_, step) =>
    Number((mantissa + (step + 1) / 10).toFixed(1)),
  ).find((one) => one < 10 && !PREFERRED.includes(one));
  return next === undefined ? undefined : String(Number((next * decade).toPrecision(6)));
};

const referencesOf = (file: TableName): Table['references'] => tables[file].references;

const isReference = (file: TableName, column: string): boolean =>
  referencesOf(file).some((reference) => reference.column === column);

/** Units that a careless hand writes for another: the next prefix, or another quantity. */
const OTHER_UNIT: Readonly<Record<string, string>> = { V: 'F', F: 'V' };

const otherUnit = (file: TableName, column: string, cell: string): string | undefined => {
  const isUnit = referencesOf(file).some(
    (reference) => reference.column === column && reference.table === 'units.csv',
  );
  return !isUnit || cell === '' ? undefined : (OTHER_UNIT[cell] ?? 'V');
};

export const SLIPS: readonly Slip[] = [
  {
    kind: 'unit of another quantity',
    slip: (cell, { file, column }) => otherUnit(file, column, cell),
  },
  { kind: 'sign', slip: times(-1) },
  { kind: 'ten times', slip: times(10) },
  { kind: 'a tenth', slip: times(0.1) },
  { kind: 'a thousand times', slip: times(1000) },
  { kind: 'a thousandth', slip: times(0.001) },
  { kind: 'digits transposed', slip: transposed },
  {
    kind: 'dangling id',
    slip: (cell, { file, column }) =>
      isReference(file, column) && cell !== '' ? `${cell}x` : undefined,
  },
  {
    kind: 'dangling source',
    slip: (cell, { file, column }) =>
      column === 'source' && isReference(file, column) && cell !== ''
        ? `${cell.slice(0, -1)}${cell.endsWith('q') ? 'k' : 'q'}`
        : undefined,
  },
  { kind: 'off-series value', slip: (cell, { file, column }) => offSeries(file, column, cell) },
  {
    kind: 'basis misspelt',
    slip: (cell, { column }) => (column === 'basis' ? cell.replace(/[aeiou]/, '') : undefined),
  },
  {
    kind: 'published without a document',
    slip: (cell, { column, row }) =>
      column === 'basis' && cell !== 'published' && row['source']?.text === 'trade'
        ? 'published'
        : undefined,
  },
  {
    kind: 'decimal comma',
    slip: (cell) => (/^-?\d+\.\d+$/.test(cell) ? `"${cell.replace('.', ',')}"` : undefined),
  },
  {
    kind: 'letter O for nought',
    slip: (cell) => (NUMBER.test(cell) && cell.includes('0') ? cell.replace('0', 'O') : undefined),
  },
  {
    kind: 'space at the end',
    slip: (cell) =>
      cell === '' || cell.includes(',') || cell.includes('"') ? undefined : `${cell} `,
  },
  {
    kind: 'quote inside',
    slip: (cell) =>
      cell.length < 2 || cell.includes('"') || cell.includes(',')
        ? undefined
        : `${cell.slice(0, 1)}"${cell.slice(1)}`,
  },
  {
    kind: 'open quote',
    slip: (cell) =>
      cell === '' || cell.includes('"') || cell.includes(',') ? undefined : `"${cell}`,
  },
  {
    kind: 'control character',
    slip: (cell) =>
      cell === '' || cell.includes('"') || cell.includes(',') ? undefined : `${cell}\u0007`,
  },
  {
    kind: 'no-break space',
    slip: (cell) =>
      cell === '' || cell.includes('"') || cell.includes(',') ? undefined : `\u00A0${cell}`,
  },
];
