import { cellFault, type Check } from './check.ts';
import { byId, goodRows, unitsOf } from './lookups.ts';
import { valuesOf } from '../read-folder.ts';

const rule = 'limit-unit';

export const limitUnit: Check = {
  id: rule,
  about: 'A limit that is a multiple of a condition is of the same kind as the finding it limits.',
  needs: ['demands.csv', 'findings.csv', 'condition-definitions.csv', 'units.csv'],
  check: (tables) => {
    const units = unitsOf(tables);
    const findings = byId(valuesOf(tables, 'findings.csv'));
    const definitions = byId(valuesOf(tables, 'condition-definitions.csv'));
    return goodRows(tables, 'demands.csv').flatMap((row) => {
      const finding = findings.get(row.value.finding);
      const definition = definitions.get(row.value.limit_of);
      if (finding === undefined || definition === undefined) return [];
      const [asked, si] = [units[finding.unit]?.si, units[definition.unit]?.si];
      if (asked === undefined || si === undefined || asked === si) return [];
      return [
        cellFault(rule, 'demands.csv', row, 'limit_of', {
          wrong: `a condition in ${definition.unit} as the limit of a finding in ${finding.unit}`,
          expected: `a condition that is a number of ${asked}`,
        }),
      ];
    });
  },
};
