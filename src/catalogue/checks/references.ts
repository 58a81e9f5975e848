import { tables as registry } from '../../schemas/tables.ts';
import type { Reference, Table } from '../../schemas/table.ts';
import type { Fault } from '../fault.ts';
import type { TableName, Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { nearest } from './nearest.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'reference';

/** What the rows of a table are called by others. */
const idsOf = (tables: Tables, file: TableName): string[] => {
  const [column] = registry[file].key;
  return tables[file].rows.map((row) => row.cells[column] ?? '');
};

const referenceFaults = (tables: Tables, file: TableName, reference: Reference): Fault[] => {
  const others = reference.orTable ?? [];
  const targets = [reference.table, others].flat() as TableName[];
  // What an unreadable table holds cannot be told, so nothing can be said to be missing in it.
  if (targets.some((target) => !tables[target].readable)) return [];
  const ids = new Set(targets.flatMap((target) => idsOf(tables, target)));
  const named = targets.join(' or ');
  return tables[file].rows.flatMap((row) => {
    const cell = row.cells[reference.column] ?? '';
    const names = reference.many === true ? cell.split(';').map((item) => item.trim()) : [cell];
    return names
      .filter((name) => name !== '' && !ids.has(name))
      .map((name) => {
        const near = nearest(name, ids);
        return cellFault(rule, file, row, reference.column, {
          wrong: `${reference.column} names what ${named} does not have`,
          got: name,
          expected: `one of the ${ids.size} names in ${named}`,
          ...(near === undefined ? {} : { how: `did you mean ${near}?` }),
        });
      });
  });
};

export const references: Check = {
  id: rule,
  about: 'Every name of a row in another table is the name of a row that is there.',
  needs: [],
  check: ofEachTable((tables, file) => {
    if (!tables[file].readable) return [];
    const table: Table = registry[file];
    return table.references.flatMap((reference) => referenceFaults(tables, file, reference));
  }),
};
