import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'ripple-at';

export const rippleAt: Check = {
  id: rule,
  about: 'A ripple current is for a temperature, and a temperature for a ripple current.',
  needs: ['series-resistance.csv'],
  check: (tables): Fault[] =>
    goodRows(tables, 'series-resistance.csv').flatMap((row) => {
      const { ripple_a: current, ripple_c: temperature } = row.value;
      if ((current === undefined) === (temperature === undefined)) return [];
      const said =
        temperature === undefined
          ? { wrong: 'a ripple current at no temperature', expected: 'the temperature, degC' }
          : { wrong: 'a temperature for no ripple current', expected: 'nothing' };
      return [cellFault(rule, 'series-resistance.csv', row, 'ripple_c', said)];
    }),
};
