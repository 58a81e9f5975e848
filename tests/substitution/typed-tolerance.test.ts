import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { toleranceLettersModule } from '../../scripts/generate-tolerance-letters.ts';
import type { Marked } from '../../src/substitution/tolerance-letters.ts';
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
  expect(readToleranceText(text, { of: 'capacitor' })).toEqual({ value: { minus, plus } });
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
  ['-10', /both sides, such as 10\/0/u],
  ['−5 %', /both sides/u],
  ['+20', /both sides/u],
  ['−10 pF', /“pF”/u],
  ['A', /the letter K/u],
])('%s is no tolerance in per cent', (text, message) => {
  expect(readToleranceText(text, { of: 'capacitor' })).toEqual({
    message: expect.stringMatching(message),
  });
});

describe('the letter that is printed', () => {
  test.each<[string, Marked, number, number]>([
    ['J', { of: 'capacitor' }, 0.05, 0.05],
    ['k', { of: 'capacitor', farad: 10e-9 }, 0.1, 0.1],
    ['Z', { of: 'capacitor' }, 0.2, 0.8],
    ['S', { of: 'capacitor' }, 0.2, 0.5],
    // From 10 pF on per cent, picofarads below.
    ['D', { of: 'capacitor', farad: 10e-12 }, 0.005, 0.005],
    ['D', { of: 'capacitor', farad: 5e-12 }, 0.1, 0.1],
    ['C', { of: 'capacitor', farad: 1e-12 }, 0.25, 0.25],
    ['M', { of: 'resistor' }, 0.2, 0.2],
    ['F', { of: 'resistor' }, 0.01, 0.01],
  ])('%s of %o', (text, marked, minus, plus) => {
    expect(readToleranceText(text, marked)).toEqual({
      value: { minus: expect.closeTo(minus, 12), plus: expect.closeTo(plus, 12) },
    });
  });

  test.each<[string, Marked]>([
    ['Z', { of: 'resistor' }],
    ['K', { of: 'capacitor', farad: 5e-12 }],
    ['constructor', { of: 'capacitor' }],
  ])('%s of %o says nothing', (text, marked) => {
    expect(readToleranceText(text, marked)).toHaveProperty('message');
  });

  test('comes from the tables', async () => {
    const committed = new URL(
      '../../src/substitution/tolerance-letters.generated.ts',
      import.meta.url,
    );
    expect(await readFile(committed, 'utf8')).toBe(await toleranceLettersModule());
  });
});
