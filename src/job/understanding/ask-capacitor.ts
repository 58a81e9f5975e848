import {
  familyBears,
  ruleOf,
  formatValue,
  pairing,
  readTolerance,
  readMarking,
  writeQuantity,
  exactly,
  type Catalogue,
  type Reading,
  type Tolerance,
  type TypeId,
} from '../../engine/index.ts';
import type { PositionRow } from '../../schemas/positions.ts';
import type { TypeRow } from '../../schemas/types.ts';
import { findNames } from '../../search/names.ts';
import { byUse } from '../../search/position-order.ts';
import { saidAmong } from '../../search/said-names.ts';
import { listed } from '../../text/words.ts';
import type { Line } from '../model/job.ts';
import { YEAR } from '../../engine/quantities/si.ts';
import { unsureOf, type Ask } from './ask.ts';
import { kindWord } from './kinds.ts';
import type { PartOfLine } from './part-of-line.ts';
import { isRatherOf, usualPlace } from './usually.ts';
import { FLOAT_ERROR } from '../../engine/quantities/within.ts';

/** What is asked about a capacitor that a line tells in part. */

/** What a list says in words beside values: what a part is, and where it sits. */
export const wordsBeside = ({ marking, value }: Line): string => `${marking}, ${value}`;

const takes = (low: number, high: number, part: PartOfLine): boolean =>
  part.capacitance === undefined || (part.capacitance.typ >= low && part.capacitance.typ <= high);

/** A value within this factor of the least or the most of a type is seldom met in it. */
const SELDOM = Math.sqrt(10);

/** Whether a type is seldom met in a value, or was not made for so few volts. */
const isSeldom = (catalogue: Catalogue, row: TypeRow, part: PartOfLine): boolean => {
  const isPolar = row.polarity === 'polar';
  const isRather = isRatherOf(catalogue, part, row);
  if (isRather !== undefined) return !isRather;
  const value = part.capacitance?.typ;
  const volts = part.ratedVoltage?.typ ?? Infinity;
  // Polar parts were made for as many volts as there were, so for few as well.
  if (!isPolar && volts * ruleOf(catalogue, 'rating-far-below') < row.old_v_typical) return true;
  return value !== undefined && (value < row.old_c_min * SELDOM || value > row.old_c_max / SELDOM);
};

/** A tolerance as one number, a lopsided one as the middle of its sides on a log scale. */
const middleOf = ({ minus, plus }: Tolerance): number => Math.sqrt(Math.max(minus, 0.001) * plus);

/** Whether a marked tolerance is far from the usual one of a type, or lopsided where that is not. */
const isOffTolerance = (
  catalogue: Catalogue,
  { old_tolerance: old }: TypeRow,
  { tolerance }: PartOfLine,
): boolean => {
  if (tolerance === undefined || tolerance.plus <= 0) return false;
  const usual = readTolerance(old);
  const isLopsided = tolerance.plus !== tolerance.minus;
  if (isLopsided && usual.plus === usual.minus) return true;
  const times = middleOf(tolerance) / middleOf(usual);
  return Math.max(times, 1 / times) > ruleOf(catalogue, 'unlike-tolerance') * (1 + FLOAT_ERROR);
};

/**
 * How late a type is offered where only its value speaks for it: what is seldom met in the value or for so
 * few volts or with the tolerance, or made for AC that is not marked, later; what is of today or seldom met at all last.
 */
const lateness = (catalogue: Catalogue, row: TypeRow, part: PartOfLine): number => {
  const isForAc = row.safety_classes.length > 0;
  if (part.voltageKind === 'ac' && isForAc) return 0;
  const isOfToday = row.old_age * YEAR < ruleOf(catalogue, 'old-type-age');
  const isUnlikely = isSeldom(catalogue, row, part) || isOffTolerance(catalogue, row, part);
  return 1 + Number(isUnlikely || isForAc) + 2 * Number(isOfToday || row.seldom_met);
};

const byWords = (catalogue: Catalogue, texts: readonly string[]): readonly TypeId[] =>
  texts.flatMap((text) => kindWord(catalogue, text)?.types ?? []);

/** Types that the column of types may mean: by a word for one, by a mark such as `Keramik N150`, by a name. */
const typesTyped = (catalogue: Catalogue, typed: string): readonly TypeId[] =>
  typed === ''
    ? []
    : [
        ...byWords(catalogue, [typed]),
        ...(readMarking(catalogue, typed, { kind: 'capacitor' })[0]?.types ?? []),
        ...findNames(catalogue, typed).types.map(({ id }) => id),
      ];

