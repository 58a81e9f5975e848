import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'absorption-test';

/** The one property whose figures mean nothing without the times of their test. */
const ABSORPTION = 'dielectric-absorption';

export const absorptionTest: Check = {
  id: rule,
  about: 'A known absorption figure names its test, and no other figure names one.',
  needs: ['figures.csv'],
  check: (tables) =>
    goodRows(tables, 'figures.csv').flatMap((row) => {
      const asked = row.value.property === ABSORPTION && row.value.status === 'known';
      const allowed = row.value.property === ABSORPTION;
      if (row.value.test === '' ? !asked : allowed) return [];
      return [
        cellFault(rule, 'figures.csv', row, 'test', {
          wrong: asked ? 'an absorption figure without its test' : 'a test of something else',
          expected: asked ? 'an id in absorption-tests.csv' : 'nothing',
        }),
      ];
    }),
};
