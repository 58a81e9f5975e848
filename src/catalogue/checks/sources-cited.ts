import { allSums } from '../../engine/sums/index.ts';
import { tables as registry } from '../../schemas/tables.ts';
import type { Table } from '../../schemas/table.ts';
import { tableNames, type TableName } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'uncited-source';

/** Columns of a table that name a source. */
const citingColumns = (file: TableName): string[] => {
  const { references }: Table = registry[file];
  return references.flatMap(({ column, table }) => (table === 'sources.csv' ? [column] : []));
};

const citedByRows = ofEachTable((tables, file) =>
  citingColumns(file).flatMap((column) => tables[file].rows.map(({ cells }) => cells[column])),
);

export const sourcesCited: Check = {
  id: rule,
  about: 'Every source stands behind some row or some bench sum.',
  // Who cites what cannot be told as long as one that cites cannot be read.
  needs: ['sources.csv', ...tableNames.filter((file) => citingColumns(file).length > 0)],
  check: (tables) => {
    const citedBySums = allSums.flatMap(({ sources, checks }) => [
      ...sources,
      ...checks.map(({ source }) => source),
    ]);
    const cited = new Set([...citedBySums, ...citedByRows(tables)]);
    return tables['sources.csv'].rows
      .filter(({ cells }) => !cited.has(cells['id']))
      .map((row) =>
        cellFault(rule, 'sources.csv', row, 'id', {
          wrong: 'no row and no bench sum cites this source',
          expected: 'a source that one of them cites',
        }),
      );
  },
};
