import type { Use } from '../markings/meanings/token.ts';
import { plainFigures } from './numbers.ts';

/** A number with a letter for its decimal point. */
export interface LetterForm {
  text: string;
  use: Use;
  /** Whether the letter stands last, where a tolerance would. */
  atEnd: boolean;
}

/** Most figures beside the letter, and together; more are not printed so. */
const MOST_AT_ONE_SIDE = 3;
const MOST_TOGETHER = 4;

/** Figures of the codes of a fixed length: three characters, and four for close tolerances. */
const FIXED_LENGTHS = [2, 3];

/** The letter among the figures; nothing where they would be too many. */
const set = (letter: string, whole: string, part: string): string | undefined =>
  whole.length <= MOST_AT_ONE_SIDE &&
  part.length <= MOST_AT_ONE_SIDE &&
  whole.length + part.length <= MOST_TOGETHER
    ? whole + letter + part
    : undefined;

/** Fractions to print behind the letter: as short as can be, then filled up to a fixed length. */
const fractions = (whole: string, part: string, fixed: boolean): { part: string; use: Use }[] => {
  const shortest = part === '' && whole.length === 1 ? '0' : part;
  const padded = (fixed ? FIXED_LENGTHS : [])
    .map((length) => part.padEnd(length - whole.length, '0'))
    .filter((one) => one !== shortest && one !== '' && one.length > part.length);
  return [
    { part: shortest, use: 'usual' as const },
    ...[...new Set(padded)].map((one) => ({ part: one, use: 'other' as const })),
  ];
};

/**
 * A number written with a letter for the decimal point: `47n`, `4n7`, `1n0`, `n47`, and `47n0` and
 * `n470` of the international codes of a fixed length.
 */
export const letterForms = (
  { letter, places, origins }: Record<'places' | 'origins', readonly string[]> & { letter: string },
  number: number,
): LetterForm[] => {
  const plain = plainFigures(number);
  if (plain === undefined) return [];
  const [figures = '', part = ''] = plain.split('.');
  const whole = figures === '0' ? '' : figures;
  const fits = (place: 'start' | 'middle' | 'end'): boolean => places.includes(place);
  const inside = fractions(whole, part, origins.includes('international')).flatMap(
    (one): LetterForm[] => {
      if (one.part === '' || !fits(whole === '' ? 'start' : 'middle')) return [];
      const text = set(letter, whole, one.part);
      // Noughts behind a letter in front, as in u047, are left to the next smaller unit.
      const use = whole === '' && one.part.startsWith('0') ? 'rare' : one.use;
      return text === undefined ? [] : [{ text, use, atEnd: false }];
    },
  );
  const behind: LetterForm[] = fits('end')
    ? [{ text: plain + letter, use: part === '' ? 'usual' : 'other', atEnd: true }]
    : [];
  return [...behind, ...inside];
};
