import {
  exactly,
  kindPairing,
  pairing,
  parseQuantity,
  readMarking,
  ruleOf,
  writeQuantity,
  type Catalogue,
  type Reading,
} from '../engine/index.ts';
import { link } from '../components/link.ts';
import { h, type Markup } from '../markup/node.ts';
import { chips } from '../reading/chips.ts';
import { kindQuery } from '../reading/kind-onward.ts';
import { readingQuery, typesThatMayBe } from '../reading/onward.ts';
import type { KindPositionRow } from '../schemas/kinds.ts';
import type { PositionRow } from '../schemas/positions.ts';
import { kindPath } from '../substitution/kind-path.ts';
import { findNamesAmong, namingAll, tellingWords } from './names.ts';

/** A part that a text tells together with where it sits, such as `47uF 25V cathode bypass`. */
export interface PlacedPart {
  /** The text without its place. */
  mark: string;
  /** The reading that the place goes with first. */
  readings: readonly Reading[];
  /** Where it sits by the words of the text, the closest named first. */
  positions: readonly PositionRow[];
  kindPositions: readonly KindPositionRow[];
  /** Volts of the rail it sits on, where the text tells them. */
  rail?: number | undefined;
}

/** More places than this are no answer. */
const MOST_PLACES = 3;

/** A word between a part and its place. */
const BETWEEN = /\s+(?=(?:in|on|at|across|behind|after|for|as|of)\s)/giu;

/** Volts that stand in the words of a place: the 15 of `on a 15V rail`. */
const RAIL = /(?<![\p{L}\p{N}])[-+]?\d+(?:[.,]\d+)?\s*k?V(?![\p{L}\p{N}])/u;

/** A text in two: what is said of the part, and of its place. */
interface Parted {
  mark: string;
  place: string;
}

/** Where words such as `in` part them, the last first. */
const byWordsBetween = (text: string): Parted[] =>
  [...text.matchAll(BETWEEN)]
    .map(({ index }) => ({ mark: text.slice(0, index), place: text.slice(index).trim() }))
    .toReversed();

/** By what a reading of the whole does not understand. */
const byWordsLeft = (text: string, reading: Reading | undefined): Parted[] => {
  const left = new Set(reading?.notUnderstood.flatMap((one) => one.trim().split(/\s+/u)));
  if (left.size === 0) return [];
  // A word such as “de-emphasis” is left over in its parts.
  const isLeft = (word: string): boolean =>
    left.has(word) || word.split(/[^\p{L}\p{N}]+/u).every((part) => left.has(part));
  const words = text.split(/\s+/u);
  return [
    {
      mark: words.filter((word) => !isLeft(word)).join(' '),
      place: words.filter(isLeft).join(' '),
    },
  ];
};

const railIn = (place: string): { words: string; rail?: number | undefined } => {
  const [found] = RAIL.exec(place) ?? [];
  if (found === undefined) return { words: place };
  const volts = parseQuantity(found, 'V');
  const words = place.replace(found, ' ');
  return volts.ok ? { words, rail: Math.abs(volts.value.typ) } : { words };
};

/** The places that a reading may be of, those whose usual values hold its own. */
interface Fitting {
  reading: Reading;
  positions: readonly PositionRow[];
  kindPositions: readonly KindPositionRow[];
}

/** Of the places that are named, those that a part of this reading is met in. */
const fitting = (
  catalogue: Catalogue,
  named: Omit<Fitting, 'reading'>,
  reading: Reading,
): Fitting => {
  const leeway = ruleOf(catalogue, 'beyond-usual');
  const within = (value: number | undefined, low = 0, high = Infinity): boolean =>
    value !== undefined && value >= low / leeway && value <= high * leeway;
  const [farads, ohms] = [reading.capacitance?.typ, reading.resistance?.typ];
  return {
    reading,
    positions: named.positions.filter((row) => within(farads, row.usual_c_min, row.usual_c_max)),
    kindPositions: named.kindPositions.filter(
      (row) =>
        catalogue.kinds[row.kind]?.unit === 'ohm' && within(ohms, row.usual_min, row.usual_max),
    ),
  };
};

/** The places of the best reading, whatever values are usual there. */
const placesOf = (named: Omit<Fitting, 'reading'>, reading: Reading): Fitting => ({
  reading,
  positions: reading.capacitance === undefined ? [] : named.positions,
  kindPositions: reading.resistance === undefined ? [] : named.kindPositions,
});

/** Positions of the kinds of part that a text names, such as `pot`; all where it names none of theirs. */
const ofKindsNamed = (
  { kinds }: Catalogue,
  positions: readonly KindPositionRow[],
  text: string,
): readonly KindPositionRow[] => {
  const words = new Set(tellingWords(text));
  const ofThese = positions.filter(({ kind }) =>
    tellingWords(kinds[kind]?.name ?? '').some((word) => words.has(word)),
  );
  return ofThese.length > 0 ? ofThese : positions;
};

