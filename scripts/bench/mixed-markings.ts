/** Characters that noise is drawn from: worn signs, figures, letters of codes and units, gaps. */
const SIGNS: readonly string[] = [
  '??_#▯… 01AK',
  '?0123456789pnKJM VµF.,',
  '? 1K',
  '?ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789',
  '?',
  '0123456789',
  '0123456789.,/x+- ',
  'abcdefghijklmnopqrstuvwxyz0123456789 ',
  '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ.,/-+°µΩ% \n',
  '0123456789пнмкМКХА В',
];

/** Markings as parts bear them, to be put one behind another. */
const PIECES: readonly string[] = [
  '104K',
  '.1K250',
  '4n7J100',
  'MKP X2 275~',
  '47µF 16V',
  '16+16 450V',
  '2x50 uF 350V',
  '2A103J',
  'CSR13G106K',
  'К73-17',
  '40/085/21',
  '8923',
  '0.047 MFD 400 WV',
  '0R22 5W',
  'R47',
  'RN60D1002F',
  'Y5P',
  'X7R 50V',
  'C0G',
  'N750',
  '−20+80%',
  '8µ ▢',
  '1O3K',
  '47?',
  '?04K',
  '105°C',
  '107A',
  'A7',
];
const BETWEEN: readonly string[] = ['', ' ', '\n', ', ', '/'];

/** Characters of the longest one. */
const LONGEST = 200;
const LONGEST_SHORT = 20;

/**
 * Strings of mixed kinds, the same each time: noise of ten alphabets, markings glued together, and
 * one marking over and over; a third of them short.
 */
export const mixedMarkings = (count: number): string[] => {
  let seed = 473;
  const below = (bound: number): number => {
    seed = (seed * 1664525 + 1013904223) % 2 ** 32;
    return Math.floor((seed / 2 ** 32) * bound);
  };
  const oneOf = (list: readonly string[]): string => list[below(list.length)] ?? '';
  const grown = (length: number, next: () => string): string => {
    let text = '';
    while (text.length < length) text += next();
    return text.slice(0, length);
  };
  return Array.from({ length: count }, () => {
    const length = 1 + below(below(3) === 0 ? LONGEST_SHORT : LONGEST);
    const kind = below(10);
    if (kind < 7) {
      const signs = [...oneOf(SIGNS)];
      return grown(length, () => oneOf(signs));
    }
    if (kind < 9) return grown(length, () => oneOf(PIECES) + oneOf(BETWEEN));
    const piece = oneOf(PIECES) + oneOf(BETWEEN);
    return grown(length, () => piece);
  });
};
