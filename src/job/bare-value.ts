import type { Catalogue, Range } from '../engine/index.ts';
import { PART_LIMITS, readRange } from '../substitution/typed-numbers.ts';
import type { Ask } from './ask.ts';
import { kindWord } from './kinds.ts';
import type { Line } from './model.ts';
import type { PartOfLine } from './part-of-line.ts';

/** A number without a unit, as lists write the values of electrolytics. */
const BARE = /^\d+(?:[.,]\d+)?$/u;

/**
 * Whether a bare number, which means picofarads elsewhere, is one that the type which the list says was
 * made of in microfarads alone.
 */
const isInMicrofarads = (catalogue: Catalogue, said: Line, part: PartOfLine): boolean => {
  const text = said.value.trim();
  if (!BARE.test(text)) return false;
  const named = [said.kind, said.type].flatMap((word) => kindWord(catalogue, word)?.types ?? []);
  const isKnown = part.type !== undefined && Object.hasOwn(catalogue.types, part.type);
  const rows = (isKnown ? [part.type ?? ''] : named).flatMap((id) => catalogue.types[id] ?? []);
  const isMade = (range: Range | undefined): boolean =>
    range !== undefined &&
    rows.some((row) => range.typ >= row.old_c_min && range.typ <= row.old_c_max);
  const read = readRange(`${text} µF`, PART_LIMITS.capacitance);
  return 'value' in read && !isMade(part.capacitance) && isMade(read.value);
};

/**
 * A capacitor as it was understood, without its value where that is a bare number which no part of its
 * type can have in picofarads: `470` of an electrolytic. What it may be instead is asked.
 * @param said the line with the words of the list
 */
export const withoutBareValue = (
  catalogue: Catalogue,
  said: Line,
  part: PartOfLine,
): { part: PartOfLine; asks: Ask[] } => {
  if (!isInMicrofarads(catalogue, said, part)) return { part, asks: [] };
  const text = said.value.trim();
  const value = `${text} µF`;
  return {
    part: {
      ...part,
      capacitance: undefined,
      rejected: { ...part.rejected, value: 'no unit is given' },
    },
    asks: [
      {
        about: 'value',
        question: `“${text}” has no unit. Is it this?`,
        choices: [{ label: value, set: { value } }],
      },
    ],
  };
};
