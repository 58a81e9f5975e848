import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eitherOf, inPlaceOf } from '../../../src/search/in-place-of/question.ts';

describe('what would be fitted, and in place of what', () => {
  test.each([
    ['63V instead of 50V', '63V', '50V'],
    ['can I use 105C instead of 85C?', '105C', '85C'],
    ['Can I use a 105°C cap in place of an 85°C one?', '105°C', '85°C'],
    ['could one fit 10u 50V rather than 10u 25V', '10u 50V', '10u 25V'],
    ['is 470uF ok for 500uF', '470uF', '500uF'],
    ['is 47n good enough for 50n?', '47n', '50n'],
    ['use polyester in lieu of paper', 'polyester', 'paper'],
    ['is it safe to replace a 35V cap with a 50V one', '50V', '35V'],
    ['470µF statt 500µF', '470µF', '500µF'],
    ['63V au lieu de 50V', '63V', '50V'],
    ['100n al posto di 0,1', '100n', '0,1'],
    ['22u en lugar de 25u', '22u', '25u'],
    ['10u in plaats van 8u', '10u', '8u'],
    ['replace 500uF with 470uF', '470uF', '500uF'],
    ['replacing tantalum by electrolytic', 'electrolytic', 'tantalum'],
    ['swap 8uF for 10uF', '10uF', '8uF'],
    ['substitute 10uF for 8uF', '10uF', '8uF'],
    ['substitute 8uF with 10uF', '10uF', '8uF'],
    ['paper capacitor replaced with polypropylene', 'polypropylene', 'paper'],
    ['16u 450V -> 22u 450V', '22u 450V', '16u 450V'],
    ['TL072 as a replacement for 4558', 'TL072', '4558'],
    ['TL072 to replace 4558', 'TL072', '4558'],
    ['will 1W replace 1/2W', '1W', '1/2W'],
    ['what about 100n instead of 0.1?', '100n', '0.1'],
  ])('%s', (text, fitted, old) => {
    expect(inPlaceOf(text)).toEqual({ fitted, old, plain: true });
  });

  test.each([
    ['470uF for 500uF', '470uF', '500uF'],
    ['100n for audio', '100n', 'audio'],
  ])('“%s” says it less plainly', (text, fitted, old) => {
    expect(inPlaceOf(text)).toEqual({ fitted, old, plain: false });
  });

  test.each([
    '103M 1KV Z5U',
    'what replaces a wax paper capacitor',
    'what can I use instead of 8uF',
    'instead of 50V',
    '63V instead of',
    'replace carbon composition resistor',
    '',
    '?',
  ])('“%s” asks for no part in place of another', (text) => {
    expect(inPlaceOf(text)).toBeUndefined();
  });

  test('whatever is typed, both are named or nothing is', () => {
    const words = fc.constantFrom(
      'can',
      'i',
      'use',
      '63V',
      'for',
      'instead of',
      '->',
      '?',
      'a',
      ' ',
    );
    fc.assert(
      fc.property(fc.array(words), (some) => {
        const found = inPlaceOf(some.join(' '));
        const isWhole = found === undefined || (found.fitted !== '' && found.old !== '');
        expect(isWhole).toBe(true);
      }),
    );
  });
});

test.each([
  ['CD4016 vs 4066', ['CD4016', '4066']],
  ['is a 5532 or a TL072?', ['5532', 'TL072']],
  ['LM324 versus LM358', ['LM324', 'LM358']],
  ['4066', undefined],
  ['or 4066', undefined],
])('“%s” compares %j', (text, both) => {
  expect(eitherOf(text)).toEqual(both);
});
