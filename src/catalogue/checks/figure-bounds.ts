import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import { toSi } from '../to-si.ts';
import { cellFault, type Check } from './check.ts';
import { FIGURE_TABLES, figureRows, PROPERTY_TABLES, propertiesOf } from './figure-rows.ts';
import { unitsOf } from './lookups.ts';

const rule = 'out-of-bounds';

export const figureBounds: Check = {
  id: rule,
  about: 'No figure lies outside what its property can physically be.',
  needs: [...FIGURE_TABLES, ...PROPERTY_TABLES, 'units.csv'],
  check: (tables) => {
    const units = unitsOf(tables);
    const properties = propertiesOf(tables);
    return figureRows(tables).flatMap(({ file, row }) => {
      const property = properties.get(row.value.property);
      const [own, asked] = [units[row.value.unit], units[property?.unit ?? '']];
      if (property === undefined || own === undefined || own.si !== asked?.si) return [];
      const lowest = toSi(property.lowest, property.unit, units) ?? -Infinity;
      const highest = toSi(property.highest, property.unit, units) ?? Infinity;
      const slack = FLOAT_ERROR * (highest - lowest);
      // A bound near zero of a property that spans decades must not drown in the slack of the other.
      const lowSlack = lowest > 0 ? FLOAT_ERROR * lowest : slack;
      return (['min', 'typ', 'max'] as const).flatMap((column) => {
        const number = row.value[column];
        const value = number === undefined ? undefined : number * own.factor;
        if (value === undefined) return [];
        if (value >= lowest - lowSlack && value <= highest + slack) return [];
        return [
          cellFault(rule, file, row, column, {
            wrong: `${row.value.property} cannot be so`,
            expected: `${property.lowest} to ${property.highest} ${property.unit}`,
          }),
        ];
      });
    });
  },
};
