import type { ColumnField, ColumnWordRow, KindWordRow } from '../../schemas/job.ts';
import { expandDesignators, isRatherTypeNumber } from '../model/designators.ts';
import type { DecimalSign } from './decimal-sign.ts';
import type { Row } from './delimited.ts';

export type { ColumnField } from '../../schemas/job.ts';

/** What each column of a table holds; nothing for one that goes into `rest`. */
export interface Mapping {
  /** Whether the first row names the columns. */
  hasHeader: boolean;
  fields: readonly (ColumnField | undefined)[];
  /** The sign before decimals; numbers are left as they stand where it is not known. */
  decimal?: DecimalSign | undefined;
}

const SAMPLE = 200;

const tidy = (word: string): string =>
  word
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}%]+/gu, ' ')
    .trim();

type Contents = readonly [ColumnField, (cell: string) => boolean];

/** What cells of a field look like, for columns that no word names; the first that fits is taken. */
const CONTENTS: readonly Contents[] = [
  [
    'designators',
    (cell) => {
      const { list, faults } = expandDesignators(cell);
      // A single letter or two before the number; values such as 4n7 begin with a digit.
      const isOne = /^[A-Z]{1,3}\s*\d/iu.test(cell.trim()) && !list.some(isRatherTypeNumber);
      return faults.length === 0 && list.length > 0 && isOne;
    },
  ],
  ['tolerance', (cell) => /^[±+-]?\s*\d+(?:[.,]\d+)?\s*%$/u.test(cell.trim())],
  ['volts', (cell) => /^\d+(?:[.,]\d+)?\s*k?V(?:\s*(?:dc|ac))?$/iu.test(cell.trim())],
  ['value', (cell) => /^\d+(?:[.,]\d+)?\s*(?:[pnuµμm]F?\d*|[kMR]\d*|Ω|ohm)$/iu.test(cell.trim())],
  ['quantity', (cell) => /^\d{1,4}$/u.test(cell.trim())],
];

/** A value, or the number of a type: one column of a list holds both. */
const isValueOrNumber = (cell: string): boolean =>
  CONTENTS.some(([field, fits]) => field === 'value' && fits(cell)) ||
  /^(?=.*\d)(?=.*[A-Z])[A-Z\d-]{4,}$/iu.test(cell.trim());

/** Share of the cells that are not empty which must fit. */
const ENOUGH = 0.7;

/** The same, with the words that lists use for kinds of part. */
const contentsWith = (kindWords: readonly KindWordRow[]): readonly Contents[] => {
  const words = new Set(kindWords.map(({ word }) => tidy(word)));
  return [...CONTENTS, ['kind', (cell) => words.has(tidy(cell))], ['value', isValueOrNumber]];
};

const byContents = (
  cells: readonly string[],
  contents: readonly Contents[] = CONTENTS,
): ColumnField | undefined => {
  const said = cells.filter((cell) => cell.trim() !== '');
  if (said.length === 0 || countRows(said)) return undefined;
  return contents.find(([, fits]) => said.filter(fits).length >= said.length * ENOUGH)?.[0];
};

/** Rows that must be counted before a column is taken to count them; two may need one part and two. */
const COUNTED = 3;

/** Whether cells count the rows of their table. */
const countRows = (cells: readonly string[]): boolean =>
  cells.length >= COUNTED &&
  cells.every((cell, at) => at === 0 || Number(cell) === Number(cells[at - 1]) + 1);

/** Whether cells look like a field. */
const holds = (cells: readonly string[], field: ColumnField): boolean =>
  byContents(cells) === field;

/** Columns that hold designators all the same, by the field of the word that heads them. */
const GIVES_WAY: readonly (ColumnField | undefined)[] = [undefined, 'designators', 'position'];

/**
 * What the words at the head say, save that a word such as “part” or “position”, which heads designators
 * in one list and something else in another, gives way to a column that holds designators.
 */
