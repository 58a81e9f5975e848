import { allSums } from '../../engine/sums/index.ts';
import { tables as registry, type Table } from '../../schemas/tables.ts';
import { cellFault, type Check } from './check.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'uncited-source';

const citedByRows = ofEachTable((tables, file) => {
  const table: Table = registry[file];
  const columns = table.references.filter(({ table: target }) => target === 'sources.csv');
  return columns.flatMap(({ column }) => tables[file].rows.map(({ cells }) => cells[column]));
});

export const sourcesCited: Check = {
  id: rule,
  about: 'Every source stands behind some row or some bench sum.',
  needs: ['sources.csv'],
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
