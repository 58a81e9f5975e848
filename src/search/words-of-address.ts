/** Longest text that is looked up for an address. */
const LONGEST = 80;

/** The first part of an address says what kind of page it is, and alone it is all there is. */
const tellingParts = (parts: readonly string[]): readonly string[] =>
  parts.length > 1 ? parts.slice(1) : parts;

/**
 * What the path of a page that does not exist asks for, in words: `/resistors/carbon-composition/`
 * asks for `carbon composition`.
 */
export const wordsOfAddress = (path: string): string => {
  const parts = path
    .split('/')
    .map((part) => part.replace(/\.\w+$/u, ''))
    .filter((part) => part !== '' && part !== 'index');
  const words = tellingParts(parts).flatMap((part) => part.split(/[^\p{L}\p{N}.]+/u));
  return words
    .filter((word) => word !== '')
    .join(' ')
    .slice(0, LONGEST);
};
