import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows, type GoodRow } from './lookups.ts';

const rule = 'out-of-bounds';

/** Percent; closer parts are trimmed ones, wider ones carry no tolerance at all. */
const TOLERANCE = { closest: 0.1, widest: 100 };

const TOLERANCE_FORM = /^\d+(?:\.\d+)?(?:\/\d+(?:\.\d+)?)?$/;

const toleranceFaults = (row: GoodRow<'market.csv'>): Fault[] =>
  row.value.tolerances.flatMap((tolerance) => {
    const sides = tolerance.split('/').map(Number);
    const fine =
      TOLERANCE_FORM.test(tolerance) &&
      Math.max(...sides) >= TOLERANCE.closest &&
      sides.every((side) => side <= TOLERANCE.widest);
    if (fine) return [];
    return [
      cellFault(rule, 'market.csv', row, 'tolerances', {
        wrong: 'a tolerance that no part has',
        got: tolerance,
        expected: `percent each way or minus/plus, ${TOLERANCE.closest} to ${TOLERANCE.widest}`,
      }),
    ];
  });

const risingFaults = (row: GoodRow<'market.csv'>, column: 'voltages' | 'pitch_mm'): Fault[] => {
  const numbers = row.value[column];
  const rising = numbers.every((number, index) => number > (numbers[index - 1] ?? 0));
  if (rising) return [];
  return [
    cellFault(rule, 'market.csv', row, column, {
      wrong: `${column} out of order`,
      expected: 'numbers above zero, each above the one before',
    }),
  ];
};

export const marketBounds: Check = {
  id: rule,
  about: 'Offers are for tolerances that exist, and list voltages and pitches upwards.',
  needs: ['market.csv'],
  check: (tables) =>
    goodRows(tables, 'market.csv').flatMap((row) => [
      ...toleranceFaults(row),
      ...risingFaults(row, 'voltages'),
      ...risingFaults(row, 'pitch_mm'),
    ]),
};
