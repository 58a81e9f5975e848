import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'value-window';

export const valueWindow: Check = {
  id: rule,
  about: 'The old value itself is always allowed.',
  needs: ['positions.csv'],
  check: (tables) =>
    goodRows(tables, 'positions.csv').flatMap((row) => [
      ...(row.value.value_low > 1
        ? [
            cellFault(rule, 'positions.csv', row, 'value_low', {
              wrong: 'the old value would be too small',
              expected: 'a number up to 1',
            }),
          ]
        : []),
      ...(row.value.value_high < 1
        ? [
            cellFault(rule, 'positions.csv', row, 'value_high', {
              wrong: 'the old value would be too large',
              expected: 'a number from 1 on',
            }),
          ]
        : []),
    ]),
};
