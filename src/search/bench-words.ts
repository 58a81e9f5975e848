import type { BenchWordRow } from '../schemas/bench-words.ts';
import { remembered } from './remembered.ts';

/** Words of a text, in small letters, parted by blanks and by what is no letter or figure. */
const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

const phrasesOf = remembered(({ words }: BenchWordRow) => words.map(wordsOf));

/** Fewest letters of a word that is still being typed. */
const FEWEST_LETTERS = 3;

/** Whether the words of a phrase stand in a text one after the other; of a text that is no more, the last may be begun only. */
const standsIn = (phrase: readonly string[], words: readonly string[]): boolean =>
  words.some((_, from) =>
    phrase.every((part, at) => {
      const word = words[from + at];
      const isLast = from === 0 && at === words.length - 1;
      return (
        word === part ||
        (isLast && word !== undefined && word.length >= FEWEST_LETTERS && part.startsWith(word))
      );
    }),
  );

/** The pages that words of the bench in a text lead to, those of the longest phrase first. */
export const benchPages = (rows: readonly BenchWordRow[], text: string): BenchWordRow[] => {
  const words = wordsOf(text);
  return rows
    .map((row) => ({
      row,
      length: Math.max(
        0,
        ...phrasesOf(row)
          .filter((phrase) => standsIn(phrase, words))
          .map(({ length }) => length),
      ),
    }))
    .filter(({ length }) => length > 0)
    .toSorted((a, b) => b.length - a.length)
    .map(({ row }) => row);
};
