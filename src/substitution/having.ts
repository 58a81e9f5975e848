import type { Assessment, Candidate, Catalogue } from '../engine/index.ts';
import { formatValue } from '../engine/index.ts';
import {
  PART_LIMITS,
  printTolerance,
  readRange,
  readToleranceText,
  takerOf,
  type Rejected,
} from './typed-numbers.ts';

/** Keys of the address that speak of a part that the visitor has and asks about. */
export const havingKeys = {
  type: 'have',
  capacitance: 'have-c',
  tolerance: 'have-tol',
  ratedVoltage: 'have-v',
} as const;

/** Id of the place in a page where that part's findings stand. */
export const havingId = 'have-part';

/** The numbers of a part that the visitor has, as far as they are said; SI units. */
type Said = Pick<Candidate, 'capacitance' | 'tolerance' | 'ratedVoltage'>;

/** The part that an address asks about, and what of it could not be understood, by key. */
export interface Having {
  candidate: Candidate | undefined;
  said: Said;
  rejected: Record<string, Rejected>;
}

/**
 * The part that the visitor has, as an address carries it. What cannot be understood is left open,
 * as is what is not said, and is reported with its text.
 */
export const readHaving = (catalogue: Catalogue, query: URLSearchParams): Having => {
  const { take, rejected } = takerOf(query);
  const type = take(havingKeys.type, (text) =>
    Object.hasOwn(catalogue.types, text)
      ? { value: text }
      : { message: 'There is no such type here; please choose one.' },
  );
  const said: Said = {
    capacitance: take(havingKeys.capacitance, (text) => readRange(text, PART_LIMITS.capacitance))
      ?.typ,
    tolerance: take(havingKeys.tolerance, readToleranceText),
    ratedVoltage: take(havingKeys.ratedVoltage, (text) => readRange(text, PART_LIMITS.ratedVoltage))
      ?.typ,
  };
  const saysNumbers = Object.values(said).some((number) => number !== undefined);
  if (type === undefined && saysNumbers && rejected[havingKeys.type] === undefined) {
    rejected[havingKeys.type] = { text: '', message: 'Please say of what type it is.' };
  }
  return {
    candidate: type === undefined ? undefined : { type, ...said },
    said,
    rejected,
  };
};

/** One thing to say of the part that the visitor has. */
export interface HavingField {
  key: string;
  label: string;
  /** What is written below it: a fault, what it is taken as while open, or a hint. */
  note: string;
  fault: boolean;
}

/** What the visitor has, with what each of its numbers is taken as; the type comes first. */
export const havingFields = (
  { said, rejected }: Having,
  assessment: Assessment | undefined,
): [HavingField, ...HavingField[]] => {
  const part = assessment?.candidate;
  const field = (key: string, label: string, taken: string, open: boolean): HavingField => {
    const fault = rejected[key];
    const until = taken === '' ? '' : ` Until then ${taken} counts.`;
    if (fault !== undefined) return { key, label, note: fault.message + until, fault: true };
    if (!open) return { key, label, note: 'yours', fault: false };
    return { key, label, note: taken === '' ? 'if known' : `taken as ${taken}`, fault: false };
  };
  const type = rejected[havingKeys.type];
  return [
    {
      key: havingKeys.type,
      label: 'Type',
      note: type?.message ?? 'what it is made of',
      fault: type !== undefined,
    },
    field(
      havingKeys.capacitance,
      'Capacitance',
      part === undefined ? '' : formatValue(part.capacitance, 'F'),
      said.capacitance === undefined,
    ),
    field(
      havingKeys.tolerance,
      'Tolerance',
      part === undefined ? '' : printTolerance(part.tolerance),
      said.tolerance === undefined,
    ),
    field(
      havingKeys.ratedVoltage,
      part?.voltageKind === 'ac' ? 'Rated voltage, AC' : 'Rated voltage',
      part === undefined ? '' : formatValue(part.ratedVoltage, 'V'),
      said.ratedVoltage === undefined,
    ),
  ];
};
