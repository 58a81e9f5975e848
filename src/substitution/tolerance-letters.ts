import type { Tolerance } from '../engine/index.ts';
import {
  OF_CAPACITORS,
  OF_RESISTORS,
  OF_SMALL_CAPACITORS,
  SMALL_BELOW,
} from './tolerance-letters.generated.ts';

/** What a tolerance is of: of a capacitor its value counts, F, since letters mean picofarads on the smallest. */
export type Marked = { of: 'capacitor'; farad?: number | undefined } | { of: 'resistor' };

type Letters = Readonly<Record<string, readonly [minus: number, plus: number]>>;

const PERCENT = 1e-2;
const PICOFARAD = 1e-12;

/** The letters that a part may bear, and what one of their units is as a share of its value. */
const lettersOf = (marked: Marked): { letters: Letters; unit: number } => {
  if (marked.of === 'resistor') return { letters: OF_RESISTORS, unit: PERCENT };
  const { farad = SMALL_BELOW } = marked;
  const isSmall = farad > 0 && farad < SMALL_BELOW;
  return isSmall
    ? { letters: OF_SMALL_CAPACITORS, unit: PICOFARAD / farad }
    : { letters: OF_CAPACITORS, unit: PERCENT };
};

/**
 * The tolerance that a letter stands for as it is printed behind a value (IEC 60062), as fractions; small
 * letters do as well. Nothing for a text that is no such letter.
 */
export const toleranceOfLetter = (text: string, marked: Marked): Tolerance | undefined => {
  const letter = text.trim().toUpperCase();
  const { letters, unit } = lettersOf(marked);
  const sides = Object.hasOwn(letters, letter) ? letters[letter] : undefined;
  if (sides === undefined) return undefined;
  const [minus, plus] = sides.map((size) => Number((size * unit).toPrecision(12)));
  return minus === undefined || plus === undefined ? undefined : { minus, plus };
};
