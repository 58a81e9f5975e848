import {
  formatValue,
  parseQuantity,
  type Habit,
  type Range,
  type Tolerance,
  type Unit,
} from '../engine/index.ts';
import { YEAR } from '../engine/quantities/si.ts';
import { toleranceOfLetter, type Marked } from './tolerance-letters.ts';

/** Numbers as people type them into a page or its address, and as a page writes them back. */

/** Longest text that one number may take. */
const LONGEST = 60;

/** A number of the visitor's that could not be used, kept as typed. */
export interface Rejected {
  text: string;
  message: string;
}

/** Only what is wrong with each number, by its key. */
export const messagesOf = (rejected: Readonly<Record<string, Rejected>>): Record<string, string> =>
  Object.fromEntries(Object.entries(rejected).map(([key, { message }]) => [key, message]));

/** What a text comes to, or a sentence that says what is wrong with it. */
export type Read<T> = { value: T } | { message: string };

/** Reads the texts of an address, key by key. */
export interface Taker {
  /** What a key says; nothing where it says nothing or cannot be understood. */
  take: <T>(key: string, read: (text: string) => Read<T>) => T | undefined;
  /** What could not be understood so far, with its text. */
  rejected: Record<string, Rejected>;
}

/** Reads an address; what cannot be understood is left open and kept with what is wrong with it. */
export const takerOf = (query: URLSearchParams): Taker => {
  const rejected: Record<string, Rejected> = {};
  return {
    rejected,
    take: (key, read) => {
      const text = query.get(key)?.trim() ?? '';
      if (text === '') return undefined;
      const result = read(text);
      if ('value' in result) return result.value;
      rejected[key] = { text, message: result.message };
      return undefined;
    },
  };
};

/** How the numbers of one key are read. */
export interface Measure {
  unit: Unit;
  /** Unit of a number without one, as in units.csv. */
  bare?: string | undefined;
  /** SI */
  lowest: number;
  /** SI */
  highest: number;
}

/** A range as a person writes it, SI, or a sentence where it cannot be read or lies outside its limits. */
export const readRange = (text: string, { unit, bare, lowest, highest }: Measure): Read<Range> => {
  if (text.length > LONGEST) return { message: `Please keep to ${LONGEST} characters.` };
  const parsed = parseQuantity(text, unit, bare);
  if (!parsed.ok) return { message: parsed.fault.message };
  const { min, max } = parsed.value;
  return min >= lowest && max <= highest
    ? { value: parsed.value }
    : {
        message: `Please give a value from ${formatValue(lowest, unit)} to ${formatValue(highest, unit)}.`,
      };
};

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
};

/** Writes a fraction at the start of a text as a decimal: ratings are spoken of as `1/4 W` and `½ W`. */
export const withoutFraction = (text: string): string =>
  text
    .replace(/^[½¼¾⅛]/u, (sign) => FRACTIONS[sign] ?? sign)
    .replace(
      /^(\d{1,3})\s*\/\s*([1-9]\d{0,2})(?=\s|[A-Za-z]|$)/,
      (_all, over: string, under: string) => String(Number(over) / Number(under)),
    );

/** Least and greatest values that an old part may have, SI. */
export const PART_LIMITS = {
  capacitance: { unit: 'F', lowest: 1e-13, highest: 10 },
  ratedVoltage: { unit: 'V', lowest: 0.5, highest: 100_000 },
  age: { unit: 's', bare: 'years', lowest: 0, highest: 150 * YEAR },
} as const satisfies Record<string, Measure>;

const WORST_TOLERANCE = 2;

/** What may stand behind a number of per cent: words for it, and the letter of a tolerance as printed. */
const OF_PER_CENT = /^(?:per ?cent|pct|pc|prozent|max|to|[B-DFGJKMNZ])$/iu;

/** What stands behind a number of a tolerance and makes of it something else than per cent. */
const otherUnit = (text: string): string | undefined =>
  [...text.matchAll(/\d\s*(per ?cent|\p{L}+|Ω)/giu)]
    .map(([, word = '']) => word)
    .find((word) => !OF_PER_CENT.test(word));

/** `+80 −20` and `80 %/−20 %`, against the usual order of minus before plus. */
const isPlusFirst = (text: string): boolean =>
  text.startsWith('+') || /^\d[^+]*[\s/][-−–]\d/u.test(text);

/** One number with a sign: it says one side alone, or is a slip of the finger. */
const ONE_SIDE = /^\s*[-−–+]\s*\d+(?:[.,]\d+)?\s*(?:%|\p{L}+)?\s*$/u;

/**
 * `10`, `±10 %`, `20/80` (minus before plus), `+80 −20`, or the letter that is printed: how far a part may be
 * off its value, as fractions. What says one side alone is refused.
 * @param marked what it is of, which decides what a letter means
 */
export const readToleranceText = (text: string, marked: Marked): Read<Tolerance> => {
  const ofLetter = toleranceOfLetter(text, marked);
  if (ofLetter !== undefined) return { value: ofLetter };
  const other = otherUnit(text);
  if (other !== undefined)
    return { message: `“${other}” does not belong behind a tolerance; write it in per cent.` };
  if (ONE_SIDE.test(text))
    return { message: 'Please write both sides, such as 10/0, or 10 for ±10 %.' };
  const numbers = text.replaceAll(',', '.').match(/\d+(?:\.\d+)?/g) ?? [];
  const isBothWays = /^\+\/?[-−–]/u.test(text);
  const inOrder = !isBothWays && isPlusFirst(text) ? numbers.toReversed() : numbers;
  const [minus, plus = minus] = inOrder.map((number) => Number(number) / 100);
  if (minus === undefined || plus === undefined || numbers.length > 2) {
    return { message: 'Please write a tolerance such as 10 %, 20/80 or the letter K.' };
  }
  return Math.max(minus, plus) <= WORST_TOLERANCE && minus < 1
    ? { value: { minus, plus } }
    : { message: 'Please give a tolerance below 100 % downwards and 200 % upwards.' };
};

/** A tolerance as an address carries it. */
export const writeTolerance = ({ minus, plus }: Tolerance): string => {
  const percent = (fraction: number): string => String(Number((fraction * 100).toPrecision(6)));
  return minus === plus ? percent(plus) : `${percent(minus)}/${percent(plus)}`;
};

/** A tolerance as a field shows it: `±10 %`, `−20/+80 %`. */
export const printTolerance = (tolerance: Tolerance, habit?: Habit): string => {
  const { minus, plus } = tolerance;
  return minus === plus
    ? `±${formatValue(plus, 'fraction', habit)}`
    : `−${formatValue(minus, 'fraction', habit)}/+${formatValue(plus, 'fraction', habit)}`;
};
