import { combinationSum } from '../preferred-combination.ts';

/** Resistors put together to a value. */
export const combineResistors = combinationSum({
  id: 'combine-resistors',
  title: 'Resistors to a value',
  lead: 'The nearest preferred resistor, and the best two or three in a row or side by side.',
  unit: 'ohm',
  usual: '25 kΩ',
  lowest: 1e-3,
  highest: 1e12,
  words: { single: 'alone', sum: 'in a row', reciprocal: 'side by side' },
  sharing:
    'In a row the larger value has more of the heat, side by side the smaller: each must stand its own share. Tolerances stay those of the parts.',
  check: {
    what: 'Worked by hand: 25 kΩ of E12 is 10 kΩ and 15 kΩ in a row',
    inputs: { value: '25 kΩ', series: 'E12', most: '2', within: '0' },
    expected: { whole: 25e3 },
  },
});
