import { cellFault, type Check } from './check.ts';

const rule = 'unused-condition';

export const conditionsUsed: Check = {
  id: rule,
  about: 'Every condition of a position is used by a demand on it.',
  needs: ['demands.csv', 'findings.csv', 'conditions.csv'],
  check: (tables) => {
    const conditionsOf = new Map(
      tables['findings.csv'].rows.map(({ cells }) => [
        cells['id'],
        [cells['conditions'], cells['told']].flatMap((cell) => (cell ?? '').split(';')),
      ]),
    );
    const used = new Set(
      tables['demands.csv'].rows.flatMap(({ cells }) =>
        [...(conditionsOf.get(cells['finding']) ?? []), cells['limit_of']].map(
          (condition) => `${cells['position']} ${condition}`,
        ),
      ),
    );
    return tables['conditions.csv'].rows
      .filter(({ cells }) => !used.has(`${cells['position']} ${cells['condition']}`))
      .map((row) =>
        cellFault(rule, 'conditions.csv', row, 'condition', {
          wrong: `no demand on ${row.cells['position']} uses it`,
          expected: 'a condition that a demand of the position needs',
        }),
      );
  },
};
