import type { Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'no-standing-rule';

/** Types of which a rule speaks whatever was read, at whatever rating and in whatever position. */
const standing = (tables: Tables): Set<string> =>
  new Set(
    tables['triage.csv'].rows
      // As the cells say it: a row with a fault of its own is there all the same.
      .filter(
        ({ cells }) =>
          cells['reading'] === 'none' &&
          cells['positions'] === '' &&
          cells['v_from'] === '' &&
          cells['v_to'] === '',
      )
      .flatMap(({ cells }) => (cells['types'] ?? '').split(';')),
  );

/** Of an old part about which nothing was found out, something can still be said. */
export const triageComplete: Check = {
  id: rule,
  about: 'Every type has a rule that says what to do with an old one of which nothing is known.',
  needs: ['types.csv', 'triage.csv'],
  check: (tables) => {
    const known = standing(tables);
    return goodRows(tables, 'types.csv')
      .filter(({ value }) => !known.has(value.id))
      .map((row) =>
        cellFault(rule, 'types.csv', row, 'id', {
          wrong: 'no rule for an old one of which nothing is known',
          expected: `${row.value.id} in a row of triage.csv with reading none, for all positions and ratings`,
        }),
      );
  },
};

const ofLike = 'no-rule-for-its-like';

/** Tables of what parts go by besides capacitors, with the rules that speak of them. */
const LIKES = [
  { of: 'kinds/kinds.csv', rules: 'kinds/triage.csv', column: 'kinds' },
  { of: 'devices/families.csv', rules: 'devices/triage.csv', column: 'families' },
] as const;

/** Of every other old part something can be said as well. */
export const triageOfLikes: Check = {
  id: ofLike,
  about:
    'Every kind of part and every family of devices has a rule that says what to do with an old one.',
  needs: LIKES.flatMap(({ of, rules }) => [of, rules]),
  check: (tables) =>
    LIKES.flatMap(({ of, rules, column }) => {
      const known = new Set(
        tables[rules].rows.flatMap(({ cells }) => (cells[column] ?? '').split(';')),
      );
      return tables[of].rows
        .filter(({ cells }) => !known.has(cells['id'] ?? ''))
        .map((row) =>
          cellFault(ofLike, of, row, 'id', {
            wrong: 'no rule for an old one',
            expected: `${row.cells['id'] ?? ''} among the ${column} of a row of ${rules}`,
          }),
        );
    }),
};
