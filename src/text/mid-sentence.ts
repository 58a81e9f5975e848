/**
 * A name for the middle of a sentence: a small letter at the start, unless it begins with an
 * abbreviation or a code such as "RC" or "X capacitor".
 */
export const midSentence = (name: string): string =>
  /^\p{Lu}(?![\p{Lu}\d -])/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
