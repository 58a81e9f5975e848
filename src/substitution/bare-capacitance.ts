import { formatQuantity, inMicrofarads, type Range } from '../engine/index.ts';
import type { TypeRow } from '../schemas/types.ts';
import { PART_LIMITS, readRange, type Read } from './typed-numbers.ts';

/**
 * The microfarads of a number without its unit, which means picofarads elsewhere, where these types were
 * made of so many of those alone: `470` of an electrolytic.
 */
export const meantMicrofarads = (text: string, types: readonly TypeRow[]): Range | undefined => {
  const isMade = ({ typ }: Range): boolean =>
    types.some((row) => typ >= row.old_c_min && typ <= row.old_c_max);
  const micro = inMicrofarads(text);
  const plain = readRange(text, PART_LIMITS.capacitance);
  if (micro === undefined || ('value' in plain && isMade(plain.value))) return undefined;
  return isMade(micro) ? micro : undefined;
};

/** Reads the value of a part of a type; a number that wants its unit is asked for it. */
export const readCapacitance = (text: string, type: TypeRow | undefined): Read<Range> => {
  const micro = meantMicrofarads(text, type === undefined ? [] : [type]);
  if (micro === undefined) return readRange(text, PART_LIMITS.capacitance);
  const meant = formatQuantity(micro, 'F');
  return { message: `The unit is missing: is that ${meant}? Write it behind the number.` };
};
