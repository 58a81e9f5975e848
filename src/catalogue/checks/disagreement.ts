import { valuesOf } from '../read-folder.ts';
import { figureInSi } from '../settle.ts';
import { toSi } from '../to-si.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows, unitsOf } from './lookups.ts';

const rule = 'disagreement';

/** Share of a linear property's span below which a number counts as near zero. */
const NEAR_ZERO = 0.001;

/**
 * How far two ranges that do not overlap lie apart, as a factor. Where both are on one side of zero
 * and away from it, this is the quotient of the ends that face each other.
 */
const apart = (a: readonly number[], b: readonly number[], floor: number): number => {
  const [low, high] = Math.min(...a) <= Math.min(...b) ? [a, b] : [b, a];
  const [under, over] = [Math.max(...low), Math.min(...high)];
  if (over <= under) return 1;
  const nearer = Math.max(Math.min(Math.abs(under), Math.abs(over)), floor);
  return 1 + (over - under) / nearer;
};

export const disagreement: Check = {
  id: rule,
  about: 'Figures of one thing that lie far apart are explained.',
  needs: ['figures.csv', 'properties.csv', 'units.csv', 'absorption-tests.csv'],
  check: (tables) => {
    const units = unitsOf(tables);
    const absorptionTests = valuesOf(tables, 'absorption-tests.csv');
    const properties = byId(valuesOf(tables, 'properties.csv'));
    const known = goodRows(tables, 'figures.csv').filter((row) => row.value.status === 'known');
    const groups = Map.groupBy(known, ({ value }) => `${value.type} ${value.property}`);
    return [...groups.values()].flatMap((rows) => {
      const property = properties.get(rows[0]?.value.property ?? '');
      if (property === undefined) return [];
      const span = toSi(property.highest - property.lowest, property.unit, units) ?? 0;
      const floor = property.scale === 'linear' ? NEAR_ZERO * span : 0;
      const figures = rows.map((row) => ({
        row,
        numbers: Object.values(figureInSi(row.value, { units, absorptionTests })),
      }));
      // A row is blamed once, for the first earlier row that it does not agree with.
      return figures.flatMap((figure, index) => {
        const other = figures
          .slice(0, index)
          .find(
            (earlier) =>
              (figure.row.value.use === 'used' || earlier.row.value.use === 'used') &&
              figure.row.value.disagreement === '' &&
              earlier.row.value.disagreement === '' &&
              apart(figure.numbers, earlier.numbers, floor) > property.spread,
          );
        if (other === undefined) return [];
        const factor = apart(figure.numbers, other.numbers, floor);
        return [
          cellFault(rule, 'figures.csv', figure.row, 'disagreement', {
            wrong: `${factor.toPrecision(2)} times away from line ${other.row.line}`,
            expected: `figures within ${property.spread} times, or why they differ`,
          }),
        ];
      });
    });
  },
};
