import type { Basis, Catalogue, SourceId } from '../engine/index.ts';
import { markingTables, type MarkingTable } from '../schemas/marking-tables.ts';
import { capital, typeset } from '../text/words.ts';
import {
  beginsWithCode,
  cellOf,
  cellText,
  columnsOf,
  type CodeColumn,
  type TableRow,
} from './code-columns.ts';
import type { CodeKind } from './codes/listed.ts';
import { codeSlug } from './codes/slug.ts';

/** A table of codes as its page shows it. */
export interface CodeTable {
  /** Anchor, from the file's name. */
  id: string;
  title: string;
  about: string;
  /** Whether the first column is printed on parts, and not the name of a row. */
  coded: boolean;
  /** The kind of code in it that has pages of its own. */
  codes: CodeKind | undefined;
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

const slugOf = (row: TableRow, columns: readonly string[]): string =>
  columns
    .map((column) => codeSlug(cellText(row[column])))
    .filter((part) => part !== '')
    .join('-');

/** An anchor begins so where a code has neither letter nor figure. */
const SIGN = 'sign';

/** An anchor for each row: of the columns that make it unique as few as tell it from the others. */
const anchorsOf = (rows: readonly TableRow[], key: readonly string[]): string[] => {
  const steps = key.map((_, index) => {
    const slugs = rows.map((row) => slugOf(row, key.slice(0, index + 1)));
    const counts = new Map<string, number>();
    for (const slug of slugs) counts.set(slug, (counts.get(slug) ?? 0) + 1);
    return { slugs, counts };
  });
  return rows.map((row, at) => {
    const found = steps.find(({ slugs, counts }) => counts.get(slugs[at] ?? '') === 1);
    return found?.slugs[at] || slugOf(row, key) || SIGN;
  });
};

const rowOf = (id: string, columns: readonly CodeColumn[], row: TableRow): CodeRow => ({
  id,
  // The first cell is what is printed on parts, and stays as it is.
  cells: columns.map(({ cell }, index) => (index === 0 ? cell(row) : typeset(cell(row)))),
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
    .map(([file, { name, about, key, partedBy: by, codes }]) => {
      const rows: readonly TableRow[] = catalogue.markings[name];
      const columns = columnsOf(catalogue, rows, by);
      const anchors = anchorsOf(rows, key);
      const made = withOwnIds(rows.map((row, at) => rowOf(anchors[at] ?? '', columns, row)));
      const groups = Map.groupBy(made, (_, index) =>
        by === undefined ? '' : cellOf(catalogue, by, rows[index] ?? {}),
      );
      return {
        id: file.replace(/^markings\/|\.csv$/g, ''),
        title: titleOf(file),
        about,
        columns: columns.map(({ heading }) => heading),
        coded: beginsWithCode(columns),
        codes,
        count: rows.length,
        groups: [...groups].map(([title, own]) => ({
          title: capital(title),
          rows: own.toSorted(byCode),
        })),
      };
    });
