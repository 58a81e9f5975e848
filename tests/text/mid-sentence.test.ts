import { expect, test } from 'vitest';
import { midSentence } from '../../src/text/mid-sentence.ts';

test.each([
  ['Hold capacitor', 'hold capacitor'],
  ['RC timing', 'RC timing'],
  ['X capacitor', 'X capacitor'],
  ['555 timer', '555 timer'],
  ['X2 film', 'X2 film'],
  ['A larger rail capacitor', 'a larger rail capacitor'],
  ['A', 'a'],
  ['', ''],
])('%s', (name, inside) => {
  expect(midSentence(name)).toBe(inside);
});
