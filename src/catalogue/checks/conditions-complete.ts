import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'missing-condition';

export const conditionsComplete: Check = {
  id: rule,
  about: 'A position has every condition that the demands on it use.',
  needs: ['demands.csv', 'findings.csv', 'conditions.csv'],
  check: (tables) => {
    const findings = byId(valuesOf(tables, 'findings.csv'));
    const present = new Set(
      tables['conditions.csv'].rows.map(
        ({ cells }) => `${cells['position']} ${cells['condition']}`,
      ),
    );
    return goodRows(tables, 'demands.csv').flatMap((row) => {
      const { position, finding, limit_of: limitOf } = row.value;
      const needed = new Set(findings.get(finding)?.conditions);
      const asked = [
        ...[...needed].map((condition) => ({ condition, column: 'finding' })),
        ...(limitOf === '' || needed.has(limitOf)
          ? []
          : [{ condition: limitOf, column: 'limit_of' }]),
      ];
      return asked
        .filter(({ condition }) => !present.has(`${position} ${condition}`))
        .map(({ condition, column }) =>
          cellFault(rule, 'demands.csv', row, column, {
            wrong: `${position} has no condition ${condition}`,
            expected: `a row ${position},${condition} in conditions.csv`,
          }),
        );
    });
  },
};
