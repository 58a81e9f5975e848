import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'market-complete';

/** Types of these kinds cannot be ordered. */
const NOT_SOLD = ['none', 'old-stock'];

export const marketComplete: Check = {
  id: rule,
  about: 'Every type that is made today has an offer, and no other has one.',
  needs: ['types.csv', 'market.csv'],
  check: (tables) => {
    const types = goodRows(tables, 'types.csv');
    const offered = new Set(tables['market.csv'].rows.map(({ cells }) => cells['type']));
    const notSold = new Map(
      types.flatMap(({ value }) =>
        NOT_SOLD.includes(value.market) ? [[value.id, value.market] as const] : [],
      ),
    );
    const missing = types
      .filter(({ value }) => !notSold.has(value.id) && !offered.has(value.id))
      .map((row) =>
        cellFault(rule, 'types.csv', row, 'market', {
          wrong: `no offer of ${row.value.id}`,
          expected: `a row ${row.value.id} in market.csv, or market ${NOT_SOLD.join(' or ')}`,
        }),
      );
    const surplus = tables['market.csv'].rows
      .filter(({ cells }) => notSold.has(cells['type'] ?? ''))
      .map((row) =>
        cellFault(rule, 'market.csv', row, 'type', {
          wrong: `an offer of what types.csv calls ${notSold.get(row.cells['type'] ?? '')}`,
          expected: 'a type that is made today',
        }),
      );
    return [...missing, ...surplus];
  },
};
