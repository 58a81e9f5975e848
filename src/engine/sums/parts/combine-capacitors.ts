import { combinationSum } from '../preferred-combination.ts';

/** Capacitors put together to a value. */
export const combineCapacitors = combinationSum({
  id: 'combine-capacitors',
  title: 'Capacitors to a value',
  lead: 'The nearest preferred capacitor, and the best two or three in parallel or in series.',
  unit: 'F',
  usual: '50 nF',
  lowest: 1e-13,
  highest: 1,
  words: { single: 'alone', sum: 'in parallel', reciprocal: 'in series' },
  sharing:
    'In series the smaller value takes the larger share of the voltage; in parallel the lowest rating holds. Tolerances stay those of the parts.',
  check: {
    what: 'Worked by hand: 50 nF of E12 is 100 nF twice in series',
    inputs: { value: '50 nF', series: 'E12', most: '2', within: '0' },
    expected: { whole: 50e-9 },
  },
});
