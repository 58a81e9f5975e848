import { describe, expect, test } from 'vitest';
import { canRun, type Check } from '../../../src/catalogue/checks/check.ts';
import { inReadingOrder, type Fault } from '../../../src/catalogue/fault.ts';
import { tableNames, type TableName, type Tables } from '../../../src/catalogue/read-folder.ts';
import type { ReadTable, Row } from '../../../src/catalogue/read-table.ts';
import { tables as registry } from '../../../src/schemas/tables.ts';
import type { Table } from '../../../src/schemas/table.ts';

/**
 * Some tables by name: a header and rows, as lines of their file. Columns that a case is not about
 * are left out; they are empty and stand behind the others. A row that starts with `!` has a fault
 * of its own, so that no schema has read it. A table that no case speaks of is there and empty.
 */
export type MadeTables = Partial<Record<TableName, readonly string[]>>;

/** One fault that a rule must find: where, and what its words must hold. */
export interface MadeFault {
  /** `file:line:column`: the line as it is counted in the case, and the name of the column. */
  at: string;
  /** What stands there; the cell that starts at the place, where nothing is said. */
  got?: string;
  /** Numbers and names that must stand in what is wrong, expected or to be done. */
  says?: readonly string[];
}

export interface MadeCase {
  what: string;
  tables: MadeTables;
  faults: readonly (string | MadeFault)[];
}

const BAD = '!';

/** Each cell as its column is read; what a case does not speak of is empty, or not there. */
const valueOf = ({ row }: Table, cells: Readonly<Record<string, string>>, where: string): object =>
  Object.fromEntries(
    Object.entries(row.shape).map(([column, schema]) => {
      const cell = cells[column] ?? '';
      const read = schema.safeParse(cell);
      if (!read.success && cell !== '') throw new Error(`${where}: ${column} cannot be "${cell}"`);
      return [column, read.success ? read.data : undefined];
    }),
  );

const rowOf = (file: TableName, names: readonly string[], text: string, line: number) => {
  const bad = text.startsWith(BAD);
  const texts = text.slice(bad ? BAD.length : 0).split(',');
  const cells = Object.fromEntries(names.map((name, at) => [name, texts[at] ?? '']));
  const columns = Object.fromEntries(
    names.map((name, at) => [
      name,
      names.slice(0, at).reduce((sum, _, before) => sum + (texts[before] ?? '').length + 1, 1),
    ]),
  );
  const row: Row<unknown> = { line, cells, columns };
  return bad ? row : { ...row, value: valueOf(registry[file], cells, `${file}:${String(line)}`) };
};

const tableOf = (file: TableName, [header, ...lines]: readonly string[]): ReadTable<unknown> => {
  const given = header?.split(',') ?? [];
  const { shape }: Table['row'] = registry[file].row;
  const unknown = given.find((name) => !Object.hasOwn(shape, name));
  if (unknown !== undefined) throw new Error(`${file} has no column ${unknown}`);
  const names = [...new Set([...given, ...Object.keys(shape)])];
  return { file, readable: true, rows: lines.map((text, at) => rowOf(file, names, text, at + 2)) };
};

/** All tables: those that are made, and the others empty. */
export const madeTables = (made: MadeTables): Tables =>
  Object.fromEntries(tableNames.map((file) => [file, tableOf(file, made[file] ?? [])])) as Tables;

/** The same without one of them, as where its file is missing. */
export const withoutTable = (tables: Tables, file: TableName): Tables => ({
  ...tables,
  [file]: { file, readable: false, rows: [] },
});

/** The column that starts where a fault is; the number itself where none does. */
const columnOf = (tables: Tables, { file, line, column }: Fault): string => {
  const row = tables[file as TableName].rows.find((one) => one.line === line);
  const starts = Object.entries(row?.columns ?? {});
  return starts.find(([, start]) => start === column)?.[0] ?? String(column);
};

const placeIn =
  (tables: Tables) =>
  (fault: Fault): string =>
    `${fault.file}:${String(fault.line)}:${columnOf(tables, fault)}`;

/** What stands in a cell of a case, by its place. */
const textAt = (tables: Tables, fault: Fault): string => {
  const row = tables[fault.file as TableName].rows.find(({ line }) => line === fault.line);
  return row?.cells[columnOf(tables, fault)] ?? '';
};

const run = (check: Check, tables: Tables): Fault[] =>
  canRun(check, tables) ? inReadingOrder(check.check(tables)) : [];

/** One test a case: what a rule finds in a few made rows, and where. */
export const testRule = (id: string, check: Check, cases: readonly MadeCase[]): void => {
  describe(id, () => {
    test.each(cases)('$what', ({ tables: made, faults }) => {
      const tables = madeTables(made);
      const wanted = faults.map((fault) => (typeof fault === 'string' ? { at: fault } : fault));
      const found = run(check, tables);
      expect(found.map(placeIn(tables))).toEqual(wanted.map(({ at }) => at));
      for (const [index, fault] of found.entries()) {
        const { got = textAt(tables, fault), says = [] } = wanted[index] ?? {};
        expect(fault).toMatchObject({ rule: id, got });
        expect(fault.wrong).toMatch(/\S/);
        expect(fault.expected).toMatch(/\S/);
        const said = [fault.wrong, fault.expected, fault.how ?? ''].join('; ');
        for (const word of says) expect(said).toContain(word);
      }
    });

    test.each(cases)('$what: a table that is missing is no fault of a row', ({ tables: made }) => {
      const tables = madeTables(made);
      const before = run(check, tables).map(placeIn(tables));
      for (const file of Object.keys(made) as TableName[])
        expect(before).toEqual(
          expect.arrayContaining(run(check, withoutTable(tables, file)).map(placeIn(tables))),
        );
    });
  });
};
