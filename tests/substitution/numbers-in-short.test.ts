import { expect, test } from 'vitest';
import type { Field } from '../../src/substitution/field.ts';
import { numbersInShort } from '../../src/substitution/form.ts';

const field = (text: string, said: Partial<Field> = {}): Field => ({
  key: text,
  group: 'voltage',
  label: 'DC',
  text,
  from: 'default',
  note: '',
  ...said,
});
const value = field('10 nF', { group: 'part', label: 'Capacitance' });
const rated = field('500 V', { group: 'part', label: 'Rated voltage' });

test.each<[string, readonly Field[], string]>([
  ['the old part alone', [value, rated], 'Numbers: 10 nF, 500 V'],
  ['with usual ones', [value, field('5 V'), field('6 V')], 'Numbers: 10 nF and 2 usual ones'],
  [
    'with one that was said',
    [value, field('5 V', { from: 'given' }), field('6 V')],
    'Numbers: 10 nF, DC: 5 V and 1 usual one',
  ],
  [
    'one that cannot be read',
    [value, field('5 ohm', { group: 'part', from: 'given', message: 'No volts.' })],
    'Numbers: 10 nF; 1 number cannot be read',
  ],
  [
    'no old part: the first three',
    [field('1 V'), field('2 V'), field('3 V'), field('4 V')],
    'Numbers: DC: 1 V, DC: 2 V, DC: 3 V and 1 usual one',
  ],
])('%s', (_what, fields, words) => {
  expect(numbersInShort(fields)).toBe(words);
});
