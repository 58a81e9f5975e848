import { ruleOfThumbRow } from '../../schemas/rules-of-thumb.ts';
import { cellFault, type Check } from './check.ts';

const rule = 'rules-complete';
const FILE = 'rules-of-thumb.csv';

export const rulesComplete: Check = {
  id: rule,
  about: 'Every rule of thumb that assessments go by is there.',
  needs: [FILE],
  check: (tables) => {
    // As the cells say it: a row with a fault of its own is there all the same.
    const { rows } = tables[FILE];
    const there = new Set(rows.map(({ cells }) => cells['id']));
    return rows.slice(0, 1).flatMap((row) =>
      ruleOfThumbRow.shape.id.options
        .filter((id) => !there.has(id))
        .map((id) =>
          cellFault(rule, FILE, row, 'id', {
            wrong: `no rule of thumb ${id}`,
            got: '',
            expected: `a row for ${id}`,
          }),
        ),
    );
  },
};
