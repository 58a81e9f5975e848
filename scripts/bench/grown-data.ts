import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { tables } from '../../src/schemas/tables.ts';
import type { Reference, Table } from '../../src/schemas/table.ts';

/** Data with many times the types, or positions: each again under other names, with all that is known of it. */

type Row = Record<string, string>;

/** What can be multiplied: the tables whose rows are made again, and their columns that must differ. */
const AGAIN = {
  types: { 'types.csv': ['name', 'short_name'], 'look/kinds.csv': [] },
  positions: { 'positions.csv': ['name'], 'demands.csv': [] },
} satisfies Record<string, Record<string, string[]>>;

/** What data can be grown by. */
export type Growth = keyof typeof AGAIN;

const LIST = ';';

const again = (id: string, copy: number): string => `${id}-again-${String(copy)}`;

const quoted = (cell: string): string =>
  /[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

const textOf = (rows: readonly Row[]): string => {
  const columns = Object.keys(rows[0] ?? {});
  return [columns, ...rows.map((row) => columns.map((column) => row[column] ?? ''))]
    .map((cells) => `${cells.map(quoted).join(',')}\n`)
    .join('');
};

/** How tables grow. */
interface Growing {
  /** The number of each copy. */
  copies: readonly number[];
  /** Ids that are copied, by the table that they stand in. */
  ids: Readonly<Record<string, ReadonlySet<string>>>;
}

/**
 * The rows of one table, grown.
 * @param own its columns that must differ; nothing for a table that only names what is copied
 */
const grown = (
  { key, references }: Table,
  rows: readonly Row[],
  { copies, ids }: Growing,
  own: readonly string[] | undefined,
): Row[] => {
  const pointing = references.filter(({ table }) => ids[table] !== undefined);
  const idsOf = (cell: string, { table }: Reference): string[] =>
    cell.split(LIST).filter((id) => ids[table]?.has(id));
  const copyOf = (row: Row, copy: number): Row => {
    const next = { ...row };
    if (own !== undefined) next['id'] = again(row['id'] ?? '', copy);
    for (const column of own ?? []) next[column] = `${row[column] ?? ''} ${String(copy)}`;
    for (const reference of pointing) {
      const cell = row[reference.column] ?? '';
      const named = idsOf(cell, reference);
      next[reference.column] = cell
        .split(LIST)
        .map((id) => (named.includes(id) ? again(id, copy) : id))
        .join(LIST);
    }
    return next;
  };
  /** A row that only lists types, or kinds, lists their copies too. */
  const listed = (row: Row): Row => {
    const next = { ...row };
    for (const reference of pointing.filter(({ many }) => many === true)) {
      const cell = row[reference.column] ?? '';
      const added = copies.flatMap((copy) => idsOf(cell, reference).map((id) => again(id, copy)));
      next[reference.column] = [cell, ...added].join(LIST);
    }
    return next;
  };
  const isCopied = (row: Row): boolean =>
    own !== undefined ||
    pointing.some(
      (one) =>
        one.many !== true &&
        key.includes(one.column) &&
        idsOf(row[one.column] ?? '', one).length > 0,
    );
  return rows.flatMap((row) =>
    isCopied(row) ? [row, ...copies.map((copy) => copyOf(row, copy))] : [listed(row)],
  );
};

/**
 * Multiplies the types or the positions of a data folder in place.
 * @param times how often each stands there afterwards
 */
export const grow = (folder: string, what: Growth, times: number): void => {
  const made: Readonly<Record<string, readonly string[]>> = AGAIN[what];
  const copies = Array.from({ length: times - 1 }, (_, at) => at + 2);
  const read = (file: string): Row[] =>
    parse<Row>(readFileSync(join(folder, file), 'utf8'), { columns: true });
  const ids = Object.fromEntries(
    Object.keys(made).map((file) => [file, new Set(read(file).map(({ id = '' }) => id))]),
  );
  for (const [file, table] of Object.entries<Table>(tables)) {
    const speaks = table.references.some((one) => ids[one.table] !== undefined);
    if (speaks || made[file] !== undefined)
      writeFileSync(
        join(folder, file),
        textOf(grown(table, read(file), { copies, ids }, made[file])),
      );
  }
};
