import {
  exactly,
  isChip,
  kindPairing,
  readTolerance,
  ruleOf,
  type Catalogue,
  type Range,
  type Reading,
  type Unit,
} from '../../engine/index.ts';
import type { KindPositionRow, KindRow, KindTypeRow } from '../../schemas/kinds.ts';
import { findNamesAmong } from '../../search/names.ts';
import { saidAmong, saidMost } from '../../search/said-names.ts';
import { ratingMeasure, valueMeasure } from '../../substitution/kind-address.ts';
import { toleranceTold } from '../../substitution/told-by-marking.ts';
import {
  readRange,
  readToleranceText,
  withoutFraction,
  type Measure,
} from '../../substitution/typed-numbers.ts';
import type { Line } from '../model/job.ts';
import { askWhichValue } from './ask-value.ts';
import { unsureOf, type Ask } from './ask.ts';
import { kindWord } from './kinds.ts';
import { atDesignators, cellsOf, type PartOfLine } from './part-of-line.ts';
import { usualPlace } from './usually.ts';
import { COMPENSATING, isSteady, slopeOf } from './slope.ts';

/** What a marking tells of a part whose value is in a unit; only resistances are read so far. */
const told = (
  reading: Reading | undefined,
  { unit, rating_unit: ratingUnit }: KindRow,
): Pick<PartOfLine, 'value' | 'tolerance' | 'rating' | 'taper' | 'gangs'> => {
  const typ = unit === 'ohm' ? reading?.resistance?.typ : undefined;
  if (reading === undefined || typ === undefined) return {};
  const { power } = reading;
  return {
    value: exactly(typ),
    tolerance: toleranceTold(reading),
    rating: ratingUnit === 'W' ? power && exactly(power.typ) : undefined,
    taper: reading.taper,
    gangs: reading.gangs,
  };
};

/** Whether a text is a number in another unit, such as volts where watts are read. */
const isOther = (text: string): boolean => /\d\s*(?:k?V|mA|A)\b/u.test(text);

/** What was typed, and what a settled reading adds where nothing was. */
const partOf = (kind: KindRow, line: Line, reading: Reading | undefined): PartOfLine => {
  const { rejected, take } = cellsOf(line);
  const number = (field: 'value' | 'volts', measure: Measure): Range | undefined =>
    take(field, (text) => readRange(withoutFraction(text), measure));
  const marked = told(reading, kind);
  const value =
    (kind.unit === '' ? undefined : number('value', valueMeasure(kind))) ?? marked.value;
  const tolerance = take('tolerance', (text) => readToleranceText(text, { of: 'resistor' }));
  // A voltage in the column of ratings says nothing about its power.
  const isRead = kind.rating_unit !== '' && !isOther(line.volts);
  const rating = (isRead ? number('volts', ratingMeasure(kind)) : undefined) ?? marked.rating;
  const position = line.position === '' ? undefined : line.position;
  return atDesignators(
    {
      designators: [],
      family: 'kind',
      kind: kind.id,
      type: line.type === '' ? undefined : line.type,
      value,
      tolerance: tolerance ?? (line.value.trim() === '' ? marked.tolerance : undefined),
      rating,
      ...(marked.taper === undefined ? {} : { taper: marked.taper }),
      ...(marked.gangs === undefined ? {} : { gangs: marked.gangs }),
      position,
      slice: position,
      rejected,
    },
    line.designators,
  );
};

const takes = (low: number | undefined, high: number | undefined, { value }: PartOfLine): boolean =>
  value === undefined || (value.typ >= (low ?? 0) && value.typ <= (high ?? Infinity));

interface OfKind {
  types: KindTypeRow[];
  positions: KindPositionRow[];
}

const rowsOf = (catalogue: Catalogue, kind: KindRow): OfKind => ({
  types: Object.values(catalogue.kindTypes).filter((row) => row.kind === kind.id),
  positions: Object.values(catalogue.kindPositions).filter((row) => row.kind === kind.id),
});

const askValue = (kind: KindRow, part: PartOfLine, reading: Reading | undefined): Ask[] =>
  askWhichValue(part.value?.typ, told(reading, kind).value, kind.unit as Unit);

/**
 * Types that words of the list name. One that is offered only where it is asked for, as a fusible part,
 * leaves no others, whatever film or wire is named beside it; one that follows the temperature may be
 * told by its slope alone.
 */
const typesSaid = ({ types }: OfKind, words: string): KindTypeRow[] => {
  const follows = ({ duties }: KindTypeRow): boolean => duties.includes(COMPENSATING);
  const following = slopeOf(words) === 'rises' ? types.filter(follows) : [];
  if (following.length > 0) return following;
  const meant = isSteady(words) ? types.filter((row) => !follows(row)) : types;
  const strict = saidMost(
    meant.filter((row) => row.only_asked),
    words,
  );
  return strict.length > 0 ? strict : saidMost(meant, words);
};

/** How far the usual rating of a type is from what is marked, as a factor on a log scale. */
const apart = ({ old_rating: usual }: KindTypeRow, { rating }: PartOfLine): number =>
  usual === undefined || rating === undefined ? 0 : Math.abs(Math.log(rating.typ / usual));

