import { parse } from 'csv-parse/sync';
import { assembleCatalogue } from '../../src/catalogue/assemble.ts';
import { readFolder, tableNames, type TableName } from '../../src/catalogue/index.ts';
import { readContents } from '../../src/catalogue/read-folder.ts';
import type { Catalogue } from '../../src/engine/index.ts';
import { newFaults, realFolder, realText } from '../data/broken-copy.ts';

/** A row as its cells are written; columns that are left out are empty. */
export type Row = Readonly<Record<string, string>>;

/** Rows that are added to tables, by file. */
export type Added = Readonly<Partial<Record<TableName, readonly Row[]>>>;

const fieldsOf = (file: TableName): string[] =>
  (parse(realText(file), { to: 1 }) as string[][])[0] ?? [];

/** The rows of a table as they stand there. */
export const rowsOf = (file: TableName): Row[] => parse(realText(file), { columns: true }) as Row[];

/** The row of a table with an id. */
export const rowOf = (file: TableName, id: string): Row => {
  const row = rowsOf(file).find((one) => one['id'] === id);
  if (row === undefined) throw new Error(`no row ${id} in ${file}`);
  return row;
};

const written = (cell: string): string =>
  /[",\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

const withAdded = (file: TableName, text: string, rows: readonly Row[]): string => {
  const fields = fieldsOf(file);
  const strange = rows.flatMap((row) => Object.keys(row).filter((name) => !fields.includes(name)));
  if (strange.length > 0) throw new Error(`${file} has no ${strange.join(', ')}`);
  return `${text}${rows
    .map((row) => `${fields.map((name) => written(row[name] ?? '')).join(',')}\n`)
    .join('')}`;
};

const real = readFolder(realFolder).tables;

/**
 * The tables of this project with some rows added, as by somebody who follows DEVELOPERS.md.
 * @param edited files that are changed besides, as a whole
 * @returns every fault that the check then finds, and the catalogue that the site is made of
 */
export const withRows = (
  added: Added,
  edited: Readonly<Partial<Record<TableName, string>>> = {},
): { faults: string[]; catalogue: Catalogue } => {
  const files = tableNames.filter((file) => file in added || file in edited);
  const texts = files.map(
    (file) => [file, withAdded(file, edited[file] ?? realText(file), added[file] ?? [])] as const,
  );
  const encoder = new TextEncoder();
  const tables = {
    ...real,
    ...Object.fromEntries(
      texts.map(([file, text]) => [file, readContents(file, encoder.encode(text)).table]),
    ),
  };
  return { faults: newFaults(Object.fromEntries(texts)), catalogue: assembleCatalogue(tables) };
};
