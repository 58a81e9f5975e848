import type { FigureRow } from '../../schemas/types.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'figure-status';

const numbersOf = ({ min, typ, max }: FigureRow): number[] =>
  [min, typ, max].filter((number) => number !== undefined);

export const figureStatus: Check = {
  id: rule,
  about: 'A known figure has a number, any other has none, and the two do not contradict.',
  needs: ['figures.csv'],
  check: (tables) => {
    const rows = goodRows(tables, 'figures.csv');
    const alone = rows.flatMap((row) => {
      const known = row.value.status === 'known';
      if (known === numbersOf(row.value).length > 0) return [];
      return [
        cellFault(rule, 'figures.csv', row, 'status', {
          wrong: known ? 'known, without a number' : 'not known, with a number',
          expected: known ? 'min, typ or max' : 'no number in min, typ and max',
        }),
      ];
    });
    const groups = Map.groupBy(rows, ({ value }) => `${value.type} ${value.property}`);
    const against = [...groups.values()].flatMap((group) => {
      const counted = group.filter(({ value }) => value.status !== 'known' || value.use === 'used');
      const first = counted[0];
      return counted
        .filter((row) => row.value.status !== first?.value.status)
        .map((row) =>
          cellFault(rule, 'figures.csv', row, 'status', {
            wrong: `line ${first?.line} says ${first?.value.status} of the same`,
            expected: first?.value.status ?? '',
          }),
        );
    });
    return [...alone, ...against];
  },
};
