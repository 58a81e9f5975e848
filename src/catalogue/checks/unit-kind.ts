import { cellFault, type Check } from './check.ts';
import { FIGURE_TABLES, figureRows, PROPERTY_TABLES, propertiesOf } from './figure-rows.ts';
import { unitsOf } from './lookups.ts';

const rule = 'unit-kind';

export const unitKind: Check = {
  id: rule,
  about: 'A figure is in a unit of the kind that its property asks for.',
  needs: [...FIGURE_TABLES, ...PROPERTY_TABLES, 'units.csv'],
  check: (tables) => {
    const units = unitsOf(tables);
    const properties = propertiesOf(tables);
    return figureRows(tables).flatMap(({ file, row }) => {
      const property = properties.get(row.value.property);
      const si = units[row.value.unit]?.si;
      const asked = property === undefined ? undefined : units[property.unit]?.si;
      if (si === undefined || asked === undefined || si === asked) return [];
      const fitting = Object.values(units).flatMap((unit) =>
        unit.si === asked ? [unit.unit] : [],
      );
      return [
        cellFault(rule, file, row, 'unit', {
          wrong: `a unit of another kind than ${row.value.property} has`,
          expected: fitting.join(' or '),
        }),
      ];
    });
  },
};
