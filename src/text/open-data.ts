import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import { dataFolder } from '../catalogue/data-folder.ts';
import { readOwnFolder, tableNames, type TableName } from '../catalogue/index.ts';
import { tables } from '../schemas/tables.ts';
import type { Table } from '../schemas/table.ts';
import { capital, listed } from './words.ts';

/** One column of a table, as the data dictionary says it. */
export interface Column {
  name: string;
  holds: string;
  mayBeEmpty: boolean;
  /** Words that it is limited to. */
  choices: string[];
  /** The table whose ids it holds. */
  refersTo: TableName | undefined;
  meaning: string;
}

/** Cells that tell one kind of column from another, by whether and as what a schema takes them. */
const holdsWords = (cell: z.ZodType): string => {
  const takes = (text: string): unknown => cell.safeParse(text).data;
  if (takes('yes') === true) return 'yes or no';
  const [place] = [takes('1 1')].flat();
  if (Array.isArray(place)) return 'places joined by ;';
  const one = takes('1');
  if (typeof one === 'number') return takes('1.5') === 1.5 ? 'number' : 'whole number';
  if (Array.isArray(one)) {
    if (typeof one[0] === 'number') return 'numbers joined by ;';
    return takes('A b') === undefined ? 'ids joined by ;' : 'words joined by ;';
  }
  if (one === undefined && Array.isArray(takes(''))) return 'words joined by ;';
  if (one === undefined && takes('https://a.example/') !== undefined) return 'address';
  return takes('A b') === undefined ? 'id' : 'text';
};

/** The fixed words of a cell, wherever they stand in its schema. */
const choicesOf = (cell: unknown): string[] => {
  if (typeof cell !== 'object' || cell === null) return [];
  if ('options' in cell && Array.isArray(cell.options)) {
    return cell.options.flatMap((option: unknown) =>
      typeof option === 'string' ? [option] : choicesOf(option),
    );
  }
  return [];
};

/** The data dictionary of a table: read off the schema that checks it, so that the two agree. */
export const columnsOf = (name: TableName): Column[] => {
  const table: Table = tables[name];
  return Object.entries(table.row.shape).map(([column, cell]) => {
    const schema = cell as z.ZodType;
    const choices = choicesOf(schema);
    const reference = table.references.find((candidate) => candidate.column === column);
    return {
      name: column,
      holds: choices.length > 0 ? `one of ${listed(choices, 'or')}` : holdsWords(schema),
      mayBeEmpty: schema.safeParse('').success,
      choices,
      refersTo: tableNames.find((other) => other === reference?.table),
      meaning: schema.description ?? '',
    };
  });
};

/** The rows of a table, as their schema reads them. */
export const rowsOf = (name: TableName): Record<string, unknown>[] =>
  readOwnFolder().tables[name].rows.flatMap(({ value }) => (value === undefined ? [] : [value]));

/** The text of a table, as it stands in its file. */
export const csvOf = (name: TableName): string => readFileSync(join(dataFolder(), name), 'utf8');

/** A table's name without its ending, as addresses use it. */
export const stemOf = (name: TableName): string => name.replace(/\.csv$/, '');

/** Every table with its part of an address, for pages and files of which each table has one. */
export const tablePaths = () =>
  tableNames.map((name) => ({ params: { table: stemOf(name) }, props: { name } }));

/** The page of a table: its columns, and where to download it. */
export const pageOf = (name: TableName): `/${string}` => `/data/${stemOf(name)}/`;

/** The table's name as an id, for its row of the list of tables and for lists of sources. */
export const anchorOf = (name: TableName): string => stemOf(name).replaceAll('/', '-');

/** The tables with a column that holds ids of a table. */
export const referringTo = (name: TableName): TableName[] =>
  tableNames.filter((other) => {
    const { references }: Table = tables[other];
    return other !== name && references.some(({ table }) => table === name);
  });

/** What a table is called in a heading. */
export const headingOf = (name: TableName): string =>
  capital(stemOf(name).replaceAll('-', ' ').replace('/', ': '));

export { tableNames };
export type { TableName };
