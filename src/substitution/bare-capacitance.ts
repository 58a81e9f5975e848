import type { Range } from '../engine/index.ts';
import type { TypeRow } from '../schemas/types.ts';
import { PART_LIMITS, readRange, type Read } from './typed-numbers.ts';

/** A number without a unit, as people write the values of electrolytics. */
const BARE = /^\d+(?:[.,]\d+)?$/u;

/**
 * Whether a bare number, which means picofarads elsewhere, is one that these types were made of in
 * microfarads alone: `470` of an electrolytic.
 */
export const isInMicrofarads = (text: string, types: readonly TypeRow[]): boolean => {
  const isMade = (read: Read<Range>): boolean =>
    'value' in read &&
    types.some((row) => read.value.typ >= row.old_c_min && read.value.typ <= row.old_c_max);
  const bare = text.trim();
  return (
    BARE.test(bare) &&
    !isMade(readRange(bare, PART_LIMITS.capacitance)) &&
    isMade(readRange(`${bare} µF`, PART_LIMITS.capacitance))
  );
};

/** Reads the value of a part of a type; a number that wants its unit is asked for it. */
export const readCapacitance = (text: string, type: TypeRow | undefined): Read<Range> =>
  isInMicrofarads(text, type === undefined ? [] : [type])
    ? { message: `The unit is missing: is that ${text.trim()} µF? Write it behind the number.` }
    : readRange(text, PART_LIMITS.capacitance);
