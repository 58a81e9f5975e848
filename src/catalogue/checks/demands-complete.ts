import type { TableName } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';

const rule = 'missing-demand';

/** Tables of places that parts are judged in, with the table of what each of them asks. */
const PLACES = [
  { file: 'positions.csv', demands: 'demands.csv' },
  { file: 'kinds/positions.csv', demands: 'demands.csv' },
  { file: 'devices/uses.csv', demands: 'devices/demands.csv' },
] as const satisfies readonly { file: TableName; demands: TableName }[];

export const demandsComplete: Check = {
  id: rule,
  about: 'Every position, and every use of a device, asks something.',
  needs: PLACES.flatMap(({ file, demands }) => [file, demands]),
  check: (tables) =>
    PLACES.flatMap(({ file, demands }) => {
      // As the cells say it: a row with a fault of its own is there all the same.
      const asking = new Set(tables[demands].rows.map(({ cells }) => cells['position']));
      return tables[file].rows
        .filter(({ cells }) => !asking.has(cells['id']))
        .map((row) =>
          cellFault(rule, file, row, 'id', {
            wrong: 'a place that asks nothing of its parts',
            expected: `rows ${row.cells['id'] ?? ''} in ${demands}`,
          }),
        );
    }),
};
