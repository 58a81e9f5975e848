import type { Item, Scan } from './scan.ts';
import { weights } from './weights.ts';
import type { FoundWord } from './word-tree.ts';

/**
 * What letters cost that are in the other case than their table has them; far more where the letter
 * as written is a unit wherever it stands.
 */
export const caseCost = (
  { lexicon, marking }: Scan,
  at: number,
  found: FoundWord<Item>,
): number => {
  if (found.sameCase) return 0;
  const written = marking.text.slice(at, found.end);
  const isUnit = written.split('').some((letter) => lexicon.unitLetters.has(letter));
  return isUnit ? weights.otherCaseOfUnit : weights.otherCase;
};
