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
import { namingAll, tellingWords } from './names.ts';

/** A part that a text tells together with where it sits, such as `47uF 25V cathode bypass`. */
export interface PlacedPart {
  /** The text without its place. */
  mark: string;
  readings: readonly Reading[];
  /** Where it sits by the words of the text, the closest named first; capacitors have the first kind. */
  positions: readonly PositionRow[];
  kindPositions: readonly KindPositionRow[];
  /** Volts of the rail it sits on, where the text tells them. */
  rail?: number | undefined;
}

/** More places than this are no answer. */
const MOST_PLACES = 3;

/** A word between a part and its place. */
const BETWEEN = /\s+(?=(?:in|on|at|across|behind|after|for|as|of)\s)/iu;

/** Volts that stand in the words of a place: the 15 of `on a 15V rail`. */
const RAIL = /(?<![\p{L}\p{N}])[-+]?\d+(?:[.,]\d+)?\s*k?V(?![\p{L}\p{N}])/u;

/** A text in two: what is said of the part, and of its place. */
interface Parted {
  mark: string;
  place: string;
}

/** Where a word such as `in` parts them. */
const byWordBetween = (text: string): Parted[] => {
  const at = text.search(BETWEEN);
  return at <= 0 ? [] : [{ mark: text.slice(0, at), place: text.slice(at).trim() }];
};

/** By what a reading of the whole does not understand. */
const byWordsLeft = (text: string, reading: Reading | undefined): Parted[] => {
  const left = new Set(reading?.notUnderstood.flatMap((one) => one.trim().split(/\s+/u)));
  if (left.size === 0) return [];
  const words = text.split(/\s+/u);
  return [
    {
      mark: words.filter((word) => !left.has(word)).join(' '),
      place: words.filter((word) => left.has(word)).join(' '),
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

/** Positions whose usual values hold a capacitance (F) as nearly as old parts keep to them. */
const takingValue = (
  catalogue: Catalogue,
  positions: readonly PositionRow[],
  capacitance: number,
): readonly PositionRow[] => {
  const leeway = ruleOf(catalogue, 'beyond-usual');
  const taking = positions.filter(
    ({ usual_c_min: low, usual_c_max: high }) =>
      capacitance >= low / leeway && capacitance <= high * leeway,
  );
  return taking.length > 0 ? taking : positions;
};

const placed = (catalogue: Catalogue, { mark, place }: Parted): PlacedPart | undefined => {
  const text = `${mark} ${place}`;
  const { words, rail } = railIn(place);
  if (mark.trim() === '' || tellingWords(words).length === 0) return undefined;
  const positions = namingAll(Object.values(catalogue.positions), words, text);
  const kindPositions = namingAll(Object.values(catalogue.kindPositions), words, text);
  if (positions.length === 0 && kindPositions.length === 0) return undefined;
  const readings = readMarking(catalogue, mark);
  const { capacitance, resistance } = readings[0] ?? {};
  const found: PlacedPart = {
    ...{ mark, readings, rail },
    positions:
      capacitance === undefined
        ? []
        : takingValue(catalogue, positions, capacitance.typ).slice(0, MOST_PLACES),
    kindPositions: resistance === undefined ? [] : kindPositions.slice(0, MOST_PLACES),
  };
  return found.positions.length + found.kindPositions.length > 0 ? found : undefined;
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
  for (const parted of [...byWordBetween(text), ...byWordsLeft(text, reading)]) {
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

/** The same of a resistor, trimmer or pot. */
const kindPartLinks = (
  catalogue: Catalogue,
  reading: Reading,
  position: KindPositionRow,
): Markup[] => {
  const kind = catalogue.kinds[position.kind];
  const value = reading.resistance?.typ ?? 0;
  if (kind === undefined) return [];
  return Object.values(catalogue.kindTypes)
    .filter((type) => type.kind === kind.id && kindPairing(catalogue, type, position).met)
    .filter((type) => value >= (type.old_min ?? 0) && value <= (type.old_max ?? Infinity))
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
  { readings, positions, kindPositions, rail }: PlacedPart,
): Markup[] => {
  const [reading] = readings;
  if (reading === undefined) return [];
  return [
    ...positions.flatMap((position) =>
      placeMarkup(position, capacitorLinks(catalogue, reading, position, rail)),
    ),
    ...kindPositions.flatMap((position) =>
      placeMarkup(position, kindPartLinks(catalogue, reading, position)),
    ),
  ];
};
