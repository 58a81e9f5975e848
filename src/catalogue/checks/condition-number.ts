import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'condition-number';

export const conditionNumber: Check = {
  id: rule,
  about: 'Every default condition has a typical value.',
  needs: ['conditions.csv'],
  check: (tables) =>
    goodRows(tables, 'conditions.csv').flatMap((row) =>
      row.value.typ !== undefined
        ? []
        : [
            cellFault(rule, 'conditions.csv', row, 'typ', {
              wrong: `no default for ${row.value.condition}`,
              expected: 'a number',
            }),
          ],
    ),
};
