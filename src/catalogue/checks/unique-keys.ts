import { tables as registry } from '../../schemas/tables.ts';
import type { Table } from '../../schemas/table.ts';
import { cellFault, type Check } from './check.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'duplicate-key';

export const uniqueKeys: Check = {
  id: rule,
  about: 'No two rows of a table agree in all of its key columns.',
  needs: [],
  check: ofEachTable((tables, file) => {
    if (!tables[file].readable) return [];
    const { key }: Table = registry[file];
    const firstLine = new Map<string, number>();
    return tables[file].rows.flatMap((row) => {
      const cells = key.map((column) => row.cells[column] ?? '');
      const name = JSON.stringify(cells);
      const first = firstLine.get(name);
      if (first === undefined) {
        firstLine.set(name, row.line);
        return [];
      }
      return [
        cellFault(rule, file, row, key[0] ?? '', {
          wrong: `the same ${key.join(', ')} as line ${first}`,
          got: cells.join(', '),
          expected: 'a row that differs in one of them',
        }),
      ];
    });
  }),
};
