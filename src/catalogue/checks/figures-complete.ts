import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'missing-figure';

export const figuresComplete: Check = {
  id: rule,
  about: 'Every type that is not a union has a row for every decisive property, if only "unknown".',
  needs: ['types.csv', 'properties.csv', 'figures.csv'],
  check: (tables) => {
    const decisive = valuesOf(tables, 'properties.csv').filter(
      (property) => property.decisive === 'yes',
    );
    const said = new Set(
      tables['figures.csv'].rows.map(({ cells }) => `${cells['type']} ${cells['property']}`),
    );
    return goodRows(tables, 'types.csv')
      .filter((row) => row.value.union_of.length === 0)
      .flatMap((row) =>
        decisive
          .filter((property) => !said.has(`${row.value.id} ${property.id}`))
          .map((property) =>
            cellFault(rule, 'types.csv', row, 'id', {
              wrong: `no row about ${property.id}`,
              expected: `a row ${row.value.id},${property.id} in figures.csv`,
              how: 'say "unknown" where no figure is known',
            }),
          ),
      );
  },
};
