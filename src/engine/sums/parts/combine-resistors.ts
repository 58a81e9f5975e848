import { combinationSum } from '../preferred-combination.ts';

/** Resistors put together to a value. */
export const combineResistors = combinationSum({
  id: 'combine-resistors',
  title: 'Resistors to a value',
  lead: 'The nearest preferred resistor, and the best two or three in series or in parallel.',
  unit: 'ohm',
  usual: '25 kΩ',
  lowest: 1e-3,
  highest: 1e12,
  words: { single: 'alone', sum: 'in series', reciprocal: 'in parallel' },
  sharing:
    'In series the larger value has more of the heat, in parallel the smaller: each must take its own share. Tolerances stay those of the parts.',
  check: {
    what: 'Worked by hand: 25 kΩ of E12 is 10 kΩ and 15 kΩ in series',
    inputs: { value: '25 kΩ', series: 'E12', most: '2', within: '0' },
    expected: { whole: 25e3 },
  },
});
