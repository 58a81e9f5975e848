import { given } from '../given.ts';

/** A number found in a text, kept as digits so that a prefix can be put in without rounding. */
export interface ScannedNumber {
  /** Digits, with a point where there is a decimal sign, without sign: `4.7`, `.5`. */
  digits: string;
  negative: boolean;
  /** Power of ten from scientific notation; 0 without it. */
  exponent: number;
  /** Whether it is in scientific notation. */
  scientific: boolean;
  /** Set where the comma may part thousands as well: the number if it does. */
  thousands?: string;
  /** The letter that stood for the decimal point, if any. */
  letter?: string;
  /** Index behind it. */
  end: number;
}

const GROUPED = /^\d{1,3}(?:([ '’])\d{3})(?:\1\d{3})*(?!\d)(?:[.,]\d+)?/u;
const COMMA_GROUPS = /^\d{1,3}(?:,\d{3}){2,}(?:\.\d+)?(?![\d,])|^\d{1,3}(?:,\d{3})+\.\d+(?![\d,])/u;
const POINT_GROUPS = /^\d{1,3}(?:\.\d{3}){2,}(?:,\d+)?(?![\d.])|^\d{1,3}(?:\.\d{3})+,\d+(?![\d.])/u;
const PLAIN = /^(?:\d+[.,]\d+|\d+[.,](?![.\d])|\d+|[.,]\d+)/u;
/**
 * Three digits behind a comma that end in a nought, or behind a point in two, which a meter seldom shows:
 * thousands at least as likely as decimals.
 */
const RATHER_THOUSANDS = /^[1-9]\d{0,2}(?:,\d\d0|\.\d00)$/u;
const EXPONENT = /^[eE]([+-]?\d+)/u;

/** A number with a letter for its decimal point, by the letters that may be one. */
const CODED = new Map<string, RegExp>();

const codedWith = (letters: string): RegExp => {
  const known = CODED.get(letters) ?? new RegExp(`^(\\d*)([${letters}])(\\d+)(?![\\d.,])`, 'u');
  CODED.set(letters, known);
  return known;
};

/** Vulgar fractions that Unicode has a character for, and those that resistors are rated by. */
const VULGAR: Readonly<Record<string, number>> = {
  ...{ '¼': 1 / 4, '½': 1 / 2, '¾': 3 / 4, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8 },
};
const FRACTION = /^(?:(\d+) ?)?([¼½¾⅛⅜⅝⅞])|^(?:(\d+) )?([1357])\/([248]|10|16)(?![\d/.,])/u;

/** `1/2`, `½` and `1 1/2`: halves down to sixteenths, so that `10/63` stays two numbers. */
const fraction = (rest: string): { digits: string; length: number } | undefined => {
  const [all, before = '0', vulgar = '', whole = '0', above, below] = FRACTION.exec(rest) ?? [];
  if (all === undefined) return undefined;
  const value =
    above === undefined
      ? Number(before) + (VULGAR[vulgar] ?? 0)
      : Number(whole) + Number(above) / Number(below);
  return { digits: String(value), length: all.length };
};

interface Mantissa {
  digits: string;
  length: number;
  thousands?: string;
}

const mantissa = (rest: string): Mantissa | undefined => {
  const parted = fraction(rest);
  if (parted !== undefined) return parted;
  const grouped = GROUPED.exec(rest);
  if (grouped) {
    const digits = grouped[0].replace(/[ '’]/gu, '').replace(',', '.');
    return { digits, length: grouped[0].length };
  }
  const commas = COMMA_GROUPS.exec(rest);
  if (commas) return { digits: commas[0].replace(/,/gu, ''), length: commas[0].length };
  const points = POINT_GROUPS.exec(rest);
  if (points) {
    const digits = points[0].replace(/\./gu, '').replace(',', '.');
    return { digits, length: points[0].length };
  }
  const [plain] = PLAIN.exec(rest) ?? [];
  if (plain === undefined) return undefined;
  return {
    digits: plain.replace(',', '.'),
    length: plain.length,
    ...(RATHER_THOUSANDS.test(plain) ? { thousands: plain.replace(/[.,]/u, '') } : {}),
  };
};

/**
 * The number that starts at an index, with its sign.
 *
 * Groups of three may be parted by spaces or apostrophes: `10 000`, `10'000`. A point or a comma
 * followed by three digits is ambiguous and stays a decimal sign (`9.985`), unless there are several such
 * groups or both signs occur: `1,000,000`, `1.000,5`, `1,000.5`. What rather are thousands, a comma before
 * three digits that end in a nought (`10,000`) or a point before such as end in two (`4.700`), is told as
 * `thousands`, so that it can be asked about.
 *
 * @param letters letters that may stand for the decimal point, as in `4n7` and `R47`
 */
export const scanNumber = (
  text: string,
  start: number,
  letters: string,
): ScannedNumber | undefined => {
  const sign = /^[+-]\s*/u.exec(text.slice(start));
  const from = start + (sign?.[0].length ?? 0);
  const rest = text.slice(from);
  const negative = text.charAt(start) === '-';
  const coded = codedWith(letters).exec(rest);
  if (coded) {
    const [all, whole = '', letter = '', part = ''] = coded;
    return {
      digits: `${whole}.${part}`,
      negative,
      exponent: 0,
      scientific: false,
      letter,
      end: from + all.length,
    };
  }
  const found = mantissa(rest);
  if (found === undefined) return undefined;
  const exponent = EXPONENT.exec(rest.slice(found.length));
  return {
    digits: found.digits,
    negative,
    exponent: Number(exponent?.[1] ?? 0),
    scientific: exponent !== null,
    ...given('thousands', found.thousands),
    end: from + found.length + (exponent?.[0].length ?? 0),
  };
};
