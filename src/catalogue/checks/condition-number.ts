import { cellFault, type Check } from './check.ts';
import { CONDITION_TABLES } from './condition-tables.ts';
import { goodRows } from './lookups.ts';

const rule = 'condition-number';

export const conditionNumber: Check = {
  id: rule,
  about: 'Every default condition has a typical value.',
  needs: CONDITION_TABLES.map(({ file }) => file),
  check: (tables) =>
    CONDITION_TABLES.flatMap(({ file }) =>
      goodRows(tables, file)
        .filter(({ value }) => value.typ === undefined)
        .map((row) =>
          cellFault(rule, file, row, 'typ', {
            wrong: `no default for ${row.value.condition}`,
            expected: 'a number',
          }),
        ),
    ),
};
