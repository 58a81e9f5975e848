import { readMarking, type Catalogue, type Hints, type Reading } from '../../engine/index.ts';
import type { DeviceRow } from '../../schemas/devices.ts';
import type { InPlaceOfRow } from '../../schemas/in-place-of.ts';
import type { KindTypeRow } from '../../schemas/kinds.ts';
import type { TypeRow } from '../../schemas/types.ts';
import { findNamesAmong, shareNamed } from '../names.ts';
import { typeNumberIn } from '../type-number.ts';
import { endingHot } from './ending-hot.ts';

/** What one can tell of a part from the few words that name it in a question. */
export interface Side {
  text: string;
  /** As a marking, where it has figures that are one. */
  reading?: Reading;
  /** What it is by its type number. */
  devices: readonly DeviceRow[];
  /** Types of capacitor that it may be, the likeliest first. */
  types: readonly TypeRow[];
  /** Types of resistor, trimmer or pot that it may be, the likeliest first. */
  kindTypes: readonly KindTypeRow[];
  /** What it says of itself: F, ohm, V, W, degC, and the wider side of a tolerance as a fraction. */
  numbers: Partial<Record<InPlaceOfRow['quantity'], number>>;
  /** How several of it are joined, where it is more than one. */
  joined?: 'parallel' | 'series';
}

const SEVERAL =
  /^(?<count>2|3|4|two|three|four)\s*(?:x|×|of)?\s+(?<each>.+?)\s+in\s+(?<how>parallel|series)$/iu;
const COUNTS: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4 };

/** Several alike of a part, joined, as `two 100u in parallel` says; else one. */
const severalIn = (text: string): { each: string; count: number; joined?: Side['joined'] } => {
  const { count = '', each = text, how } = SEVERAL.exec(text)?.groups ?? {};
  if (how === undefined) return { each: text, count: 1 };
  const joined = how.toLowerCase() === 'series' ? 'series' : 'parallel';
  return { each, count: COUNTS[count.toLowerCase()] ?? Number(count), joined };
};

/** What grows with the number of parts that are joined; else it falls, or stays where neither has it. */
const GROWS = {
  parallel: ['capacitance', 'power'],
  series: ['resistance', 'rated-voltage', 'power'],
} as const satisfies Record<string, readonly InPlaceOfRow['quantity'][]>;
const FALLS = {
  parallel: ['resistance'],
  series: ['capacitance'],
} as const satisfies Record<string, readonly InPlaceOfRow['quantity'][]>;

/** The numbers of several alike that are joined, each of them bearing its share. */
const together = (
  numbers: Side['numbers'],
  count: number,
  joined: NonNullable<Side['joined']>,
): Side['numbers'] => {
  const has = (some: readonly string[], quantity: string): boolean => some.includes(quantity);
  return Object.fromEntries(
    Object.entries(numbers).map(([quantity, value]) => [
      quantity,
      has(GROWS[joined], quantity)
        ? value * count
        : has(FALLS[joined], quantity)
          ? value / count
          : value,
    ]),
  );
};

/** Words that name no type, and would count as ones that are not known. */
const UNITS = /\b(?:ohm|watt)s?\b/giu;

/** As far as more of a name has to tell a type: half of “film resistor” names none. */
const LEAST_SHARE = 0.6;

const typesNamed = ({ types, positions }: Catalogue, text: string): TypeRow[] => {
  const named = findNamesAmong(Object.values(types), Object.values(positions), text).types;
  return shareNamed(text, named, []) < LEAST_SHARE ? [] : named;
};

const kindTypesNamed = ({ kindTypes }: Catalogue, text: string): KindTypeRow[] => {
  const named = findNamesAmong(Object.values(kindTypes), [], text).types;
  return shareNamed(text, named, []) < LEAST_SHARE ? [] : named;
};

type Numbers = Readonly<Record<InPlaceOfRow['quantity'], number | undefined>>;

const told = (numbers: Numbers): Side['numbers'] =>
  Object.fromEntries(Object.entries(numbers).filter(([, value]) => value !== undefined));

const numbersOf = (
  { markings: { safetyClasses } }: Catalogue,
  reading: Reading | undefined,
  degrees: number | undefined,
): Side['numbers'] => {
  const { tolerance, safetyClass } = reading ?? {};
  const approved = safetyClasses.find((row) => row.class === safetyClass);
  return told({
    capacitance: reading?.capacitance?.typ,
    resistance: reading?.resistance?.typ,
    tolerance:
      tolerance?.unit === 'fraction' ? Math.max(tolerance.minus, tolerance.plus) : undefined,
    'rated-voltage': reading?.ratedVoltage?.typ,
    power: reading?.power?.typ,
    'highest-temperature': degrees,
    'line-pulses': approved?.peak_in_service_v,
    'impulse-test': approved?.impulse_test_v,
  });
};

/**
 * What a question says of one of its parts. Never throws.
 * @param hints what the other part is: the 47k beside a trimmer of 50k is no capacitor
 */
export const sideOf = (catalogue: Catalogue, text: string, hints: Hints = {}): Side => {
  const { each, count, joined } = severalIn(text);
  const { degrees, before: mark } = endingHot(catalogue, each);
  const [reading] = readMarking(catalogue, mark, hints);
  const read = (reading?.types ?? []).flatMap((id) => catalogue.types[id] ?? []);
  const number = typeNumberIn(catalogue, mark, reading === undefined ? [] : [reading]);
  const numbers = numbersOf(catalogue, reading, degrees);
  return {
    text,
    ...(reading === undefined ? {} : { reading }),
    devices: number?.devices ?? [],
    types: read.length > 0 ? read : typesNamed(catalogue, mark),
    kindTypes: kindTypesNamed(catalogue, mark.replace(UNITS, '')),
    ...(joined === undefined ? { numbers } : { numbers: together(numbers, count, joined), joined }),
  };
};
