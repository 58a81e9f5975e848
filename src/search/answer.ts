import { link } from '../components/link.ts';
import { askedMark } from './asked-mark.ts';
import { pairing, readMarking, type Catalogue, type Habit, type Reading } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { codePath, listedCodes } from '../reading/codes/listed.ts';
import { kindQuery } from '../reading/kind-onward.ts';
import { readingMarkup, unlikelyMarkup } from '../reading/view.ts';
import type { PositionRow } from '../schemas/positions.ts';
import type { TypeRow } from '../schemas/types.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { partInPosition } from '../text/part-in-position.ts';
import { capital, listed } from '../text/words.ts';
import { benchPages } from './bench-words.ts';
import { devicePieces, TYPE_NUMBER } from './device-pieces.ts';
import { answerInPlaceOf } from './in-place-of/answer.ts';
import { kindLinks } from './kinds.ts';
import { placedMarkup, placedPart, type PlacedPart } from './in-its-place.ts';
import { findNames } from './names.ts';
import { isKnown, typeNumberIn, type TypeNumber } from './type-number.ts';

/** Rows that one answer may list of a kind. */
const MOST = { readings: 3, names: 6, pairs: 8, bench: 6 } as const;

const section = (title: string, ...content: Markup[]): Markup =>
  h('section', { class: 'answer-part' }, h('h2', {}, title), ...content);

const linkList = (links: readonly Markup[]): Markup =>
  h('ul', { class: 'plain-list' }, ...links.map((one) => h('li', {}, one)));

const pairLinks = (
  catalogue: Catalogue,
  types: readonly TypeRow[],
  positions: readonly PositionRow[],
): Markup[] =>
  types
    .flatMap((type) =>
      positions
        .filter((position) => pairing(catalogue, type, position).met)
        .map((position) =>
          link(`/replace/${type.id}/in/${position.id}/`, partInPosition(type.name, position.name)),
        ),
    )
    .slice(0, MOST.pairs);

const nameParts = (catalogue: Catalogue, text: string): Markup[] => {
  const { types, positions } = findNames(catalogue, text);
  const pairs = pairLinks(catalogue, types, positions);
  const typeLinks = types
    .slice(0, MOST.names)
    .map((type) => link(`/replace/${type.id}/`, `What replaces ${midSentence(type.name)}`));
  const positionLinks = positions
    .slice(0, MOST.names)
    .map((position) => link(`/positions/${position.id}/`, position.name));
  return [
    ...(pairs.length > 0 ? [section('Stand-ins', linkList(pairs))] : []),
    ...(typeLinks.length > 0 ? [section('Types', linkList(typeLinks))] : []),
    ...(positionLinks.length > 0 ? [section('Positions', linkList(positionLinks))] : []),
  ];
};

/** Parts of other kinds and their positions that a text names, with the value that it says. */
const kindParts = (catalogue: Catalogue, text: string, readings: readonly Reading[]): Markup[] => {
  const read = readings.find(({ resistance }) => resistance !== undefined);
  const query = read === undefined ? '' : kindQuery(read);
  const links = kindLinks(catalogue, text, query).slice(0, MOST.pairs);
  return links.length === 0
    ? []
    : [
        section(
          capital(listed(Object.values(catalogue.kinds).map(({ plural }) => plural))),
          linkList(links.map(([path, name]) => link(path, name))),
        ),
      ];
};

/** Pages that words of the bench lead to, such as hum. */
const benchParts = ({ benchWords }: Catalogue, text: string): Markup[] => {
  const links = benchPages(benchWords, text).slice(0, MOST.bench);
  return links.length === 0
    ? []
    : [section('At the bench', linkList(links.map(({ page, title }) => link(page, title))))];
};

/** Words of a mark that may be codes, having a figure. */
const wordsWithFigures = (mark: string): string[] =>
  mark.split(/\s+/u).filter((word) => /\d/u.test(word));

/**
 * Pages of the codes in a mark: its own, then those of the codes that its readings see in it, or,
 * where it is not read as a whole, of the words in it that are codes by themselves.
 */
const codeLinks = (catalogue: Catalogue, mark: string, readings: readonly Reading[]): Markup[] => {
  const codes = listedCodes(catalogue);
  // A letter beside the resistance of a potentiometer is its taper and no tolerance.
  const leftOut = readings[0]?.taper === undefined ? 'taper' : 'letter';
  const named = (text: string) =>
    codes.find(
      ({ kind, code, also }) => kind !== leftOut && (code === text || also.includes(text)),
    );
  const pageOf = (text: string) => named(text) ?? named(text.toUpperCase());
  const texts = [
    mark,
    ...readings.flatMap(({ evidence }) => evidence.map(({ text }) => text.trim())),
    ...(readings.length === 0 ? wordsWithFigures(mark) : []),
  ];
  const pages = new Set(texts.map(pageOf).filter((page) => page !== undefined));
  return [...pages].map((page) => link(codePath(page), `The code ${page.code}`));
};

/** A text of letters alone is a name rather than a marking, unless the reader is sure of it. */
const looksLikeMarking = (text: string): boolean => /\d|^[A-Za-z]\d?[A-Za-z]$/.test(text);

/** A word of letters alone, which a question has and a marking seldom. */
const WORD = /^\p{L}{3,}$/u;

/**
 * Whether a reading understands as much as it leaves: in `5 band resistor` a 5 that may be 5 pF beside
 * two words tells nobody anything.
 */
