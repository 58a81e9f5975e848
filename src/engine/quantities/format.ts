import { formatCode } from './code.ts';
import { figuresOf, timesTen, type Figures } from './figures.ts';
import { digitsOf, type Habit } from './habit.ts';
import type { Range } from './range.ts';
import { printedWith, type PrintScale, type Unit } from './unit.ts';
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

/** Figures of the size of a value in a printed unit. */
const figuresIn = (value: number, { power, factor }: PrintScale, digits: number): Figures => {
  const size = Math.abs(value);
  // The power of ten moves only the decimal point, so it has no part in the rounding.
  const short = figuresOf(factor === undefined ? size : size / factor, digits);
  return short.figures === 0 ? short : { figures: short.figures, power: short.power - power };
};

/** Whether a size counts as at least another one when printed. */
const reaches = (size: number, from: number, scale: PrintScale, digits: number): boolean => {
  // Rounding adds a third at most (1.5 to 2), so most sizes need none.
  if (size >= from || size < from / 2) return size >= from;
  const { figures, power } = figuresIn(size, scale, digits);
  return timesTen(figures, power + scale.power) * (scale.factor ?? 1) >= from;
};

/**
 * The unit to print a value in. It moves up only where the rounded figure reaches the next one:
 * 999.99 nF is 1 µF, and what is printed would be printed the same again.
 */
const printScale = (value: number, unit: Unit, habit: Habit): PrintScale => {
  const scales = scalesFor(unit, habit);
  let scale = scales[0] as PrintScale;
  if (value === 0) return scales.find(isSi) ?? scale;
  const [size, digits] = [Math.abs(value), digitsOf(habit)];
  for (const next of scales) {
    if (next !== scale && !reaches(size, next.from, scale, digits)) break;
    scale = next;
  }
  return scale;
};

/**
 * What a value is printed as in its unit: one that reaches the unit only when rounded is one of it.
 * 55 minutes to one digit are 1 h; 0.9 h would be read back as 54 min, and printed as 50 min.
 */
const lifted = (value: number, scale: PrintScale, unit: Unit, habit: Habit): number =>
  value === 0 || Math.abs(value) >= scale.from || scale === scalesFor(unit, habit)[0]
    ? value
    : Math.sign(value) * scale.from;

const isSi = ({ power, factor }: PrintScale): boolean => power === 0 && factor === undefined;

/** Sizes that are printed with an exponent: nobody reads so many zeros. */
const SMALLEST = -9;
const LARGEST = 15;

const grouped = (whole: string): string =>
  whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/gu, NO_BREAK) : whole;

const decimal = (whole: string, part: string, { decimal: mark }: Habit): string => {
  if (part === '') return whole;
  return mark === 'comma' ? `${whole},${part}` : `${whole}.${part}`;
};

/** Plain digits, thousands parted from five digits on; an exponent where those were too many. */
const written = ({ figures, power }: Figures, habit: Habit): string => {
  const digits = String(figures);
  // How many of the digits stand before the decimal point.
  const before = digits.length + power;
  if (before > LARGEST || before <= SMALLEST)
    return `${decimal(digits.slice(0, 1), digits.slice(1), habit)}e${String(before - 1)}`;
  if (before <= 0) return decimal('0', '0'.repeat(-before) + digits, habit);
  if (power >= 0) return grouped(digits + '0'.repeat(power));
  return decimal(grouped(digits.slice(0, before)), digits.slice(before), habit);
};

/** Whether a zero follows the decimal point before all other figures, as in 0.03. */
const hasZerosFirst = ({ figures, power }: Figures): boolean =>
  figures !== 0 && String(figures).length + power < 0;

/** Whether one of two has such zeros, which are miscounted at the bench, and the other is whole. */
const isSmallBeside = (small: Figures, great: Figures): boolean =>
  hasZerosFirst(small) && String(great.figures).length + great.power > 0;

/** The sign of an angle follows its number without a space (SI Brochure, 9th edition, 5.4.3). */
const ANGLE = '°';

const withUnit = (number: string, { symbol, one = symbol }: PrintScale): string => {
  if (symbol === '') return number;
  return `${number}${symbol === ANGLE ? '' : NO_BREAK}${number === '1' ? one : symbol}`;
};

