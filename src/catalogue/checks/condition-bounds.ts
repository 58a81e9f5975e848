import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'out-of-bounds';

export const conditionBounds: Check = {
  id: rule,
  about: 'No default condition lies outside what its definition allows.',
  needs: ['conditions.csv', 'condition-definitions.csv'],
  check: (tables) => {
    const definitions = byId(valuesOf(tables, 'condition-definitions.csv'));
    return goodRows(tables, 'conditions.csv').flatMap((row) => {
      const definition = definitions.get(row.value.condition);
      if (definition === undefined) return [];
      // A condition that follows from the old part is given as a share, a corner or a product.
      const follows = row.value.follows !== '';
      const lowest = follows ? Number.MIN_VALUE : definition.lowest;
      const highest = follows ? Number.MAX_VALUE : definition.highest;
      return (['min', 'typ', 'max'] as const).flatMap((column) => {
        const value = row.value[column];
        if (value === undefined || (value >= lowest && value <= highest)) return [];
        return [
          cellFault(rule, 'conditions.csv', row, column, {
            wrong: `${row.value.condition} cannot be so`,
            expected: follows
              ? 'a number above zero'
              : `${definition.lowest} to ${definition.highest} ${definition.unit}`,
          }),
        ];
      });
    });
  },
};
