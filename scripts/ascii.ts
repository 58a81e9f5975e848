/**
 * Texts in ASCII alone, each in the way of its language. A browser takes such a file over as it is,
 * where it would otherwise decode all of its megabytes and keep them in two bytes a character.
 */

const OTHER_UNITS = /[^\0-\x7f]/g;
const OTHER_CHARACTERS = /[^\0-\x7f]/gu;

/** Script or JSON: what is not ASCII stands in its strings and patterns, where `\u` means the same. */
export const asciiScript = (code: string): string =>
  code.replaceAll(OTHER_UNITS, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** HTML, in its text and in its attributes. */
export const asciiHtml = (html: string): string =>
  html.replaceAll(OTHER_CHARACTERS, (character) => `&#${String(character.codePointAt(0))};`);

/** Styles; the space ends the number. */
export const asciiStyle = (styles: string): string =>
  styles.replaceAll(
    OTHER_CHARACTERS,
    (character) => `\\${(character.codePointAt(0) ?? 0).toString(16)} `,
  );
