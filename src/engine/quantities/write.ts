import { fromSi, shift } from './decimal.ts';
import type { Range } from './range.ts';
import { PREFIXES } from './unit.ts';
import type { Scale, Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';
import { scaleOf } from './unit-words.ts';

interface Suffix extends Scale {
  text: string;
}

/** Shortest digits that read back as the same number, without a plus sign, which addresses lose. */
const digits = (value: number): string => String(value === 0 ? 0 : value).replace('e+', 'e');

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
  const write = (value: number): string => digits(fromSi(value, suffix));
  if (min === max) return write(typ) + suffix.text;
  const middle = Math.abs(typ - (min + max) / 2) <= 1e-12 * Math.abs(typ);
  const values = middle ? [min, max] : [min, typ, max];
  return values.map(write).join('..') + suffix.text;
};
