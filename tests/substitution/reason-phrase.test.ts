import { describe, expect, test } from 'vitest';
import { reasonPhrase } from '../../src/substitution/phrases.ts';
import { findingWith, type Change } from './a-finding.ts';

describe('a finding as a reason', () => {
  test.each<[change: Change, words: string]>([
    // Where some parts meet the limit and others do not, what is usual tells how it was judged.
    [{}, 'life used up 20–280 % (usually 70 %; at most 100 % allowed)'],
    [
      { limit: { low: 0.5, high: 4 } },
      'life used up 20–280 % (usually 70 %; 50 % to 400 % allowed)',
    ],
    [{ limit: { low: 0.5 } }, 'life used up 20–280 % (usually 70 %; at least 50 % needed)'],
    // Where all do, or none does, the figure and the limit say it all.
    [{ limit: { high: 2.8 } }, 'life used up 20–280 % (at most 280 % allowed)'],
    [{ limit: { high: 0.2 } }, 'life used up 20–280 % (at most 20 % allowed)'],
    [{ limit: { high: 3 } }, 'life used up 20–280 % (at most 300 % allowed)'],
    [{ standIn: { min: 2, typ: 2, max: 2 } }, 'life used up 200 % (at most 100 % allowed)'],
    [{ limit: {} }, 'life used up 20–280 %'],
    [{ standIn: undefined }, 'life used up, which is not known'],
    // An abbreviation keeps its capitals.
    [{ name: 'ESR in its window', limit: {} }, 'ESR in its window 20–280 %'],
    [{ name: 'AC voltage against its kind', limit: {} }, 'AC voltage against its kind 20–280 %'],
    // A yes or no is told by its working.
    [{ unit: 'grade', working: 'polar part' }, 'polar part'],
  ])('%j: %s', (change, words) => {
    expect(reasonPhrase(findingWith(change)).replaceAll('\u00A0', ' ')).toBe(words);
  });
});
