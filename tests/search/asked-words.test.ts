import { expect, test } from 'vitest';
import { askedWords } from '../../src/search/asked-words.ts';

test.each([
  ['what replaces a wax paper capacitor', 'replaces wax paper capacitor'],
  ['hum in the output', 'hum output'],
  ['  ripple   current ', 'ripple current'],
  ['The 4066 and the TL072', '4066 TL072'],
  ['antenna anode inrush', 'antenna anode inrush'],
  ['"in the output"', '"in the output"'],
  ['what is it', 'what is it'],
  ['A', 'A'],
  ['', ''],
])('%j is looked for by %j', (text, words) => {
  expect(askedWords(text)).toBe(words);
});
