import { expect, test } from 'vitest';
import { saidAmong, saidMost, withoutName } from '../../src/search/said-names.ts';

const row = (id: string, name: string, ...also: string[]) => ({ id, name, also_called: also });

const rows = [
  row('emitter', 'Emitter or source bypass', 'bypass', 'emitter bypass'),
  row('chip', 'Decoupling at a chip', 'bypass', '100n', 'IF'),
  row('filter', 'Active filter', 'filter', 'all-pass'),
];
const ids = (found: readonly { id: string }[]) => found.map(({ id }) => id);

test.each([
  ['10µ/63 emitter bypass', ['emitter', 'chip'], ['emitter']],
  ['bypass 47n', ['emitter', 'chip'], ['emitter', 'chip']],
  ['two BYPASSES, one Bypass', ['emitter', 'chip'], ['emitter', 'chip']],
  ['Active filters 22n', ['filter'], ['filter']],
  // Figures are marks, and names of two letters are too many other things.
  ['100n IF', [], []],
  // As the whole text a short name is what is meant.
  ['IF', ['chip'], ['chip']],
  ['I', [], []],
  // A whole name is wanted, word by word.
  ['emitter of Q4', [], []],
  ['bypassed', [], []],
  ['all-pass 10n', ['filter'], ['filter']],
  ['', [], []],
])('%s names %j, most of all %j', (text, all, most) => {
  expect(ids(saidAmong(rows, text))).toEqual(all);
  expect(ids(saidMost(rows, text))).toEqual(most);
});

test.each([
  ['10µ/63 emitter bypass', '10µ/63'],
  ['bypass 10µ 63V', '10µ 63V'],
  ['10µ (emitter bypass) 63V', '10µ ( ) 63V'],
  ['10µ 63V', '10µ 63V'],
])('%s is without that name %s', (text, left) => {
  expect(withoutName(rows, text)).toBe(left);
});
