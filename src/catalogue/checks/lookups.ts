import type { UnitRow } from '../../schemas/values.ts';
import { valuesOf, type TableName, type Tables, type ValueOf } from '../read-folder.ts';
import type { Row } from '../read-table.ts';
import type { Units } from '../to-si.ts';

/** A row whose own schema found no fault in it. */
export type GoodRow<Name extends TableName> = Row<ValueOf<Name>> & { value: ValueOf<Name> };

/** The rows of a table that its schema accepts, with their places. */
export const goodRows = <Name extends TableName>(tables: Tables, file: Name): GoodRow<Name>[] =>
  // A table's rows carry the values of its own schema; the filter leaves those that have one.
  tables[file].rows.filter((row) => row.value !== undefined) as GoodRow<Name>[];

/** Rows by their id. */
export const byId = <Item extends { id: string }>(rows: readonly Item[]): Map<string, Item> =>
  new Map(rows.map((row) => [row.id, row]));

/** Units by name. */
export const unitsOf = (tables: Tables): Units =>
  Object.fromEntries(
    valuesOf(tables, 'units.csv').map((row): [string, UnitRow] => [row.unit, row]),
  );
