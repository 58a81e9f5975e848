import type { Fault } from '../fault.ts';
import { valuesOf, type Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { CONDITION_TABLES } from './condition-tables.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'out-of-bounds';

const faultsIn = (
  tables: Tables,
  { file, definitions: named, isShare }: (typeof CONDITION_TABLES)[number],
): Fault[] => {
  const definitions = byId(valuesOf(tables, named));
  return goodRows(tables, file).flatMap((row) => {
    const definition = definitions.get(row.value.condition);
    if (definition === undefined) return [];
    const follows = isShare && row.value.follows !== '';
    const lowest = follows ? Number.MIN_VALUE : definition.lowest;
    const highest = follows ? Number.MAX_VALUE : definition.highest;
    return (['min', 'typ', 'max'] as const).flatMap((column) => {
      const value = row.value[column];
      if (value === undefined || (value >= lowest && value <= highest)) return [];
      return [
        cellFault(rule, file, row, column, {
          wrong: `${row.value.condition} cannot be so`,
          expected: follows
            ? 'a number above zero'
            : `${definition.lowest} to ${definition.highest} ${definition.unit}`,
        }),
      ];
    });
  });
};

export const conditionBounds: Check = {
  id: rule,
  about: 'No default condition lies outside what its definition allows.',
  needs: CONDITION_TABLES.flatMap(({ file, definitions }) => [file, definitions]),
  check: (tables) => CONDITION_TABLES.flatMap((one) => faultsIn(tables, one)),
};
