import { cellFault, type Check } from './check.ts';
import { byId, goodRows, unitsOf } from './lookups.ts';
import { valuesOf } from '../read-folder.ts';

const rule = 'unit-kind';

export const unitKind: Check = {
  id: rule,
  about: 'A figure is in a unit of the kind that its property asks for.',
  needs: ['figures.csv', 'properties.csv', 'units.csv'],
  check: (tables) => {
    const units = unitsOf(tables);
    const properties = byId(valuesOf(tables, 'properties.csv'));
    return goodRows(tables, 'figures.csv').flatMap((row) => {
      const property = properties.get(row.value.property);
      const si = units[row.value.unit]?.si;
      const asked = property === undefined ? undefined : units[property.unit]?.si;
      if (si === undefined || asked === undefined || si === asked) return [];
      const fitting = Object.values(units).flatMap((unit) =>
        unit.si === asked ? [unit.unit] : [],
      );
      return [
        cellFault(rule, 'figures.csv', row, 'unit', {
          wrong: `a unit of another kind than ${row.value.property} has`,
          expected: fitting.join(' or '),
        }),
      ];
    });
  },
};
