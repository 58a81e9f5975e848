import { expect, test } from 'vitest';
import { capital, sentence } from '../../src/text/words.ts';

test.each([
  ['film', 'Film', 'Film.'],
  ['TL072', 'TL072', 'TL072.'],
  // The capital of the sign of micro is no M, though it looks like one.
  ['µA723CN', 'µA723CN', 'µA723CN.'],
  ['μA741', 'μA741', 'μA741.'],
  ['', '', ''],
])('%j begins as %j, and %j', (text, begun, whole) => {
  expect(capital(text)).toBe(begun);
  if (text !== '') expect(sentence(text)).toBe(whole);
});
