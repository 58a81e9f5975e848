/** From a full-width character down to the usual one. */
const FULL_WIDTH = 0xfee0;

/** Latin letters for Cyrillic ones that stand for the decimal point, as in 4к7. */
const POINTS: Readonly<Record<string, string>> = { к: 'k', К: 'K', М: 'M', п: 'p', н: 'n' };

/** One character for every way of writing the same thing; length and indices stay the same. */
export const plainText = (text: string): string =>
  text
    .replace(/[\u00a0\u2000-\u200a\u202f\t\r\n]/gu, ' ')
    .replace(/\u03bc/gu, 'µ')
    .replace(/\u2126/gu, 'Ω')
    .replace(/º/gu, '°')
    // A digit behind a unit of length is a power; 4m3 stays what it is.
    .replace(/(?<=[cmd/ ]m)3(?![\d.,])/gu, '³')
    .replace(/[\u2212\u2011\u2010\ufe63\uff0d]/gu, '-')
    .replace(/\u2044|\u2215/gu, '/')
    // Cyrillic letters for the decimal point, and the sign of a degree before a Cyrillic C.
    .replace(/(?<!\p{L})[кКМпн](?=\d)/gu, (letter) => POINTS[letter] ?? letter)
    .replace(/(?<=° ?)С/gu, 'C')
    // Full-width figures, letters and signs, as keyboards of East Asia give them.
    .replace(/[\uff01-\uff5e]/gu, (wide) => String.fromCharCode(wide.charCodeAt(0) - FULL_WIDTH))
    .replace(/\u3000/gu, ' ');

/** Index of the first character from an index on that is no space. */
export const skipSpaces = (text: string, from: number): number => {
  let index = from;
  while (text.charAt(index) === ' ') index += 1;
  return index;
};

/** The sign of micro, whose capital looks like an M. */
const MICRO = /^[µμ]/u;

/** A text with a capital at the start, the rest left alone. */
export const capital = (words: string): string =>
  MICRO.test(words) ? words : words.charAt(0).toUpperCase() + words.slice(1);
