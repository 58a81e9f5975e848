import { formatQuantity, type Habit } from '../engine/index.ts';

const NO_BREAK = '\u00a0';
const MINUS = '\u2212';

const superscript = (exponent: number): string =>
  String(exponent).replace(/[-\d]/g, (sign) =>
    sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(sign)),
  );

/**
 * A number as a table prints it: up to four significant digits, thousands parted from five digits
 * on, a power of ten beyond a million or below a ten-thousandth, a real minus sign.
 */
export const printNumber = (value: number): string => {
  const size = Math.abs(value);
  const sign = value < 0 ? MINUS : '';
  if (size === 0) return '0';
  if (size >= 1e6 || size < 1e-4) {
    const exponent = Math.floor(Math.log10(size) + 1e-9);
    const mantissa = Number((size / 10 ** exponent).toPrecision(4));
    return `${sign}${mantissa === 1 ? '' : `${mantissa}${NO_BREAK}×${NO_BREAK}`}10${superscript(exponent)}`;
  }
  const [whole = '', decimals] = String(Number(size.toPrecision(4))).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, NO_BREAK) : whole;
  return sign + grouped + (decimals ? `.${decimals}` : '');
};

/** A unit as people write it, from its name in units.csv: `Mohm*uF` is MΩ·µF, `degC` is °C. */
export const printUnit = (unit: string): string =>
  unit
    .replace('ohm', 'Ω')
    .replace(/\bu(?=[A-ZΩ]|s$)/g, 'µ')
    .replace('degC', '°C')
    .replace('*', '·')
    .replace('cm3', 'cm³')
    .replace(/^x$/, '×')
    .replace(/^(fraction|grade)$/, '');

/** A number with its unit, never parted. */
export const printWithUnit = (value: number, unit: string): string => {
  const sign = printUnit(unit);
  return sign ? `${printNumber(value)}${NO_BREAK}${sign}` : printNumber(value);
};

/** One figure as a source gives it: some of a lowest, a typical and a highest value. */
export interface GivenFigure {
  min?: number | undefined;
  typ?: number | undefined;
  max?: number | undefined;
}

/** A figure in words and numbers: `0.05–0.1 %`, `up to 2 %`, `0.2–0.5 %, typically 0.3 %`. */
export const printFigure = ({ min, typ, max }: GivenFigure, unit: string): string => {
  const sign = printUnit(unit);
  const one = (value: number) => printWithUnit(value, unit);
  const typically = typ === undefined ? '' : `, typically ${one(typ)}`;
  if (min !== undefined && max !== undefined) {
    if (min === max) return one(min);
    // A dash beside a minus sign would be read as one.
    const dash = min < 0 ? ' to ' : '–';
    const span = `${printNumber(min)}${dash}${printNumber(max)}${sign && NO_BREAK + sign}`;
    return typ === min || typ === max ? span : span + typically;
  }
  if (max !== undefined) return typ === max ? one(max) : `up to ${one(max)}${typically}`;
  if (min !== undefined) return typ === min ? one(min) : `from ${one(min)}${typically}`;
  return typ === undefined ? '' : one(typ);
};

/** Farads and ohms as they are printed without a habit, with what each is times the SI unit. */
const SCALES: ReadonlyMap<string, readonly ['F' | 'ohm', number]> = new Map([
  ['pF', ['F', 1e-12]],
  ['nF', ['F', 1e-9]],
  ['µF', ['F', 1e-6]],
  ['F', ['F', 1]],
  ['Ω', ['ohm', 1]],
  ['kΩ', ['ohm', 1e3]],
  ['MΩ', ['ohm', 1e6]],
  ['GΩ', ['ohm', 1e9]],
  ['TΩ', ['ohm', 1e12]],
]);

const AMOUNT = '\\d+(?:\u00a0\\d{3})*(?:\\.\\d+)?';
/** An amount or a range of such a unit; no product such as MΩ·µF. */
const QUANTITY = new RegExp(
  `(?<![\\d.])(${AMOUNT})(?:–(${AMOUNT}))?\u00a0([pnµ]?F|[kMGT]?Ω)(?![·\\p{L}\\p{N}])`,
  'gu',
);

/** Words that were made without a habit, with their numbers and units as a reader likes them. */
export const inHabit = (words: string, habit: Habit = {}): string => {
  if (Object.keys(habit).length === 0) return words;
  const withUnits = words.replace(
    QUANTITY,
    (whole, low: string, high: string | undefined, unit: string) => {
      const [si, factor] = SCALES.get(unit) ?? [];
      if (si === undefined || factor === undefined) return whole;
      const [min = 0, max = min] = [low, high].flatMap((text) =>
        text === undefined ? [] : [Number(text.replaceAll(NO_BREAK, '')) * factor],
      );
      return formatQuantity({ min, typ: min, max }, si, habit);
    },
  );
  return habit.decimal === 'comma' ? withUnits.replace(/(?<=\d)\.(?=\d)/gu, ',') : withUnits;
};
