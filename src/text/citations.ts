import type { Basis, SourceId } from '../engine/catalogue.ts';
import type { FigureRow } from '../schemas/types.ts';
import { tables } from '../schemas/tables.ts';
import type { Table } from '../schemas/table.ts';
import { figureIds } from '../components/row-ids.ts';
import { pageOf, rowsOf, tableNames, type TableName } from './open-data.ts';
import { printFigure } from './numbers.ts';
import { capital } from './words.ts';

/** One row of a table that cites a source. */
export interface Citation {
  table: TableName;
  /** What the row is about, in the columns that make it unique. */
  what: string;
  /** The figure it holds, where it holds one. */
  figure: string;
  locator: string;
  basis: Basis;
  /** The page that shows the row. */
  path: `/${string}`;
}

const text = (value: unknown): string =>
  Array.isArray(value) ? value.join(', ') : String(value ?? '');

/** Names of the rows of a table by their ids, where it has both. */
const namesOf = (table: string): Map<string, string> => {
  const known = tableNames.find((name) => name === table);
  const rows = known ? rowsOf(known) : [];
  return new Map(
    rows
      .filter((row) => 'id' in row)
      .map((row) => [text(row['id']), text(row['name'] ?? row['title'])]),
  );
};

/** Columns that say where a row comes from or how it counts, not what it is about. */
const unsaid = ['source', 'locator', 'conditions', 'unit', 'test', 'limit_of'];

/** Tables whose rows hold a figure of their own. */
const withFigures: readonly TableName[] = ['figures.csv', 'position-notes.csv'];

/** What a row is about: the cells that make it unique, ids by the names that they stand for. */
const aboutRow = (table: TableName): ((row: Record<string, unknown>) => string) => {
  const { row, key, references }: Table = tables[table];
  const named = 'name' in row.shape || 'title' in row.shape || key.join() !== 'id';
  const pointers = references.map(({ column }) => column);
  // An id alone says little where the row has no name: what the row points at says more.
  const said = (named ? key : pointers).filter((column) => !unsaid.includes(column));
  const words = said.map((column) => {
    const target = references.find((reference) => reference.column === column)?.table;
    return { column, names: namesOf(target ?? (column === 'id' ? table : '')) };
  });
  return (cells) => {
    const about = words.flatMap(({ column, names }) =>
      [cells[column]].flat().map((cell) => names.get(text(cell)) ?? text(cell)),
    );
    // A row that has no name and points at nothing goes by its id.
    const ids = key.map((column) => text(cells[column]).replaceAll('-', ' '));
    const [first = '', ...more] = (about.some(Boolean) ? about : ids).filter(Boolean);
    return [capital(first), ...more].join(', ');
  };
};

type CellOf = (column: string) => string;

/** Where rows are shown on pages of their own, by table. */
const OWN_PAGES: Partial<Record<TableName, (cell: CellOf, figureId: string) => Citation['path']>> =
  {
    'types.csv': (cell) => `/types/${cell('id')}/`,
    'figures.csv': (cell, figureId) => `/types/${cell('type')}/figures/#${figureId}`,
    'market.csv': (cell) => `/types/${cell('type')}/#market`,
    'kinds/types.csv': (cell) => `/types/${cell('id')}/`,
    'kinds/figures-by-value.csv': (cell) => `/types/${cell('type')}/#by-value`,
    'kinds/offers.csv': (cell) => `/types/${cell('type')}/#market`,
    'kinds/positions.csv': (cell) => `/positions/${cell('id')}/`,
    'positions.csv': (cell) => `/positions/${cell('id')}/`,
    'conditions.csv': (cell) => `/positions/${cell('position')}/#condition-${cell('condition')}`,
    'position-notes.csv': (cell) => `/positions/${cell('position')}/#${cell('kind')}`,
    'demands.csv': (cell) => `/positions/${cell('position')}/#${cell('id')}`,
    'cautions.csv': (cell) => `/cautions/#${cell('id')}`,
    'look/styles.csv': (cell) => `/look/${cell('id')}/`,
    'look/features.csv': (cell) =>
      cell('style') === '' ? '/look/how/#answers' : `/look/${cell('style')}/#looks`,
    'look/ranges.csv': (cell) =>
      cell('style') === ''
        ? `/look/readings/#test-${cell('question')}`
        : `/look/${cell('style')}/#looks`,
    'look/disguises.csv': (cell) => `/look/${cell('style')}/#taken-for`,
    'look/weights.csv': () => '/look/how/#figures',
  };

/** The page that shows a row; a table without pages of its own is shown with the open data. */
const pathOf = (
  table: TableName,
  row: Record<string, unknown>,
  figureId: string,
): Citation['path'] =>
  OWN_PAGES[table]?.((column) => String(row[column]), figureId) ?? pageOf(table);

const figureIdsByRow = (): Map<unknown, string> => {
  const byType = Map.groupBy(rowsOf('figures.csv') as FigureRow[], ({ type }) => type);
  const ids = new Map<unknown, string>();
  for (const figures of byType.values()) {
    figureIds(figures).forEach((id, i) => ids.set(figures[i], id));
  }
  return ids;
};

const collect = (): Map<SourceId, Citation[]> => {
  const ids = figureIdsByRow();
  const all = tableNames.flatMap((table) => {
    const about = aboutRow(table);
    return rowsOf(table)
      .filter((row) => typeof row['source'] === 'string')
      .map((row) => ({
        source: row['source'] as SourceId,
        citation: {
          table,
          what: about(row),
          figure: withFigures.includes(table) ? printFigure(row, String(row['unit'])) : '',
          locator: text(row['locator']),
          basis: row['basis'] as Basis,
          path: pathOf(table, row, ids.get(row) ?? ''),
        } satisfies Citation,
      }));
  });
  return new Map(
    [...Map.groupBy(all, ({ source }) => source)].map(([source, entries]) => [
      source,
      entries.map(({ citation }) => citation),
    ]),
  );
};

/** Every row that cites each source; a source that nothing cites is not in it. */
export const citations: ReadonlyMap<SourceId, readonly Citation[]> = collect();

/** More rows than this on the page of one source are more than a phone should have to fetch. */
const MOST_TOGETHER = 400;
/** Rows of one table that may stand on it all the same. */
const FEW = 40;

/** Rows of one table on one page of its own; more of them are parted into several. */
const MOST_ON_A_PAGE = 500;

/** Some of the rows of one table that rest on a source: those of one page of their own. */
export interface CitedPage {
  cited: readonly Citation[];
  /** Which page it is, from 1, of how many. */
  number: number;
  of: number;
  /** Rows before those of this page. */
  before: number;
}

/** The rows of one table in as few pages as hold them, evenly full. */
export const citedPages = (rows: readonly Citation[]): CitedPage[] => {
  const of = Math.ceil(rows.length / MOST_ON_A_PAGE);
  const each = Math.ceil(rows.length / of);
  return Array.from({ length: of }, (_, index) => ({
    cited: rows.slice(index * each, (index + 1) * each),
    number: index + 1,
    of,
    before: index * each,
  }));
};

/** The tables of a source whose rows stand on pages of their own, because there are so many. */
export const tablesApart = (rows: readonly Citation[]): TableName[] =>
  rows.length <= MOST_TOGETHER
    ? []
    : [...Map.groupBy(rows, ({ table }) => table)]
        .filter(([, cited]) => cited.length > FEW)
        .map(([table]) => table);
