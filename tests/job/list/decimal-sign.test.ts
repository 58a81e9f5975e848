import { expect, test } from 'vitest';
import { guessColumns } from '../../../src/job/list/columns.ts';
import { guessDecimal, isDecimalAsked } from '../../../src/job/list/decimal-sign.ts';
import { readDelimited } from '../../../src/job/list/delimited.ts';
import { linesFromRows } from '../../../src/job/list/lines-in.ts';

const words = [
  { field: 'designators', word: 'ref' },
  { field: 'value', word: 'value' },
  { field: 'volts', word: 'volts' },
].map((row) => ({ ...row, source: 'trade', locator: '', basis: 'common-practice', note: '' }));

const tableOf = (...values: string[]) => {
  const read = readDelimited(
    ['Ref;Value', ...values.map((value, at) => `C${String(at + 1)};${value}`)].join('\r\n'),
  );
  if (!read.ok) throw new Error(read.message);
  return { rows: read.rows, mapping: guessColumns(read.rows, words as never) };
};

test.each([
  ['comma', ['4,7 µF', '1.000 µF']],
  ['comma', ['0,047', '100']],
  ['point', ['4.7 µF', '1,000 µF']],
  ['point', ['0.022 µF']],
  [undefined, ['1,000 µF', '2.200 µF']],
  [undefined, ['4,7 µF', '4.7 µF']],
  [undefined, ['10 µF', '4n7']],
])('%s is the decimal sign of %j', (sign, values) => {
  const { rows, mapping } = tableOf(...values);
  expect(guessDecimal(rows, mapping)).toBe(sign);
});

test.each([
  ['comma', '1.000 µF', '1000 µF'],
  ['comma', '12.000.000', '12000000'],
  ['comma', '4,7 µF', '4,7 µF'],
  ['comma', '0.047 µF', '0.047 µF'],
  ['comma', '4.7 µF', '4.7 µF'],
  ['point', '1,000 µF', '1000 µF'],
  ['point', '1.000 µF', '1.000 µF'],
  [undefined, '1,000 µF', '1,000 µF'],
] as const)('with a %s, %s is kept as %s', (decimal, typed, kept) => {
  const { rows, mapping } = tableOf(typed);
  expect(linesFromRows(rows, { ...mapping, decimal }).lines[0]?.value).toBe(kept);
});

test.each([
  ['1,000', true],
  ['1.000', true],
  ['4,7', false],
  ['0.047', false],
  ['1000', false],
])('whether the sign of %s has to be asked: %s', (typed, isAsked) => {
  const { rows, mapping } = tableOf(typed);
  expect(isDecimalAsked(rows, mapping)).toBe(isAsked);
});
