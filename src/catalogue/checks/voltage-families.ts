import { typeRow } from '../../schemas/types.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'family';

const families: readonly string[] = typeRow.shape.family.options;

export const voltageFamilies: Check = {
  id: rule,
  about: 'A rated voltage is for families that there are.',
  needs: ['voltages.csv'],
  check: (tables) =>
    goodRows(tables, 'voltages.csv').flatMap((row) =>
      row.value.families
        .split(';')
        .filter((family) => family !== '' && !families.includes(family))
        .map((got) =>
          cellFault(rule, 'voltages.csv', row, 'families', {
            wrong: 'a family that there is not',
            got,
            expected: families.join(' or '),
          }),
        ),
    ),
};
