import type { Catalogue } from '../engine/index.ts';
import { remembered } from './remembered.ts';

/** What a text with a slip of the finger in it may mean, where nothing answers to it as it is written. */

/** Shorter words have too many neighbours. */
const FEWEST_LETTERS = 5;
/** From here on two slips are forgiven. */
const LONG = 8;

const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];

/** Every word that a type, a position, a kind or a trouble at the bench is named by. */
const vocabulary = remembered((catalogue: Catalogue): ReadonlySet<string> => {
  const { types, positions, kindTypes, kindPositions, kinds, benchWords } = catalogue;
  const named = [types, positions, kindTypes, kindPositions].flatMap((table) =>
    Object.values(table).flatMap(({ name, also_called }) => [name, ...also_called]),
  );
  const texts = [
    ...Object.values(kinds).flatMap(({ name, plural }) => [name, plural]),
    ...named,
    ...benchWords.flatMap(({ words }) => words),
  ];
  return new Set(texts.flatMap(wordsOf).filter(({ length }) => length >= FEWEST_LETTERS));
});

/**
 * How many letters have to be put in, left out, changed, or swapped with the next to make one word of
 * another (optimal string alignment).
 */
export const slips = (from: string, to: string): number => {
  let before: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let i = 1; i <= from.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      const isSwapped = from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      row[j] = Math.min(
        (last[j] ?? Infinity) + 1,
        (row[j - 1] ?? Infinity) + 1,
        (last[j - 1] ?? Infinity) + same,
        isSwapped ? (before[j - 2] ?? Infinity) + 1 : Infinity,
      );
    }
    [before, last] = [last, row];
  }
  return last[to.length] ?? Infinity;
};

/** The word that is meant by one that names nothing; nothing where none is near. */
const meantWord = (known: ReadonlySet<string>, word: string): string | undefined => {
  if (word.length < FEWEST_LETTERS) return undefined;
  const all = [...known];
  if (all.some((one) => one.startsWith(word))) return undefined;
  const most = word.length < LONG ? 1 : 2;
  const [nearest] = all
    .filter((one) => Math.abs(one.length - word.length) <= most)
    .map((one) => ({ one, off: slips(word, one) }))
    .filter(({ off }) => off <= most)
    .toSorted((a, b) => a.off - b.off);
  return nearest?.one;
};

/** A text with each word that names nothing put right; nothing where none of them is near to one that does. */
export const meantText = (catalogue: Catalogue, text: string): string | undefined => {
  const known = vocabulary(catalogue);
  const meant = text.replaceAll(/\p{L}+/gu, (word) => meantWord(known, word.toLowerCase()) ?? word);
  return meant === text ? undefined : meant;
};
