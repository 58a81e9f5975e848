import type { TableName, Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';

const rule = 'preferred-value';

/** Tables of what is offered, with the lists that their parts may be made in besides the E series. */
const OFFERS = [
  { file: 'market.csv', lists: 'value-lists.csv' },
  { file: 'kinds/offers.csv', lists: 'kinds/values.csv' },
] as const satisfies readonly { file: TableName; lists: TableName }[];

const faultsIn = (tables: Tables, { file, lists }: (typeof OFFERS)[number]) => {
  const series = new Set([
    ...tables['e-series.csv'].rows.map(({ cells }) => cells['series']),
    ...tables[lists].rows.map(({ cells }) => cells['list']),
  ]);
  return tables[file].rows
    .filter(({ cells }) => (cells['series'] ?? '') !== '' && !series.has(cells['series']))
    .map((row) =>
      cellFault(rule, file, row, 'series', {
        wrong: 'a series that there is not',
        expected: [...series].join(' or '),
      }),
    );
};

export const marketSeries: Check = {
  id: rule,
  about:
    'An offer is in a series of preferred values that e-series.csv has, or in a list of its own.',
  needs: ['e-series.csv', ...OFFERS.flatMap(({ file, lists }) => [file, lists])],
  check: (tables) => OFFERS.flatMap((offers) => faultsIn(tables, offers)),
};