const hasPlaces = ({ positions, kindPositions }: Omit<Fitting, 'reading'>): boolean =>
  positions.length + kindPositions.length > 0;

/** A part of a text in its place: the place tells which of several readings is meant. */
const placed = (catalogue: Catalogue, { mark, place }: Parted): PlacedPart | undefined => {
  const text = `${mark} ${place}`;
  const { words, rail } = railIn(place);
  if (mark.trim() === '' || tellingWords(words).length === 0) return undefined;
  const named = {
    positions: namingAll(Object.values(catalogue.positions), words, text),
    kindPositions: ofKindsNamed(
      catalogue,
      namingAll(Object.values(catalogue.kindPositions), words, text),
      text,
    ),
  };
  if (!hasPlaces(named)) return undefined;
  const readings = readMarking(catalogue, mark);
  const [best] = readings;
  if (best === undefined) return undefined;
  const fits = readings.map((one) => fitting(catalogue, named, one)).find(hasPlaces);
  const { reading, positions, kindPositions } = fits ?? placesOf(named, best);
  if (!hasPlaces({ positions, kindPositions })) return undefined;
  return {
    ...{ mark, rail },
    readings: [reading, ...readings.filter((one) => one !== reading)],
    positions: positions.slice(0, MOST_PLACES),
    kindPositions: kindPositions.slice(0, MOST_PLACES),
  };
};

/**
 * The part and the place that a text tells, if it tells both, and no word besides them.
 * @param reading the best reading of the whole text, where it has one
 */
export const placedPart = (
  catalogue: Catalogue,
  text: string,
  reading: Reading | undefined,
): PlacedPart | undefined => {
  for (const parted of [...byWordsBetween(text), ...byWordsLeft(text, reading)]) {
    const found = placed(catalogue, parted);
    if (found !== undefined) return found;
  }
  return undefined;
};

/** Links to what stands in for a capacitor in a position, by what it may be made of. */
const capacitorLinks = (
  catalogue: Catalogue,
  reading: Reading,
  position: PositionRow,
  rail: number | undefined,
): Markup[] => {
  const named = reading.types.flatMap((id) => catalogue.types[id] ?? []);
  const types = named.length > 0 ? named : typesThatMayBe(catalogue, reading);
  return types
    .filter((type) => pairing(catalogue, type, position).met)
    .map((type) => {
      const query = readingQuery(catalogue, reading, type.id);
      if (rail !== undefined && position.voltage_sense !== 'ac')
        query.set('vdc', writeQuantity(exactly(rail), 'V'));
      return link(`/replace/${type.id}/in/${position.id}/?${query.toString()}`, type.short_name);
    });
};

/** The same of a resistor, trimmer or pot; of those that the mark names, if it names some, as `wirewound`. */
const kindPartLinks = (
  catalogue: Catalogue,
  { mark, reading }: { mark: string; reading: Reading },
  position: KindPositionRow,
): Markup[] => {
  const kind = catalogue.kinds[position.kind];
  const value = reading.resistance?.typ ?? 0;
  if (kind === undefined) return [];
  const met = Object.values(catalogue.kindTypes)
    .filter((type) => type.kind === kind.id && kindPairing(catalogue, type, position).met)
    .filter((type) => value >= (type.old_min ?? 0) && value <= (type.old_max ?? Infinity));
  const { types: named } = findNamesAmong(met, [], mark);
  return met
    .filter((type) => named.length === 0 || named.includes(type))
    .map((type) =>
      link(`${kindPath(kind, type.id, position.id)}${kindQuery(reading)}`, type.short_name),
    );
};

const placeMarkup = ({ id, name }: { id: string; name: string }, links: Markup[]): Markup[] => [
  h(
    'p',
    {},
    link(`/positions/${id}/`, name),
    links.length > 0
      ? ': what stands in there, by what the old part is'
      : ': no such part of this value is met there',
  ),
  ...(links.length > 0 ? [chips(links)] : []),
];

/** Where a part that a text tells with its place leads to. */
export const placedMarkup = (
  catalogue: Catalogue,
  { mark, readings, positions, kindPositions, rail }: PlacedPart,
): Markup[] => {
  const [reading] = readings;
  if (reading === undefined) return [];
  return [
    ...positions.flatMap((position) =>
      placeMarkup(position, capacitorLinks(catalogue, reading, position, rail)),
    ),
    ...kindPositions.flatMap((position) =>
      placeMarkup(position, kindPartLinks(catalogue, { mark, reading }, position)),
    ),
  ];
};
