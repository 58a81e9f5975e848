import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'preferred-value';

export const marketSeries: Check = {
  id: rule,
  about:
    'An offer is in a series of preferred values that e-series.csv has, or in a list of value-lists.csv.',
  needs: ['market.csv', 'e-series.csv', 'value-lists.csv'],
  check: (tables) => {
    const series = new Set([
      ...tables['e-series.csv'].rows.map(({ cells }) => cells['series']),
      ...tables['value-lists.csv'].rows.map(({ cells }) => cells['list']),
    ]);
    return goodRows(tables, 'market.csv')
      .filter((row) => !series.has(row.value.series))
      .map((row) =>
        cellFault(rule, 'market.csv', row, 'series', {
          wrong: 'a series that there is not',
          expected: [...series].join(' or '),
        }),
      );
  },
};
