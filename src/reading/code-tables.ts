import type { Basis, Catalogue, SourceId } from '../engine/index.ts';
import { markingTables, type MarkingTable } from '../schemas/marking-tables.ts';
import { capital, typeset } from '../text/words.ts';

/** A table of codes as its page shows it. */
export interface CodeTable {
  /** Anchor, from the file's name. */
  id: string;
  title: string;
  about: string;
  columns: string[];
  rows: { cells: string[]; basis: Basis; source: SourceId; note: string }[];
}

/** Columns that a page shows in its own way or not at all. */
const OWN_WAY = new Set(['source', 'locator', 'basis', 'note']);

const cellText = (value: unknown): string => {
  if (Array.isArray(value)) return value.join(', ');
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === undefined ? '' : String(value);
};

const titleOf = (file: string): string =>
  capital(file.replace(/^markings\/|\.csv$/g, '').replaceAll('-', ' '));

/**
 * Every table that markings are read with and that has no page of its own kind, without the columns
 * that are empty throughout.
 */
export const codeTables = (catalogue: Catalogue): CodeTable[] =>
  Object.entries<MarkingTable>(markingTables)
    .filter(([, { page }]) => page === undefined)
    .map(([file, { name, about }]) => {
      const rows: readonly Record<string, unknown>[] = catalogue.markings[name];
      const columns = Object.keys(rows[0] ?? {}).filter(
        (column) => !OWN_WAY.has(column) && rows.some((row) => cellText(row[column]) !== ''),
      );
      return {
        id: file.replace(/^markings\/|\.csv$/g, ''),
        title: titleOf(file),
        about,
        columns,
        rows: rows.map((row) => ({
          // The first cell is what is printed on parts, and stays as it is.
          cells: columns.map((column, index) =>
            index === 0 ? cellText(row[column]) : typeset(cellText(row[column])),
          ),
          basis: row['basis'] as Basis,
          source: String(row['source']),
          note: cellText(row['note']),
        })),
      };
    });
