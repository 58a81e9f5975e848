import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import { tables } from '../schemas/tables.ts';
import type { Fault } from './fault.ts';
import { readTable, type ReadTable } from './read-table.ts';

/** File name of a table, as its path inside the data folder. */
export type TableName = keyof typeof tables;

/** What a row of a table holds once its schema has read it. */
export type ValueOf<Name extends TableName> = z.output<(typeof tables)[Name]['row']>;

/** Every table of a data folder, as it was read. */
export type Tables = { [Name in TableName]: ReadTable<ValueOf<Name>> };

/** Names of all tables, in the order of the registry. */
export const tableNames = Object.keys(tables) as TableName[];

/**
 * Reads one table by itself.
 *
 * @param bytes what its file holds; nothing where there is no such file.
 * @returns the table as far as it can be read, and every fault that shows in it alone.
 */
export const readContents = (
  file: TableName,
  bytes: Uint8Array | undefined,
): { table: ReadTable<unknown>; faults: Fault[] } => {
  const { row } = tables[file];
  if (bytes !== undefined) return readTable(file, bytes, row);
  const fault: Fault = {
    file,
    line: 1,
    column: 1,
    rule: 'missing-table',
    wrong: 'the file is not there',
    got: '',
    expected: `a table of ${Object.keys(row.shape).join(',')}`,
  };
  return { table: { file, readable: false, rows: [] }, faults: [fault] };
};

const bytesOf = (path: string): Uint8Array | undefined =>
  existsSync(path) ? readFileSync(path) : undefined;

/**
 * Reads every table of a data folder, each by itself.
 *
 * @returns the tables as far as they can be read, and every fault that shows in one table alone.
 * @throws only where the file system does, such as for a folder without permission to read.
 */
export const readFolder = (folder: string): { tables: Tables; faults: Fault[] } => {
  const readings = tableNames.map(
    (file) => [file, readContents(file, bytesOf(join(folder, file)))] as const,
  );
  return {
    // The registry's own keys and schemas made every entry, so the names and values agree.
    tables: Object.fromEntries(readings.map(([file, { table }]) => [file, table])) as Tables,
    faults: readings.flatMap(([, { faults }]) => faults),
  };
};

/** The rows of a table that its schema accepts. */
export const valuesOf = <Name extends TableName>(all: Tables, file: Name): ValueOf<Name>[] =>
  all[file].rows.flatMap((row) => (row.value === undefined ? [] : [row.value as ValueOf<Name>]));