/** Whether a type is sold on pads alone: of old boards it is the last that one thinks of. */
const isOfChips = (catalogue: Catalogue, { id }: KindTypeRow): boolean => {
  const offers = catalogue.kindOffers.filter(({ type }) => type === id);
  return offers.length > 0 && offers.every(({ style }) => isChip(catalogue, style));
};

/** Whether the parts of a type are looser than what is marked, so that it was none of them. */
const isLooser = (
  catalogue: Catalogue,
  { old_tolerance: usual }: KindTypeRow,
  { tolerance }: PartOfLine,
): boolean =>
  usual !== '' &&
  tolerance !== undefined &&
  readTolerance(usual).plus > ruleOf(catalogue, 'looser-type') * tolerance.plus;

/** How far the usual tolerance of a type is from what is marked, as a factor on a log scale. */
const unlike = ({ old_tolerance: usual }: KindTypeRow, { tolerance }: PartOfLine): number =>
  usual === '' || tolerance === undefined || tolerance.plus === 0
    ? 0
    : Math.abs(Math.log(readTolerance(usual).plus / tolerance.plus));

const askType = (
  catalogue: Catalogue,
  kind: KindRow,
  rowsOf: OfKind,
  part: PartOfLine,
  words: string,
): Ask[] => {
  const { types, positions } = rowsOf;
  if (types.some(({ id }) => id === part.type)) return [];
  const said = part.type ?? '';
  const named = [
    ...(said === '' ? [] : findNamesAmong(types, positions, said).types),
    ...typesSaid(rowsOf, words),
  ];
  const inValue = types.filter((row) => takes(row.old_min, row.old_max, part));
  // Of a value that none is usually made in, as a shunt of milliohms, all may be meant.
  // One that is sold only where it is asked for is none that one takes the old part for unasked.
  const made = (inValue.length > 0 ? inValue : types).toSorted(
    (a, b) =>
      Number(a.only_asked) - Number(b.only_asked) ||
      Number(isLooser(catalogue, a, part)) - Number(isLooser(catalogue, b, part)) ||
      Number(isOfChips(catalogue, a)) - Number(isOfChips(catalogue, b)) ||
      Number(a.seldom_met) - Number(b.seldom_met) ||
      apart(a, part) - apart(b, part) ||
      unlike(a, part) - unlike(b, part),
  );
  const isStrict = named.some((row) => row.only_asked);
  const rows = [...new Set([...named, ...(isStrict ? [] : made)])];
  const question = `What type of ${kind.name} is it?`;
  const isNoType = said === '' || kindWord(catalogue, said)?.kind === kind.id;
  return [
    {
      about: 'type',
      isFirstLikely: true,
      question: isNoType ? question : `${unsureOf(said, named.length > 0)} ${question}`,
      choices: rows.map(({ id, name }) => ({ label: name, set: { type: id } })),
    },
  ];
};

const askPosition = (
  catalogue: Catalogue,
  { types, positions }: OfKind,
  part: PartOfLine,
  words: string,
): Ask[] => {
  if (positions.some(({ id }) => id === part.position)) return [];
  const said = part.position ?? '';
  const isUsual = (row: KindPositionRow): boolean => takes(row.usual_min, row.usual_max, part);
  // The emitter resistor of a tenth of an ohm and that of a kilohm sit in places of their own.
  const named = [
    ...(said === '' ? [] : findNamesAmong(types, positions, said).positions),
    ...saidAmong(positions, words),
  ].toSorted((a, b) => Number(isUsual(b)) - Number(isUsual(a)));
  const type = types.find(({ id }) => id === part.type);
  const met = positions.filter(
    (row) => type === undefined || kindPairing(catalogue, type, row).met,
  );
  // Of a value that is usual nowhere, as 100 MΩ is, all places may be meant.
  const likely = [met.filter(isUsual), met, positions].find(({ length }) => length > 0) ?? [];
  const lateness = usualPlace(catalogue, part, '');
  const sorted = likely.toSorted((a, b) => lateness(a) - lateness(b));
  const rows = [...new Set([...named, ...sorted])];
  return [
    {
      about: 'position',
      question:
        said === ''
          ? 'Where does it sit?'
          : `“${said}” is not a position that is known here. Where does it sit?`,
      choices: rows.map(({ id, name }) => ({ label: name, set: { position: id } })),
    },
  ];
};

/**
 * What a line of a kind besides capacitors means. A position is only ever offered; a type is taken where
 * the words of the list name a single one.
 * @param told the one reading of its marking, if there is one, and the words of the list
 */
export const understoodKind = (
  catalogue: Catalogue,
  kind: KindRow,
  line: Line,
  { reading, words }: { reading: Reading | undefined; words: string },
): { part: PartOfLine; asks: Ask[] } => {
  const rows = rowsOf(catalogue, kind);
  const named = typesSaid(rows, words);
  const read = partOf(kind, line, reading);
  const part = named.length === 1 ? { ...read, type: read.type ?? named[0]?.id } : read;
  return {
    part,
    asks: [
      ...askValue(kind, part, reading),
      ...askType(catalogue, kind, rows, part, words),
      ...askPosition(catalogue, rows, part, `${words}, ${line.note}`),
    ],
  };
};