const wordsAsMeant = (
  named: readonly (ColumnField | undefined)[],
  cellsOf: (at: number) => readonly string[],
): (ColumnField | undefined)[] => {
  const holders = named.flatMap((field, at) =>
    GIVES_WAY.includes(field) && holds(cellsOf(at), 'designators') ? [at] : [],
  );
  const [holder] = holders;
  if (holder === undefined || holders.includes(named.indexOf('designators'))) return [...named];
  const other = named.includes('kind') ? undefined : 'kind';
  return named.map((field, at) => {
    if (at === holder) return 'designators';
    return field === 'designators' ? other : field;
  });
};

/** Whether most cells that say something have figures. */
const haveFigures = (cells: readonly string[]): boolean => {
  const said = cells.filter((cell) => cell.trim() !== '');
  return said.length > 0 && said.filter((cell) => /\d/u.test(cell)).length >= said.length * ENOUGH;
};

/**
 * A table that nothing heads, with what is printed on its parts where no column has their values: the
 * first column of figures behind the designators, as in `C1`, `0.1 MFD 600V`, `wax paper`. What stands
 * behind that is a note.
 */
const withMarks = (
  fields: readonly (ColumnField | undefined)[],
  cellsOf: (at: number) => readonly string[],
): (ColumnField | undefined)[] => {
  const open = fields.flatMap((field, at) => (field === undefined ? [at] : []));
  const marks = open.find((at) => haveFigures(cellsOf(at)));
  const isDue =
    fields.includes('designators') && !fields.some((one) => one === 'value' || one === 'marking');
  if (!isDue || marks === undefined) return [...fields];
  const notes = open.find((at) => at > marks);
  return fields.map((field, at) => {
    if (at === marks) return 'marking';
    return at === notes ? 'note' : field;
  });
};

/**
 * What the columns of a table seem to hold, by the words that head them, else by their contents;
 * for the visitor to confirm. Each field is given to one column at most: to the one whose word stands
 * first in the list of words, else to the first that fits.
 */
export const guessColumns = (
  rows: readonly Row[],
  words: readonly ColumnWordRow[],
  kindWords: readonly KindWordRow[] = [],
): Mapping => {
  const contents = contentsWith(kindWords);
  const rankOf = new Map(words.map(({ word }, rank) => [tidy(word), rank]));
  const head = rows[0]?.cells ?? [];
  const ranks = head.map((cell) => rankOf.get(tidy(cell)));
  const named = ranks.map((rank) => (rank === undefined ? undefined : words[rank]?.field));
  const hasHeader = named.some((field) => field !== undefined);
  const body = rows.slice(hasHeader ? 1 : 0, SAMPLE);
  const cellsOf = (at: number): string[] => body.map(({ cells }) => cells[at] ?? '');
  // Descriptions are read as markings are, save where they only say what kind of part it is.
  const meant = wordsAsMeant(named, cellsOf).map((field, at) =>
    field === 'marking' && byContents(cellsOf(at), contents) === 'kind' ? 'kind' : field,
  );
  const taken = new Set<ColumnField>();
  const claim = (field: ColumnField | undefined): ColumnField | undefined => {
    if (field === undefined || taken.has(field)) return undefined;
    taken.add(field);
    return field;
  };
  const byRank = meant.map((_, at) => at);
  byRank.sort((one, other) => (ranks[one] ?? 0) - (ranks[other] ?? 0));
  const first = new Map(byRank.map((at) => [at, claim(meant[at])]));
  // A row that is longer than the one that names the columns is broken, not wider.
  const width = hasHeader
    ? head.length
    : Math.max(0, ...rows.slice(0, SAMPLE).map(({ cells }) => cells.length));
  const fields = Array.from({ length: width }, (_, at) => {
    // A column with a word of its own that says something else is not guessed again.
    const isNamed = named[at] !== undefined || meant[at] !== undefined;
    const said = first.get(at);
    if (said !== undefined) return said;
    const held = byContents(cellsOf(at), contents);
    // Words such as “part” head designators, and kinds beside a column that has the designators.
    return isNamed && held !== 'kind' ? undefined : claim(held);
  });
  // What stands in the only column, and is nothing else, is printed on parts: `TL072`, `104K`, `100n 63V`.
  const isAlone = !hasHeader && width === 1 && byContents(cellsOf(0)) === undefined;
  if (isAlone) return { hasHeader, fields: ['marking'] };
  return { hasHeader, fields: hasHeader ? fields : withMarks(fields, cellsOf) };
};
