import { formatValue, type Basis, type Catalogue, type SourceId } from '../engine/index.ts';
import { markingTables, type MarkingTable } from '../schemas/marking-tables.ts';
import { capital, typeset } from '../text/words.ts';
import { codeSlug } from './codes/slug.ts';

/** A table of codes as its page shows it. */
export interface CodeTable {
  /** Anchor, from the file's name. */
  id: string;
  title: string;
  about: string;
  /** Headings, with their unit. */
  columns: string[];
  /** Number of rows. */
  count: number;
  /** Rows under one heading each; a single group has none. */
  groups: { title: string; rows: CodeRow[] }[];
}

/** A row of a table of codes; its anchor stays while other rows come and go. */
export interface CodeRow {
  id: string;
  cells: string[];
  basis: Basis;
  source: SourceId;
  note: string;
}

/** Columns that a page shows in its own way or not at all. */
const OWN_WAY = new Set(['source', 'locator', 'basis', 'note']);

const cellText = (value: unknown): string => {
  if (Array.isArray(value)) return value.join(', ');
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === undefined ? '' : String(value);
};

/** Words of file names that are written otherwise in a title. */
const IN_TITLES: readonly (readonly [RegExp, string])[] = [
  [/class(\d)/, 'class $1'],
  [/eia96/, 'EIA-96'],
  [/look alikes/, 'look-alikes'],
];

const titleOf = (file: string): string =>
  capital(
    IN_TITLES.reduce(
      (title, [word, written]) => title.replace(word, written),
      file.replace(/^markings\/|\.csv$/g, '').replaceAll('-', ' '),
    ),
  );

/** Column by whose words the rows of a table are parted, where they are of several kinds. */
const GROUPED_BY: Partial<Record<keyof Catalogue['markings'], string>> = {
  toleranceLetters: 'script',
  voltageCodes: 'scheme',
  voltageWords: 'role',
  class1Codes: 'system',
  class1Signs: 'system',
  class2Codes: 'system',
  class2Signs: 'system',
  unitWords: 'quantity',
  pointLetters: 'quantity',
  printedUnits: 'quantity',
  multipliers: 'scheme',
  dielectricCodes: 'form',
  bodyMarks: 'group',
  climateLetters: 'place',
  dateSigns: 'scheme',
};

/** A value of a table of ids, by its name. */
const named = (catalogue: Catalogue, column: string, value: string): string => {
  if (column === 'bodies' || column === 'body')
    return catalogue.markings.bodies.find((row) => row.id === value)?.name ?? value;
  if (column === 'types') return catalogue.types[value]?.short_name ?? value;
  if (column === 'system')
    return catalogue.markings.temperatureSystems.find((row) => row.id === value)?.name ?? value;
  if (column === 'scheme')
    return catalogue.markings.dateSchemes.find((row) => row.id === value)?.name ?? value;
  return value;
};

/** Columns that hold a capacitance in farads. */
const IN_FARADS = new Set(['from_f', 'below_f', 'unit_f']);

const cellOf = (catalogue: Catalogue, column: string, value: unknown): string => {
  if (typeof value === 'number' && IN_FARADS.has(column)) return formatValue(value, 'F');
  if (Array.isArray(value))
    return value.map((item) => named(catalogue, column, String(item))).join(', ');
  return typeof value === 'string' ? named(catalogue, column, value) : cellText(value);
};

/** Plain headings, with the unit, where the name of a column says too little. */
const HEADINGS: Readonly<Record<string, string>> = {
  from_f: 'From',
  below_f: 'Below',
  unit_f: 'Counts in',
  volts_min: 'From, V',
  volts_max: 'To, V',
  min_ppm: 'Lowest, ppm/K',
  typ_ppm: 'Nominal, ppm/K',
  max_ppm: 'Highest, ppm/K',
  ppm: 'ppm/K',
  percent: '±, %',
  t_min: 'From, °C',
  t_max: 'To, °C',
  t_ref: 'Stated at, °C',
  degc: '°C',
  bodies: 'Met on',
  origins: 'Made in',
  use: 'How usual',
  types: 'May be',
  factor: 'Times',
  minus: 'Below by',
  plus: 'Above by',
  peak_in_service_v: 'Peak in service, V',
  impulse_test_v: 'Impulse test, V',
  v_max: 'Highest, V',
  spread_known: 'Spread known',
  settle: 'What tells',
  half_min_percent: 'At half travel from, %',
  half_max_percent: 'to, %',
  number_min: 'Smallest number',
  number_max: 'Largest number',
};

const headingOf = (column: string): string =>
  HEADINGS[column] ?? capital(column.replaceAll('_', ' '));

const rowOf = (
  catalogue: Catalogue,
  key: readonly string[],
  columns: readonly string[],
  row: Readonly<Record<string, unknown>>,
): CodeRow => ({
  id: key
    .map((column) => codeSlug(cellText(row[column])))
    .filter((part) => part !== '')
    .join('-'),
  // The first cell is what is printed on parts, and stays as it is.
  cells: columns.map((column, index) =>
    index === 0 ? cellText(row[column]) : typeset(cellOf(catalogue, column, row[column])),
  ),
  basis: row['basis'] as Basis,
  source: String(row['source']),
  note: cellText(row['note']),
});

/** Numbers the anchors that come to the same text, such as those of `b` and `B`. */
const withOwnIds = (rows: readonly CodeRow[]): CodeRow[] => {
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const count = (seen.get(row.id) ?? 0) + 1;
    seen.set(row.id, count);
    return count === 1 ? row : { ...row, id: `${row.id}_${count}` };
  });
};

/** As people look codes up: figures by their size, small letters before capitals. */
const { compare } = new Intl.Collator('en', { numeric: true });

const byCode = (a: CodeRow, b: CodeRow): number => compare(a.cells[0] ?? '', b.cells[0] ?? '');

/**
 * Every table that markings are read with and that has no page of its own kind, without the columns
 * that are empty throughout, parted by kind of row and in the order of its codes.
 */
export const codeTables = (catalogue: Catalogue): CodeTable[] =>
  Object.entries<MarkingTable>(markingTables)
    .filter(([, { page }]) => page === undefined)
    .map(([file, { name, about, key }]) => {
      const rows: readonly Record<string, unknown>[] = catalogue.markings[name];
      const by = GROUPED_BY[name];
      const columns = Object.keys(rows[0] ?? {}).filter(
        (column) =>
          !OWN_WAY.has(column) && column !== by && rows.some((row) => cellText(row[column]) !== ''),
      );
      const made = withOwnIds(rows.map((row) => rowOf(catalogue, key, columns, row)));
      const groups = Map.groupBy(made, (_, index) =>
        by === undefined ? '' : cellOf(catalogue, by, rows[index]?.[by]),
      );
      return {
        id: file.replace(/^markings\/|\.csv$/g, ''),
        title: titleOf(file),
        about,
        columns: columns.map(headingOf),
        count: rows.length,
        groups: [...groups].map(([title, own]) => ({
          title: capital(title),
          rows: own.toSorted(byCode),
        })),
      };
    });
