import { expect, test } from 'vitest';
import { readToleranceText } from '../../src/substitution/typed-numbers.ts';

/** A tolerance as somebody types it: per cent, whichever way the two ends are written. */

test.each([
  ['5', 0.05, 0.05],
  ['±10 %', 0.1, 0.1],
  ['+/-10%', 0.1, 0.1],
  ['2,5', 0.025, 0.025],
  ['10 percent', 0.1, 0.1],
  ['10 per cent', 0.1, 0.1],
  ['10 pct', 0.1, 0.1],
  ['20/80', 0.2, 0.8],
  ['-20/+80', 0.2, 0.8],
  ['-20+50', 0.2, 0.5],
  ['+80 −20 %', 0.2, 0.8],
  ['80 %/-20 %', 0.2, 0.8],
  ['−0+100 %', 0, 1],
  ['5 %, metal film', 0.05, 0.05],
])('%s', (text, minus, plus) => {
  expect(readToleranceText(text)).toEqual({ value: { minus, plus } });
});

test.each([
  ['±1pF', /“pF”/u],
  ['10 pF', /“pF”/u],
  ['5 kg', /“kg”/u],
  ['5 V', /“V”/u],
  ['0.5 Ω', /“Ω”/u],
  ['abc', /such as 10 %/u],
  ['', /such as 10 %/u],
  ['1/2/3', /such as 10 %/u],
  ['300 %', /below 100 %/u],
])('%s is no tolerance in per cent', (text, message) => {
  expect(readToleranceText(text)).toEqual({ message: expect.stringMatching(message) });
});
