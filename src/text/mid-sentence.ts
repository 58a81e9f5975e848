/** Starts that stay as they are: an abbreviation, or a code such as "RC" or "X capacitor". */
const CODE = /^\p{Lu}[\p{Lu}\d -]/u;
/** An article is no code, though it is a capital letter by itself. */
const ARTICLE = /^A \p{Ll}/u;

/** A name for the middle of a sentence: a small letter at the start, unless it begins with a code. */
export const midSentence = (name: string): string =>
  /^\p{Lu}/u.test(name) && (!CODE.test(name) || ARTICLE.test(name))
    ? name.charAt(0).toLowerCase() + name.slice(1)
    : name;