/** Types that the words of the list may mean, those that the marking allows, then all of the value. */
const typesOffered = (
  catalogue: Catalogue,
  said: Line,
  part: PartOfLine,
  reading: Reading | undefined,
): TypeRow[] => {
  const unread = reading?.notUnderstood ?? [];
  const inNote = saidAmong(Object.values(catalogue.types), said.note).map(({ id }) => id);
  const typed = new Set([...byWords(catalogue, [said.kind]), ...typesTyped(catalogue, said.type)]);
  const named = new Set([
    ...typed,
    ...byWords(catalogue, [...unread, unread.join(' ')]),
    ...(reading?.types ?? []),
    ...inNote,
  ]);
  const rows = [...named].flatMap((id) => catalogue.types[id] ?? []);
  // A mark may name types that are not made in the value: no bead of tantalum has picofarads.
  const isBelieved = (row: TypeRow): boolean =>
    typed.has(row.id) || takes(row.old_c_min, row.old_c_max, part);
  const believed = rows.filter(isBelieved);
  const doubted = rows.filter((row) => !isBelieved(row));
  // What has a plus sign by a lead is a polar part.
  const made = Object.values(catalogue.types)
    .filter((row) => takes(row.old_c_min, row.old_c_max, part))
    .filter(({ family }) => familyBears(catalogue, family, part.ratedVoltage?.typ ?? 0))
    .filter((row) => reading?.polarity === undefined || row.polarity === 'polar')
    .toSorted((a, b) => lateness(catalogue, a, part) - lateness(catalogue, b, part));
  const others = made.filter((row) => !named.has(row.id));
  // A marking that suggests types leaves no others; words may be used loosely.
  const isTold = reading !== undefined && reading.types.length > 0 && believed.length > 0;
  return [...believed, ...(isTold ? [] : others), ...doubted];
};

/** Of a can, which of its sections a row is: each is bought, and sits, by itself. */
export const askSection = (part: PartOfLine, reading: Reading | undefined): Ask[] => {
  const sections = reading?.sections;
  if (sections === undefined || part.capacitance !== undefined) return [];
  const values = sections.map(({ capacitance }) => capacitance.typ);
  const names = values.map((value) => formatValue(value, 'F'));
  return [
    {
      about: 'value',
      question:
        `A can of ${String(values.length)} sections: ${listed(names)}. Each is replaced by a part of its own: ` +
        'give each a row, such as C1a and C1b, with where it sits. Which one is this row?',
      choices: [...new Set(values)].map((value) => ({
        label: formatValue(value, 'F'),
        set: { value: writeQuantity(exactly(value), 'F') },
      })),
    },
  ];
};

/** Asks which type it is, where that is not known. */
export const askType = (
  catalogue: Catalogue,
  said: Line,
  part: PartOfLine,
  reading: Reading | undefined,
): Ask[] => {
  if (part.type !== undefined && Object.hasOwn(catalogue.types, part.type)) return [];
  const question = 'What type of capacitor is it?';
  const typed = part.type ?? '';
  const isKnown = typesTyped(catalogue, typed).length > 0;
  return [
    {
      about: 'type',
      isFirstLikely: true,
      question: typed === '' ? question : `${unsureOf(typed, isKnown)} ${question}`,
      choices: typesOffered(catalogue, said, part, reading).map(({ id, name }) => ({
        label: name,
        set: { type: id },
      })),
    },
  ];
};

/**
 * Positions where the type is met and the value is usual: those that the words of the list name, then
 * those that one looks up most.
 */
export const askPosition = (catalogue: Catalogue, said: Line, part: PartOfLine): Ask[] => {
  if (part.position !== undefined && Object.hasOwn(catalogue.positions, part.position)) return [];
  const type = part.type === undefined ? undefined : catalogue.types[part.type];
  const isMet = (row: PositionRow): boolean =>
    type === undefined || pairing(catalogue, type, row).met;
  // The bypass of 40 nF in a receiver and that of 40 µF sit in places of their own.
  const isUsual = (row: PositionRow): boolean => takes(row.usual_c_min, row.usual_c_max, part);
  const places = Object.values(catalogue.positions).filter(isMet);
  const named = [
    ...(part.position === undefined ? [] : findNames(catalogue, part.position).positions),
    // A note that is a name and nothing else may be a short one.
    ...saidAmong(places, said.note),
    ...saidAmong(places, `${wordsBeside(said)}, ${said.note}`),
  ].toSorted((a, b) => Number(isUsual(b)) - Number(isUsual(a)));
  const lateness = usualPlace(catalogue, part, type?.polarity ?? '');
  // What is approved for the mains, or made for a motor, sits there before all.
  const [approved = ''] = type?.safety_classes ?? [];
  const isAtHome = ({ safety }: PositionRow): number => Number(safety.includes(approved));
  const usual = Object.values(catalogue.positions)
    .filter(isUsual)
    .filter(isMet)
    .toSorted((a, b) => isAtHome(b) - isAtHome(a) || lateness(a) - lateness(b) || byUse(a, b));
  const rows = [...new Set([...named, ...usual])];
  const question =
    part.position === undefined
      ? 'Where does it sit?'
      : `“${part.position}” is not a position that is known here. Where does it sit?`;
  return [
    {
      about: 'position',
      question,
      choices: rows.map(({ id, name }) => ({ label: name, set: { position: id } })),
    },
  ];
};
