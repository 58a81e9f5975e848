import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId } from './lookups.ts';

const rule = 'unused-condition';

export const conditionsUsed: Check = {
  id: rule,
  about: 'Every condition of a position is reckoned with by a demand on it.',
  needs: ['demands.csv', 'findings.csv', 'conditions.csv'],
  check: (tables) => {
    const findings = byId(valuesOf(tables, 'findings.csv'));
    const used = new Set(
      valuesOf(tables, 'demands.csv').flatMap(({ position, finding, limit_of: limitOf }) =>
        [...(findings.get(finding)?.conditions ?? []), limitOf].map(
          (condition) => `${position} ${condition}`,
        ),
      ),
    );
    return tables['conditions.csv'].rows
      .filter(({ cells }) => !used.has(`${cells['position']} ${cells['condition']}`))
      .map((row) =>
        cellFault(rule, 'conditions.csv', row, 'condition', {
          wrong: `no demand on ${row.cells['position']} reckons with it`,
          expected: 'a condition that a demand of the position needs',
        }),
      );
  },
};
