import { formatCode } from './code.ts';
import { fromSi, roundDigits, toSi } from './decimal.ts';
import { digitsOf } from './habit.ts';
import type { Habit } from './habit.ts';
import type { Range } from './range.ts';
import { printedWith } from './unit.ts';
import type { PrintScale, Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';

const NO_BREAK = '\u00a0';
const MINUS = '\u2212';

/** From this ratio between its ends on, a range is printed with a unit at each end. */
const FAR_APART = 1000;

/** The old way: picofarad below 10 nF, microfarad from there on. */
const PICO_AND_MICRO: readonly PrintScale[] = printedWith('F', 'pu').map((scale) =>
  scale.symbol === 'µF' ? { ...scale, from: 1e-8 } : scale,
);

const scalesFor = (unit: Unit, habit: Habit): readonly PrintScale[] =>
  unit === 'F' && habit.capacitance === 'pF-uF' ? PICO_AND_MICRO : UNIT_FACTS[unit].print;

/** Digits that arithmetic leaves right; what lies behind them is noise that would tip a half. */
const CLEAN = 12;

const rounded = (value: number, digits: number): number =>
  roundDigits(roundDigits(value, CLEAN), digits);

/**
 * The unit to print a value in. It moves up only where the rounded figure reaches the next one:
 * 999.99 nF is 1 µF, and what is printed would be printed the same again.
 */
const printScale = (value: number, unit: Unit, habit: Habit): PrintScale => {
  const [smallest, ...larger] = scalesFor(unit, habit) as [PrintScale, ...PrintScale[]];
  const size = Math.abs(value);
  if (size === 0) return larger.find(isSi) ?? smallest;
  return larger.reduce((scale, next) => {
    const printed = toSi(rounded(fromSi(size, scale), digitsOf(habit)), scale);
    return printed >= next.from ? next : scale;
  }, smallest);
};

const isSi = ({ power, factor }: PrintScale): boolean => power === 0 && factor === undefined;

/** Plain digits without an exponent, thousands parted from five digits on. */
const written = (value: number, habit: Habit): string => {
  const digits = digitsOf(habit);
  const short = rounded(value, digits);
  const size = Math.abs(short);
  // `toFixed` gives up above 1e21, and nobody reads zeros in such numbers.
  if (size >= 1e15 || (size !== 0 && size < 1e-9)) {
    const [mantissa = '', exponent = ''] = short.toExponential().split('e');
    return (
      sign(short) + decimal(mantissa.replace('-', ''), habit) + `e${exponent.replace('+', '')}`
    );
  }
  const places = size === 0 ? 0 : Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  const [whole = '', part = ''] = size.toFixed(Math.min(places, 100)).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/gu, NO_BREAK) : whole;
  const trimmed = part.replace(/0+$/u, '');
  return sign(short) + decimal(trimmed === '' ? grouped : `${grouped}.${trimmed}`, habit);
};

const sign = (value: number): string => (value < 0 ? MINUS : '');

const decimal = (digits: string, { decimal: mark }: Habit): string =>
  mark === 'comma' ? digits.replace('.', ',') : digits;

const withUnit = (number: string, { symbol, one = symbol }: PrintScale): string =>
  symbol === '' ? number : `${number}${NO_BREAK}${number === '1' ? one : symbol}`;

const numberIn = (value: number, scale: PrintScale, habit: Habit): string =>
  written(fromSi(value, scale), habit);

/**
 * One value as people read it: engineering prefix, significant digits by habit (3), a space that
 * does not break, a true minus sign. What is not a finite number is printed as a dash.
 *
 * @param value in the SI unit
 */
export const formatValue = (value: number, unit: Unit, habit: Habit = {}): string => {
  if (!Number.isFinite(value)) return '–';
  if (unit === 'ohm' && habit.ohm === 'letter')
    return decimal(formatCode(value, 'ohm', digitsOf(habit)), habit);
  const scale = printScale(value, unit, habit);
  return withUnit(numberIn(value, scale, habit), scale);
};

/** Judged by what is printed, so that the printed range is printed the same again. */
const areFarApart = (one: number, other: number, digits: number): boolean => {
  const sizes = [one, other].map((value) => Math.abs(rounded(value, digits)));
  const smaller = Math.min(...sizes);
  return smaller > 0 && Math.max(...sizes) / smaller >= FAR_APART;
};

/**
 * A range as people read it: `4.7 nF`, `4.5–4.9 nF`, `−40 to 85 °C`, `±10 %`. Both ends have the
 * same prefix unless they are far apart. The typical value is not printed unless it is all there
 * is.
 */
export const formatQuantity = ({ min, typ, max }: Range, unit: Unit, habit: Habit = {}): string => {
  if (min === max) return formatValue(typ, unit, habit);
  const [low, high] = [formatValue(min, unit, habit), formatValue(max, unit, habit)];
  if (low === high || !Number.isFinite(min) || !Number.isFinite(max))
    return low === high ? low : `${low} to ${high}`;
  if (unit === 'ohm' && habit.ohm === 'letter') return `${low}–${high}`;
  const largest = Math.max(Math.abs(min), Math.abs(max));
  const scale = printScale(largest, unit, habit);
  const [from, to] = [numberIn(min, scale, habit), numberIn(max, scale, habit)];
  if (min === -max && typ === 0) return `±${withUnit(to, scale)}`;
  if (areFarApart(fromSi(min, scale), fromSi(max, scale), digitsOf(habit)))
    return `${low} to ${high}`;
  // A dash beside a minus sign would be read as one.
  return withUnit(min < 0 ? `${from} to ${to}` : `${from}–${to}`, scale);
};
