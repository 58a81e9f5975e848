import { formatValue, type Catalogue, type Unit } from '../engine/index.ts';
import { printNumber } from '../text/numbers.ts';
import { capital } from '../text/words.ts';
import { shortBody, useWords } from './codes/say.ts';

/** A row as the tables hold it. */
export type TableRow = Readonly<Record<string, unknown>>;

/** A column of a table of codes as its page shows it. */
export interface CodeColumn {
  heading: string;
  /** What stands in a row of it; empty where the row says nothing. */
  cell: (row: TableRow) => string;
}

/** Columns that a page shows in its own way or not at all. */
const OWN_WAY = new Set(['source', 'locator', 'basis', 'note']);

/** A value of a cell as text. */
export const cellText = (value: unknown): string => {
  if (Array.isArray(value)) return value.join(', ');
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === undefined ? '' : String(value);
};

/** Plain headings, with the unit, where the name of a column says too little. */
const HEADINGS: Readonly<Record<string, string>> = {
  from_f: 'From',
  below_f: 'Below',
  unit_f: 'Counts in',
  volts: 'Rated, V',
  volts_max: 'To, V',
  min_ppm: 'Lowest, ppm/K',
  typ_ppm: 'Nominal, ppm/K',
  max_ppm: 'Highest, ppm/K',
  ppm: 'ppm/K',
  percent: '±, %',
  percent_per_1000_h: '% in 1000 h',
  t: 'Span, °C',
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
  tightest_percent: 'Closest, ± %',
  value: 'Value',
  years: 'Years',
  spread_known: 'Spread known',
  settle: 'What tells',
  half_percent: 'At half travel, %',
  number: 'Numbers',
  precise: 'Also ±1 %',
  tells_kind: 'Resistors only',
  exact_case: 'Case counts',
  ends_word: 'Stands last',
  letters: 'Letters behind it',
  cost: 'How unlikely',
  alone: 'Read alone',
  taken_as: 'Taken for',
  watts: 'W',
  low: 'From',
  high: 'To',
  significand: 'Figures',
  tolerance_percent: '±, %',
  underlined_percent: 'Underlined, ±, %',
  volts_min: 'From, V',
  volts_beside: 'Volts beside it',
  where: 'Where it stands',
  letter_where: 'Where its letters stand',
  stroke_volts_max: 'Likelier before a stroke and volts, up to, V',
  ratio_min: 'Upper end over lower, at least',
  ratio_max: 'Upper end over lower, at most',
};

const headingOf = (column: string): string =>
  HEADINGS[column] ?? capital(column.replaceAll('_', ' '));

/** Origins that are no places. */
const NO_PLACES: ReadonlySet<string> = new Set(['old', 'international']);

const nameIn = (rows: readonly { id: string; name: string }[], id: string): string | undefined =>
  rows.find((row) => row.id === id)?.name;

/** What the ids of a column are called, by its name. */
const NAMES: Readonly<Record<string, (catalogue: Catalogue, id: string) => string | undefined>> = {
  bodies: (_catalogue, id) => shortBody(id),
  body: (_catalogue, id) => shortBody(id),
  use: (_catalogue, id) => useWords[id as keyof typeof useWords],
  origins: (_catalogue, id) => (NO_PLACES.has(id) ? id : capital(id)),
  types: ({ types }, id) => types[id]?.short_name,
  system: ({ markings }, id) => nameIn(markings.temperatureSystems, id),
  scheme: ({ markings }, id) => nameIn([...markings.dateSchemes, ...markings.voltageSchemes], id),
  group: ({ markings }, id) => nameIn(markings.markGroups, id),
};

/** Words of an id that is the key of another table; itself where it has none. */
const named = (catalogue: Catalogue, column: string, value: string): string =>
  NAMES[column]?.(catalogue, value) ?? value;

/** Unit of a number that is a quantity; nothing for a mere number. */
const unitOf = (column: string, row: TableRow): Unit | undefined => {
  if (column.endsWith('_f')) return 'F';
  if (column === 'factor')
    return ({ capacitance: 'F', resistance: 'ohm' } as const)[String(row['quantity'])];
  if (column !== 'value' || row['value_min'] === undefined) return undefined;
  const ofResistors = row['kind'] === 'resistor' || ('shape' in row && !('unit_f' in row));
  return ofResistors ? 'ohm' : 'F';
};

