import { tables as registry } from '../../schemas/tables.ts';
import type { Table } from '../../schemas/table.ts';
import { cellFault, type Check } from './check.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'repeated-item';

export const repeatedItems: Check = {
  id: rule,
  about: 'No list of names in a cell has the same name twice, unless their order says something.',
  needs: [],
  check: ofEachTable((tables, file) => {
    const { references }: Table = registry[file];
    const lists = references.filter(({ many, inOrder }) => many === true && inOrder !== true);
    return tables[file].rows.flatMap((row) =>
      lists.flatMap(({ column }) => {
        const items = (row.cells[column] ?? '').split(';').map((item) => item.trim());
        return items
          .filter((item, index) => item !== '' && items.indexOf(item) !== index)
          .map((got) =>
            cellFault(rule, file, row, column, {
              wrong: `${column} names the same thing twice`,
              got,
              expected: 'each name once',
            }),
          );
      }),
    );
  }),
};
