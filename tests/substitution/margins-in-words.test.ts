import { expect, test } from 'vitest';
import { printMargin } from '../../src/substitution/phrases.ts';

const exactly = (value: number) => ({ min: value, typ: value, max: value });
const known = { missing: [], margin: 2 };

test.each([
  // Twice as good as a limit is told by its ratio.
  [{ unit: 'V', limit: { high: 10 }, standIn: exactly(5) }, '2 ×'],
  // Nothing is a multiple of nought: the amount is told, of the worst of the range.
  [{ unit: 'K', limit: { low: 0 }, standIn: { min: 45, typ: 70, max: 70 } }, '45 K'],
  [{ unit: 'K', limit: { low: 0 }, standIn: exactly(-5) }, '5 K, short'],
  [{ unit: 'K', limit: { low: 0 }, standIn: exactly(0) }, '0 K'],
  // A lower limit with an upper one, or one that is not nought, is told by its ratio.
  [{ unit: 'K', limit: { low: 0, high: 10 }, standIn: exactly(5) }, '2 ×'],
  [{ unit: 'K', limit: { low: 5 }, standIn: exactly(10) }, '2 ×'],
  [{ unit: 'grade', limit: { low: 0 }, standIn: exactly(1) }, 'met'],
])('%j has %s to spare', (finding, words) => {
  expect(printMargin({ ...known, ...finding }).replaceAll('\u{a0}', ' ')).toBe(words);
});

test('what is not known has nothing to spare that is told', () => {
  const finding = { unit: 'K', limit: { low: 0 }, standIn: exactly(5) };
  expect(printMargin({ ...known, ...finding, missing: ['t-max'] })).toBe('not known');
});