const printed = (value: number, unit: Unit | undefined): string =>
  unit === undefined ? printNumber(value) : formatValue(value, unit);

/** The two ends of a span in one cell; one number where they are the same. */
const spanText = (least: unknown, most: unknown, print: (value: number) => string): string => {
  if (least === most) return typeof least === 'number' ? print(least) : '';
  if (typeof most !== 'number') return typeof least === 'number' ? `from ${print(least)}` : '';
  return typeof least === 'number' ? `${print(least)} to ${print(most)}` : `to ${print(most)}`;
};

/** Ends of the names of columns that are the two ends of one span. */
const ENDS: readonly (readonly [least: string, most: string])[] = [
  ['_min', '_max'],
  ['_min_percent', '_max_percent'],
  ['_from', '_to'],
];

/** The span that a column begins or ends, and its two columns. */
const spanOf = (
  column: string,
  columns: readonly string[],
): { name: string; least: string; most: string } | undefined => {
  for (const [least, most] of ENDS) {
    const end = [least, most].find((one) => column.endsWith(one));
    if (end === undefined) continue;
    const stem = column.slice(0, -end.length);
    if (!columns.includes(stem + least) || !columns.includes(stem + most)) continue;
    const unit = least.slice('_min'.length);
    return {
      name: stem + (least.startsWith('_min') ? unit : ''),
      least: stem + least,
      most: stem + most,
    };
  }
  return undefined;
};

/** Columns in the order in which they are shown: what is printed on parts, or a name, comes first. */
const inOrder = (columns: readonly string[]): string[] => {
  const first = ['example', 'symbol', 'name'].find((one) => columns.includes(one));
  const leads = columns[0] === 'id' || columns[0] === 'place' ? first : undefined;
  return leads === undefined
    ? [...columns]
    : [leads, ...columns.filter((column) => column !== leads && column !== 'id')];
};

/** Whether the first column of a table is printed on parts, and not the name of a row. */
export const beginsWithCode = (columns: readonly CodeColumn[]): boolean =>
  columns[0]?.heading !== 'Name';

/**
 * The columns of a table's page: those that say something, without the ones that are shown in
 * another way, the ends of a span in one.
 *
 * @param by column that parts the rows, shown as a heading
 */
export const columnsOf = (
  catalogue: Catalogue,
  rows: readonly TableRow[],
  by: string | undefined,
): CodeColumn[] => {
  const columns = inOrder(
    Object.keys(rows[0] ?? {}).filter(
      (column) =>
        !OWN_WAY.has(column) && column !== by && rows.some((row) => cellText(row[column]) !== ''),
    ),
  );
  return columns.flatMap((column): CodeColumn[] => {
    const span = spanOf(column, columns);
    if (span?.most === column) return [];
    if (span !== undefined)
      return [
        {
          heading: headingOf(span.name),
          cell: (row) =>
            spanText(row[span.least], row[span.most], (value) =>
              span.name === 'years' ? String(value) : printed(value, unitOf(span.name, row)),
            ),
        },
      ];
    const heading =
      column === 'factor' && rows.some((row) => row['quantity'] !== undefined)
        ? 'Stands for'
        : headingOf(column);
    return [{ heading, cell: (row) => cellOf(catalogue, column, row) }];
  });
};

/** The unit of a sign or code of class 2, which counts changes and temperatures in one column. */
const signBehind = (column: string, row: TableRow): string => {
  if (column !== 'low' && column !== 'high') return '';
  return 't_min' in row || row['place'] === 'change' ? '\u00a0%' : '\u00a0°C';
};

/** What one column of a row says, in words. */
export const cellOf = (catalogue: Catalogue, column: string, row: TableRow): string => {
  const value = row[column];
  if (typeof value === 'number')
    return printed(value, unitOf(column, row)) + signBehind(column, row);
  if (Array.isArray(value))
    return value.map((item) => named(catalogue, column, String(item))).join(', ');
  return typeof value === 'string' ? named(catalogue, column, value) : cellText(value);
};