const signed = (value: number, size: Figures, habit: Habit): string =>
  value < 0 ? MINUS + written(size, habit) : written(size, habit);

/** A value as printed: its figures in a unit, without the sign. */
interface Printed {
  figures: Figures;
  scale: PrintScale;
}

const printedAlone = (value: number, unit: Unit, habit: Habit): Printed => {
  const scale = printScale(value, unit, habit);
  return { figures: figuresIn(lifted(value, scale, unit, habit), scale, digitsOf(habit)), scale };
};

/**
 * One value as people read it: engineering prefix, significant digits by habit (3), a space that
 * does not break, a true minus sign. What is not a finite number is printed as a dash.
 *
 * @param value in the SI unit
 */
export const formatValue = (value: number, unit: Unit, habit: Habit = {}): string => {
  if (!Number.isFinite(value)) return '–';
  if (unit === 'ohm' && habit.ohm === 'letter' && value >= 0)
    return formatCode(value, 'ohm', digitsOf(habit));
  const { figures, scale } = printedAlone(value, unit, habit);
  return withUnit(signed(value, figures, habit), scale);
};

/** What is read back of a printed value, without the sign. */
const readBack = ({ figures, scale }: Printed): number =>
  timesTen(figures.figures, figures.power + scale.power) * (scale.factor ?? 1);

const areFarApart = (one: Printed, other: Printed): boolean => {
  if (one.figures.figures === 0 || other.figures.figures === 0) return false;
  // Whole numbers both, so that a ratio of just a thousand comes out as such.
  const [low, high] = [one, other].map(
    ({ figures, scale }) => figures.figures * (scale.factor ?? 1),
  ) as [number, number];
  const power = one.figures.power + one.scale.power - other.figures.power - other.scale.power;
  const ratio = timesTen(low / high, power);
  return ratio >= FAR_APART || ratio <= 1 / FAR_APART;
};

const isAroundNought = ({ min, typ, max }: Range): boolean => min === -max && typ === 0;

/**
 * A range as people read it: `4.7 nF`, `4.5–4.9 nF`, `−40 to 85 °C`, `±10 %`. Both ends have the
 * same prefix unless they are far apart or the smaller would begin with 0.0 beside a whole number. The typical value is
 * not printed unless it is all there is.
 */
export const formatQuantity = ({ min, typ, max }: Range, unit: Unit, habit: Habit = {}): string => {
  if (min === max) return formatValue(typ, unit, habit);
  const eachAlone = (one: number, other: number, joint = ' to '): string => {
    const [low, high] = [formatValue(one, unit, habit), formatValue(other, unit, habit)];
    return low === high ? low : low + joint + high;
  };
  if (!Number.isFinite(min) || !Number.isFinite(max)) return eachAlone(min, max);
  if (unit === 'ohm' && habit.ohm === 'letter') return eachAlone(min, max, '–');
  const largest = Math.max(Math.abs(min), Math.abs(max));
  const scale = printScale(largest, unit, habit);
  const digits = digitsOf(habit);
  const figuresAt = (end: number): Figures =>
    figuresIn(Math.abs(end) === largest ? lifted(end, scale, unit, habit) : end, scale, digits);
  const [low, high] = [figuresAt(min), figuresAt(max)];
  const [from, to] = [signed(min, low, habit), signed(max, high, habit)];
  if (from === to) return withUnit(to, scale);
  if (isAroundNought({ min, typ, max })) return `±${withUnit(to, scale)}`;
  const areApart = (one: number, other: number): boolean =>
    areFarApart(printedAlone(one, unit, habit), printedAlone(other, unit, habit));
  if (areApart(min, max)) return eachAlone(min, max);
  const [small, smallest, great] = Math.abs(min) < largest ? [min, low, high] : [max, high, low];
  if (isSmallBeside(smallest, great) && printScale(small, unit, habit) !== scale)
    return eachAlone(min, max);
  // Years round otherwise than days: what together would be read back as far apart is printed so.
  const [least, most] = [
    Math.sign(min) * readBack({ figures: low, scale }),
    Math.sign(max) * readBack({ figures: high, scale }),
  ];
  if (scale.factor !== undefined && areApart(least, most)) return eachAlone(least, most);
  // A dash beside a minus sign would be read as one.
  return withUnit(min < 0 ? `${from} to ${to}` : `${from}–${to}`, scale);
};
