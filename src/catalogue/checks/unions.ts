import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'union';

export const unions: Check = {
  id: rule,
  about: 'A union has two members or more that are no unions, and no figures of its own.',
  needs: ['types.csv'],
  check: (tables) => {
    const types = byId(valuesOf(tables, 'types.csv'));
    const members = goodRows(tables, 'types.csv').flatMap((row) => {
      const nested = row.value.union_of.filter(
        (member) => (types.get(member)?.union_of.length ?? 0) > 0,
      );
      return [
        ...nested.map((member) =>
          cellFault(rule, 'types.csv', row, 'union_of', {
            wrong: 'a union as a member of a union',
            got: member,
            expected: 'types that are no unions',
          }),
        ),
        ...(row.value.union_of.length === 1
          ? [
              cellFault(rule, 'types.csv', row, 'union_of', {
                wrong: 'a union of one',
                expected: 'two types or more, or nothing',
              }),
            ]
          : []),
      ];
    });
    const figures = goodRows(tables, 'figures.csv').flatMap((row) =>
      row.value.use === 'used' && (types.get(row.value.type)?.union_of.length ?? 0) > 0
        ? [
            cellFault(rule, 'figures.csv', row, 'type', {
              wrong: 'a used figure of a union, which takes those of its members',
              expected: 'a type that is no union',
            }),
          ]
        : [],
    );
    return [...members, ...figures];
  },
};
