/** A number as decimal figures: `figures * 10^power`. */
export interface Figures {
  /** A whole number that does not end in 0; 0 for zero. */
  figures: number;
  power: number;
}

/** Significant digits that arithmetic leaves right; behind them is noise that would tip a half. */
export const MOST_DIGITS = 12;

const FARTHEST = 300;

/** Powers of ten, each the number nearest to it, which `10 ** n` is not always. */
const TENS: readonly number[] = Array.from({ length: FARTHEST + 1 }, (_, power) =>
  Number(`1e${String(power)}`),
);

/** A number times a power of ten: one rounding up to 10^22, which is the last exact one. */
export const timesTen = (value: number, power: number): number => {
  if (power > FARTHEST) return timesTen(value * 1e300, power - FARTHEST);
  if (power < -FARTHEST) return timesTen(value / 1e300, power + FARTHEST);
  return power < 0 ? value / (TENS[-power] as number) : value * (TENS[power] as number);
};

/** A half, with room for the error of one multiplication in a number of twelve digits. */
const HALF = 0.5005;

/** Figures without the zeros at their end. */
const trimmed = (figures: number, power: number): Figures => {
  let [short, shift] = [figures, 0];
  while (short >= 10 && short % 10 === 0) {
    short /= 10;
    shift += 1;
  }
  return { figures: short, power: power + shift };
};

/**
 * The significant figures of a number, halves away from zero as written: 4.935 to three digits is
 * 4.94, though the nearest binary number lies a little below the half.
 *
 * @param size finite, zero or above
 * @param digits whole, 1 to 12
 */
export const figuresOf = (size: number, digits: number): Figures => {
  if (size === 0) return { figures: 0, power: 0 };
  // At a power of ten this may be one off; the last figures then round to the same number.
  const power = Math.floor(Math.log10(size)) - (MOST_DIGITS - 1);
  const clean = Math.floor(timesTen(size, -power) + HALF);
  const left = MOST_DIGITS - digits;
  // Of a whole number over a power of ten, a half comes out as a half.
  return trimmed(Math.floor(timesTen(clean, -left) + 0.5), power + left);
};