const saysMore = ({ sure, evidence, notUnderstood }: Reading): boolean =>
  sure !== 'possible' ||
  notUnderstood.flatMap((text) => text.split(/\s+/u)).filter((word) => WORD.test(word)).length <=
    evidence.length;

/** Whether every character of a reading was taken for what is written. */
const isAsWritten = ({ evidence }: Reading): boolean =>
  evidence.every(({ assumed }) => assumed === undefined);

/**
 * Whether the best reading as a value comes before what a text is as a type number. A device that is
 * only named beside a value waits for the value, as do the form of a number and a guess.
 */
const isValueFirst = (number: TypeNumber | undefined, best: Reading | undefined): boolean => {
  if (best === undefined) return false;
  if (number === undefined) return best.sure !== 'possible';
  if (!isKnown(number) || number.guessed) return best.sure !== 'possible' && isAsWritten(best);
  return number.devices.length === 0 && best.sure === 'sure';
};

/** What the box on the first page says to a text. */
export interface Answered {
  /** What the text itself is: readings of it as a marking, devices that it names. */
  first: Markup[];
  /** Whether that is sure, so that pages with the same words add little. */
  sure: boolean;
  /** Whether that is all, so that pages with the same words would only lead astray. */
  whole: boolean;
  /** Where else it leads to; worked out when it is asked for. */
  rest: () => Markup[];
}

const nothing = (): Markup[] => [];

interface Called {
  name: string;
  also_called: readonly string[];
}

/** Whether a text is what one of the rows is called, or how that begins. */
const calls = (rows: Readonly<Record<string, Called>>, text: string): boolean =>
  Object.values(rows).some(({ name, also_called: others }) =>
    [name, ...others].some((one) => `${one.toLowerCase()} `.startsWith(`${text.toLowerCase()} `)),
  );

/** Whether a text names what resistors, trimmers and pots are or where they sit, and no capacitor's. */
const isOfKind = (
  { types, positions, kindTypes, kindPositions }: Catalogue,
  text: string,
): boolean =>
  (calls(kindTypes, text) || calls(kindPositions, text)) &&
  !calls(types, text) &&
  !calls(positions, text);

/** Whether a text is, or names, a device by its type number. */
const isDevice = (number: TypeNumber | undefined): boolean =>
  number !== undefined && (number.sure || number.devices.length > 0);

const asMarking = (catalogue: Catalogue, readings: readonly Reading[], habit?: Habit): Markup =>
  section('As a marking', ...readings.map((one) => readingMarkup(catalogue, one, habit)));

/** Links to the pages of the codes in a mark. */
const codeParts = (catalogue: Catalogue, mark: string, readings: readonly Reading[]): Markup[] => {
  const codes = codeLinks(catalogue, mark, readings);
  return codes.length > 0 ? [section('Codes', linkList(codes))] : [];
};

/** What is said to a part that is told with its place: what stands in there, then how it is read. */
const placedAnswer = (
  catalogue: Catalogue,
  text: string,
  placed: PlacedPart,
  habit?: Habit,
): Answered => {
  const readings = placed.readings.slice(0, MOST.readings);
  return {
    first: [
      section('Where it sits', ...placedMarkup(catalogue, placed)),
      asMarking(catalogue, readings, habit),
    ],
    sure: readings[0]?.sure === 'sure',
    whole: false,
    rest: () => [...codeParts(catalogue, placed.mark, readings), ...benchParts(catalogue, text)],
  };
};

/** What the box on the first page says to a text, in two turns, the first of them soon known. Never throws. */
export const answerTo = (catalogue: Catalogue, text: string, habit?: Habit): Answered => {
  const trimmed = text.trim();
  if (trimmed === '') return { first: [], sure: false, whole: false, rest: nothing };
  const instead = answerInPlaceOf(catalogue, trimmed, habit);
  if (instead !== undefined)
    return {
      first: [section(instead.title, ...instead.pieces)],
      sure: true,
      whole: true,
      rest: nothing,
    };
  const mark = askedMark(trimmed);
  const all = looksLikeMarking(mark) ? readMarking(catalogue, mark) : [];
  const readings = all.filter(saysMore).slice(0, MOST.readings);
  const number = typeNumberIn(catalogue, mark, readings);
  const placed = isDevice(number) ? undefined : placedPart(catalogue, mark, all[0]);
  if (placed !== undefined) return placedAnswer(catalogue, trimmed, placed, habit);
  const devices = devicePieces(catalogue, mark, number);
  const title = /\d/u.test(mark) ? TYPE_NUMBER : 'Devices';
  const named = devices.length > 0 ? [section(title, ...devices)] : [];
  const folded = number?.sure === true && unlikelyMarkup(catalogue, readings, habit);
  if (folded !== false)
    return { first: [...named, folded], sure: true, whole: false, rest: nothing };
  const read = readings.length > 0 ? [asMarking(catalogue, readings, habit)] : [];
  const isValue = isValueFirst(number, readings[0]);
  const rest = (): Markup[] => {
    const parts = [nameParts(catalogue, trimmed), kindParts(catalogue, trimmed, readings)] as const;
    return [
      ...codeParts(catalogue, mark, readings),
      ...benchParts(catalogue, trimmed),
      ...(isOfKind(catalogue, trimmed) ? parts.toReversed() : parts).flat(),
    ];
  };
  return {
    first: isValue ? [...read, ...named] : [...named, ...read],
    sure: number?.sure === true || readings[0]?.sure === 'sure',
    whole: false,
    rest,
  };
};
