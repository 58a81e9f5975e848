import type { Catalogue } from '../catalogue.ts';
import { writeQuantity, type Unit } from '../quantities/index.ts';
import { mapRising, type Range } from '../quantities/range.ts';

/** Digits of a number in a field: more than any figure is known to. */
const DIGITS = 4;

const rounded = (value: number): number => Number(value.toPrecision(DIGITS));

/** Units that people write with a prefix. */
const PREFIXED: readonly Unit[] = ['F', 'ohm', 's', 'V', 'A', 'Hz', 'H', 'C', 'W'];

const isPowerOfTen = (factor: number): boolean =>
  Math.abs(Math.log10(factor) - Math.round(Math.log10(factor))) < 1e-9;

/**
 * A range as people write it into a field, with a prefix or its unit behind it, so that a field with
 * another unit for bare numbers takes it; nothing for nothing.
 * @param range SI
 * @param word the unit as the tables name it, or the SI unit
 */
export const writtenRange = (
  { units }: Pick<Catalogue, 'units'>,
  range: Range | undefined,
  word: string,
): string | undefined => {
  if (range === undefined) return undefined;
  const row = units[word];
  const unit = (row?.si ?? word) as Unit;
  const factor = row?.factor ?? 1;
  const decimal = isPowerOfTen(factor);
  // Ten years are ten in the field, whatever they are in seconds.
  const short = mapRising(range, (value) =>
    decimal ? rounded(value) : rounded(value / factor) * factor,
  );
  if (!PREFIXED.includes(unit) || !decimal) return `${writeQuantity(short, unit, word)} ${word}`;
  const text = writeQuantity(short, unit);
  return /\p{L}$/u.test(text) ? text : `${text} ${unit}`;
};
