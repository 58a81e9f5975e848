/** Characters that may stand between tokens without a meaning of their own. */
const SEPARATOR = /[\s,;:/|()[\]{}"'’`_*·•.\-–—]/u;

/** Whether a character may stand between tokens. */
export const isSeparator = (character: string): boolean => SEPARATOR.test(character);

/** Whether a character is white space. */
export const isBlank = (character: string): boolean => /\s/u.test(character);

/** Whether a character is a figure. */
export const isFigure = (character: string): boolean => character >= '0' && character <= '9';

/** Whether a character is a letter of any script. */
export const isLetter = (character: string): boolean => /\p{L}/u.test(character);

/** Small letters, without changing the number of characters. */
export const fold = (text: string): string =>
  Array.from({ length: text.length }, (_, index) => {
    const small = text.charAt(index).toLowerCase();
    return small.length === 1 ? small : text.charAt(index);
  }).join('');

/** A marking with what the tokenizer asks of it again and again. */
export interface Marking {
  text: string;
  folded: string;
}

/** Prepares a marking for the tokenizer. */
export const markingOf = (text: string): Marking => ({ text, folded: fold(text) });

/** Whether words part at a character: a separator, but not the point of an abbreviation. */
const parts = (marking: Marking, at: number): boolean => {
  const character = marking.text.charAt(at);
  const [before, after] = [marking.text.charAt(at - 1), marking.text.charAt(at + 1)];
  return isSeparator(character) && !(character === '.' && isLetter(before) && isLetter(after));
};

/** Signs between the sections of one part, such as `16+16` or `2x50`. */
const SECTION_SIGNS = '+x×';

/** Whether a sign between two figures sets sections apart; what follows it begins a word. */
const setsApart = (marking: Marking, at: number): boolean => {
  const character = marking.text.charAt(at);
  return (
    character !== '' &&
    SECTION_SIGNS.includes(character) &&
    isFigure(marking.text.charAt(at - 1)) &&
    isFigure(marking.text.charAt(at + 1))
  );
};

/** Whether a word may begin at an index: nothing but a separator is before it. */
export const wordBegins = (marking: Marking, at: number): boolean =>
  at === 0 || parts(marking, at - 1) || setsApart(marking, at - 1);

/** Whether a word may end before an index: nothing but a separator follows. */
export const wordEnds = (marking: Marking, end: number): boolean =>
  end >= marking.text.length || parts(marking, end);

/** Whether cutting the marking here would cut a run of figures or a run of letters in two. */
export const cutsRun = (marking: Marking, at: number): boolean => {
  const before = marking.text.charAt(at - 1);
  const after = marking.text.charAt(at);
  return (isFigure(before) && isFigure(after)) || (isLetter(before) && isLetter(after));
};

/** How a word of a table stands in a marking at an index, if it does. */
export const wordAt = (
  marking: Marking,
  at: number,
  word: string,
  exactCase = false,
): { end: number; sameCase: boolean } | undefined => {
  const end = at + word.length;
  if (marking.text.startsWith(word, at)) return { end, sameCase: true };
  // Most words of a table differ in the first letter already; folding them all would be slow.
  if (exactCase || fold(word.charAt(0)) !== marking.folded.charAt(at)) return undefined;
  if (!marking.folded.startsWith(fold(word), at)) return undefined;
  return { end, sameCase: false };
};

/** Index of the end of the word that begins at an index. */
export const endOfWord = (marking: Marking, at: number): number => {
  let end = at;
  while (end < marking.text.length && !parts(marking, end)) {
    end += 1;
    if (setsApart(marking, end - 1)) break;
  }
  return end;
};

/** Index of the first character from an index on that is not white space. */
export const skipBlanks = (marking: Marking, at: number): number => {
  let end = at;
  while (end < marking.text.length && isBlank(marking.text.charAt(end))) end += 1;
  return end;
};
