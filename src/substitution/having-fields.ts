import type { TypeId } from '../engine/index.ts';
import { havingTypeKey } from './keys.ts';
import type { Rejected, Taker } from './typed-numbers.ts';

/** What a form asks of a part that the visitor has, whatever kind of part it is. */

/** The part that an address asks about, and what of it could not be understood, by key. */
export interface Having<Candidate> {
  candidate: Candidate | undefined;
  /** Keys of numbers that the visitor gave. */
  said: ReadonlySet<string>;
  rejected: Record<string, Rejected>;
}

/**
 * The part by its type and numbers, as an address carries them. What cannot be understood is left
 * open, as is what is not said, and is reported with its text.
 * @param types those that may be named
 * @param numbers what was read of its numbers, by key
 */
export const havingOf = <Numbers extends object>(
  { take, rejected }: Taker,
  types: Readonly<Record<TypeId, unknown>>,
  numbers: Numbers,
  said: ReadonlySet<string>,
): Having<Numbers & { type: TypeId }> => {
  const type = take(havingTypeKey, (text) =>
    Object.hasOwn(types, text)
      ? { value: text }
      : { message: 'There is no such type here; please choose one.' },
  );
  if (type === undefined && said.size > 0 && rejected[havingTypeKey] === undefined) {
    rejected[havingTypeKey] = { text: '', message: 'Please say of what type it is.' };
  }
  return { candidate: type === undefined ? undefined : { type, ...numbers }, said, rejected };
};

/** One thing to say of the part that the visitor has. */
export interface HavingField {
  key: string;
  label: string;
  /** What is written below it: a fault, what it is taken as while open, or a hint. */
  note: string;
  fault: boolean;
}

/** A number of the part, with what it is taken as while it is open; nothing if that is not known. */
export interface NumberAsked {
  key: string;
  label: string;
  taken: string;
}

/** What the visitor has, with what each of its numbers is taken as; the type comes first. */
export const fieldsOf = (
  { said, rejected }: Pick<Having<unknown>, 'said' | 'rejected'>,
  numbers: readonly NumberAsked[],
): [HavingField, ...HavingField[]] => {
  const field = ({ key, label, taken }: NumberAsked): HavingField => {
    const fault = rejected[key];
    const until = taken === '' ? '' : ` Until then ${taken} counts.`;
    if (fault !== undefined) return { key, label, note: fault.message + until, fault: true };
    if (said.has(key)) return { key, label, note: 'yours', fault: false };
    return { key, label, note: taken === '' ? 'if known' : `taken as ${taken}`, fault: false };
  };
  const type = rejected[havingTypeKey];
  return [
    {
      key: havingTypeKey,
      label: 'Type',
      note: type?.message ?? 'what it is made of',
      fault: type !== undefined,
    },
    ...numbers.map(field),
  ];
};
