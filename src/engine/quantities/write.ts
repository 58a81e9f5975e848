import { fromSi, shift } from './decimal.ts';
import type { Range } from './range.ts';
import { PREFIXES, type Scale, type Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';
import { scaleOf } from './unit-words.ts';

interface Suffix extends Scale {
  text: string;
}

/** Outside of these powers of ten a row of zeros is harder to read than an exponent. */
const SMALLEST = -7;
const LARGEST = 15;

/** The shortest digits of a number, with its decimal point moved to the left: no digit is lost. */
const digits = (value: number, left: number): string => {
  if (value === 0) return '0';
  const [mantissa, exponent] = Math.abs(value).toExponential().split('e') as [string, string];
  const power = Number(exponent) - left;
  const sign = value < 0 ? '-' : '';
  if (power < SMALLEST || power > LARGEST) return `${sign}${mantissa}e${String(power)}`;
  const figures = mantissa.replace('.', '');
  if (power < 0) return `${sign}0.${'0'.repeat(-power - 1)}${figures}`;
  const part = figures.slice(power + 1);
  return (
    sign + figures.slice(0, power + 1).padEnd(power + 1, '0') + (part === '' ? '' : `.${part}`)
  );
};

/** The prefix letter, or the unit itself, behind the numbers. */
const suffixFor = (largest: number, unit: Unit): Suffix => {
  const { prefixes, prefixed, prefixAlone, usual } = UNIT_FACTS[unit];
  const plain = usual === undefined ? undefined : scaleOf(usual, unit);
  if (prefixes === '') return { text: '', ...(plain ?? { power: 0 }) };
  const base: Suffix = { text: plain?.power === 0 ? '' : (prefixed[0] ?? ''), power: 0 };
  if (largest === 0) return base;
  const ending = prefixAlone ? '' : (prefixed[0] ?? '');
  const steps: Suffix[] = [...prefixes]
    .filter((prefix) => prefix !== 'f')
    .map((prefix) => ({ text: prefix + ending, power: PREFIXES[prefix] ?? 0 }));
  const rising = [...steps, base].sort((a, b) => a.power - b.power);
  const fitting = rising.findLast(({ power }) => shift(largest, -power) >= 1);
  return fitting ?? (rising[0] as Suffix);
};

/**
 * A range in ASCII for an address: `4.7n`, `10..20`, `15..45`, `9.5..10..12n` (lowest, typical,
 * highest). `parseQuantity` with the same `unit` and `bare` reads back the same range, to the last
 * digit for units a power of ten apart.
 *
 * @param range in the SI unit; finite, and not below zero for units that cannot be
 * @param bare the unit of numbers without one where it is not the usual one: `years`
 */
export const writeQuantity = ({ min, typ, max }: Range, unit: Unit, bare?: string): string => {
  const given = bare === undefined ? undefined : scaleOf(bare, unit);
  const largest = Math.max(Math.abs(min), Math.abs(max));
  const suffix = given === undefined ? suffixFor(largest, unit) : { text: '', ...given };
  const { power, factor, offset } = suffix;
  const write = (value: number): string =>
    factor === undefined && offset === undefined
      ? digits(value, power)
      : digits(fromSi(value, suffix), 0);
  if (min === max) return write(typ) + suffix.text;
  const middle = Math.abs(typ - (min + max) / 2) <= 1e-12 * Math.abs(typ);
  const values = middle ? [min, max] : [min, typ, max];
  return values.map(write).join('..') + suffix.text;
};
