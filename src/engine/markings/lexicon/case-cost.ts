import type { Item, Scan } from './scan.ts';
import { isLetter } from '../text/text.ts';
import { weights } from '../meanings/weights.ts';
import type { FoundWord } from './word-tree.ts';

/**
 * What letters cost that are in the other case than their table has them; far more where there is
 * one letter, which as it is written is a unit wherever it stands. A word of several is a word.
 */
export const caseCost = (
  { lexicon, marking }: Scan,
  at: number,
  found: FoundWord<Item>,
): number => {
  if (found.sameCase) return 0;
  const [letter = '', ...others] = marking.text.slice(at, found.end).split('').filter(isLetter);
  return others.length === 0 && lexicon.unitLetters.has(letter)
    ? weights.otherCaseOfUnit
    : weights.otherCase;
};
