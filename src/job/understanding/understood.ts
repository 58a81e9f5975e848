import {
  exactly,
  parseQuantity,
  readMarking,
  type Catalogue,
  type Reading,
} from '../../engine/index.ts';
import { withoutName, type Called } from '../../search/said-names.ts';
import { expandDesignators } from '../model/designators.ts';
import type { Line } from '../model/job.ts';
import { askPosition, askSection, askType, wordsBeside } from './ask-capacitor.ts';
import { askWhichValue, isSameValue } from './ask-value.ts';
import type { Ask } from './ask.ts';
import { withoutBareValue } from './bare-value.ts';
import { coloursOf, readingsOfColours, type ReadColourRow } from './colours-of-line.ts';
import { goesByValue, kindOfDevice, kindOfReading, kindTold } from './kind-told.ts';
import { kindMeant, kindWord, usualKind } from './kinds.ts';
import { inWords, toldBy, typedFrom, valueOrdered } from './line-from-reading.ts';
import { withPlainOhms } from './plain-ohms.ts';
import { partAsTyped, type PartOfLine, type Understand } from './part-of-line.ts';
import { loose } from './loose.ts';
import { hasValue, isReadWhole } from './read-whole.ts';
import { withoutSlope } from './slope.ts';
import { hasStrangeUnit } from './strange-unit.ts';
import { familiesOf, knownOf, understoodDevice } from './understood-device.ts';
import { understoodKind } from './understood-kind.ts';

/** What is understood of a line, and what is left to ask. */
export interface Understood {
  part: PartOfLine;
  asks: Ask[];
}

/** Most answers that are offered to one question. */
const MOST_CHOICES = 8;

/** Whether types go with the name of a place that is left out, as that of “ceramic decoupling” does. */
const losesTypes = ([before]: readonly Reading[], [after]: readonly Reading[]): boolean =>
  (before?.types.length ?? 0) > 0 && (after?.types.length ?? 0) === 0;

/** What is read once the name of a place is left out, unless nothing is left or its types go with it. */
const withoutPlaceName = (
  bare: string,
  { marking, readings }: { marking: string; readings: Reading[] },
  read: (text: string) => Reading[],
): Reading[] => {
  const again = bare === marking || bare === '' ? [] : read(bare);
  return again.length > 0 && !losesTypes(readings, again)
    ? withoutOwnWords(bare, again, read)
    : withoutOwnWords(marking, readings, read);
};

const readingsOf = (
  catalogue: Catalogue,
  line: Line,
  readColourRow: ReadColourRow | undefined,
): Reading[] => {
  const { marking, kind, type } = line;
  // What has a resistance as its value is marked as resistors are.
  const isResistance =
    Object.hasOwn(catalogue.kinds, kind) && catalogue.kinds[kind]?.unit === 'ohm';
  const own = isResistance ? 'resistor' : kind;
  const isOther = own !== '' && own !== 'capacitor' && own !== 'resistor';
  if (marking.trim() === '' || isOther) return [];
  const colours = coloursOf(catalogue, line);
  if (colours !== undefined) return readingsOfColours(readColourRow?.(colours) ?? [], own, type);
  const read = (text: string): Reading[] =>
    readMarking(catalogue, text, {
      ...(own === 'capacitor' || own === 'resistor' ? { kind: own } : {}),
      ...(Object.hasOwn(catalogue.types, type) ? { type } : {}),
    });
  const readAsListed = (text: string): Reading[] =>
    own === 'resistor' ? withPlainOhms(text, read(text), read) : read(text);
  const readings = readAsListed(marking);
  if (readings[0]?.notUnderstood.length === 0) return readings;
  // Words such as “emitter bypass” say where it sits, and are not printed on it.
  return withoutPlaceName(
    withoutName(placesOf(catalogue, kind), marking),
    { marking, readings },
    readAsListed,
  );
};

/** Kinds that markings are read as, whose letters tell which of the two a part is that may be either. */
const MARKED_ALIKE: ReadonlySet<string | undefined> = new Set(['capacitor', 'resistor']);

/**
 * Readings of a line; where no kind is said and the marking is not surely of another, those of the kind that
 * the letters of its designators stand for: `2W474J` is a film at C2, and `10K` a resistor at R9.
 */
const readingsByLetters = (
  catalogue: Catalogue,
  line: Line,
  readColourRow: ReadColourRow | undefined,
): Reading[] => {
  const readings = readingsOf(catalogue, line, readColourRow);
  const usual = usualKind(catalogue, expandDesignators(line.designators).list);
  if (line.kind !== '' || usual === undefined || !MARKED_ALIKE.has(usual)) return readings;
  const [best] = readings;
  if (best === undefined || (best.kind !== usual && best.sure === 'sure')) return readings;
  const byLetters = readingsOf(catalogue, { ...line, kind: usual }, readColourRow);
  return byLetters.some((one) => one.kind === usual && hasValue(one)) ? byLetters : readings;
};

/** A word of a list that a reading leaves aside, as no mark of a maker is. */
const OWN_WORD = /^\p{L}{3,}$/u;

/** What is read where words of a list alone make a reading no more than possible: what they leave. */
const withoutOwnWords = (
  text: string,
  readings: Reading[],
  read: (text: string) => Reading[],
): Reading[] => {
  const [best] = readings;
  const words = best?.notUnderstood.filter((word) => OWN_WORD.test(word)) ?? [];
  if (best?.sure !== 'possible' || words.length === 0) return readings;
  const left = words.reduce((rest, word) => rest.replace(word, ' '), text).trim();
  const again = left === '' ? [] : read(left);
  return again.some(hasValue)
    ? again.map((one) => ({ ...one, notUnderstood: [...one.notUnderstood, ...words] }))
    : readings;
};

/** Positions of parts of a kind; of all kinds where it is not known. */
const placesOf = ({ positions, kindPositions }: Catalogue, kind: string): Called[] => [
  ...(kind === '' || kind === 'capacitor' ? Object.values(positions) : []),
  ...Object.values(kindPositions).filter((row) => kind === '' || row.kind === kind),
];

/** Readings that fill the line differently; what only a page about them tells apart counts once. */
const differing = (catalogue: Catalogue, readings: readonly Reading[], line: Line): Reading[] => {
  const said = readings.map((one) => JSON.stringify(typedFrom(catalogue, one, line)));
  return readings.filter((_, index) => said.indexOf(said[index] ?? '') === index);
};

/** The reading that all come to, if it is more than possible. */
const settledOf = (
  catalogue: Catalogue,
  readings: readonly Reading[],
  line: Line,
): Reading | undefined =>
  differing(catalogue, readings, line).length === 1 && readings[0]?.sure !== 'possible'
    ? readings[0]
    : undefined;

/**
 * The kind that is said, or that the type or a settled reading tells; nothing where none does. People
 * say pot and trimmer for each other, so of kinds that go by value the type says which.
 */
const kindOf = (catalogue: Catalogue, { kind, type }: Line, reading?: Reading): string => {
  const ofType = Object.hasOwn(catalogue.kindTypes, type)
    ? catalogue.kindTypes[type]?.kind
    : undefined;
  if (kind !== '') return (Object.hasOwn(catalogue.kinds, kind) ? ofType : undefined) ?? kind;
  if (Object.hasOwn(catalogue.types, type)) return 'capacitor';
  const other = ofType ?? kindOfDevice(catalogue, type);
  if (other !== undefined) return other;
  return reading === undefined
    ? (kindWord(catalogue, type)?.kind ?? '')
    : kindOfReading(catalogue, reading);
};

/** How far beyond the values that a type was made in one may lie that a word for it is still believed. */
const FAR = 10;

/** Whether a type was made in a value or near it: a bead of 4.7 pF is none of tantalum. */
const isNearMade = (catalogue: Catalogue, type: string, farad: number | undefined): boolean => {
  const row = catalogue.types[type];
  if (row === undefined || farad === undefined) return true;
  return farad * FAR >= row.old_c_min && farad <= row.old_c_max * FAR;
};

/** What was typed, and what a settled reading adds where nothing was. */
const filled = (catalogue: Catalogue, line: Line, reading: Reading | undefined): PartOfLine => {
  const told = reading?.kind === 'capacitor' ? toldBy(catalogue, reading, line) : {};
  const kind = kindOf(catalogue, line, reading);
  // What stands for the type of a part of unknown kind does not make a capacitor of it.
  const typed = partAsTyped({ ...line, kind, type: kind === '' ? '' : line.type });
  if (typed.kind !== 'capacitor') return typed;
  const farad = (typed.capacitance ?? told.capacitance)?.typ;
  const isEmpty = (field: 'value' | 'tolerance' | 'volts' | 'type'): boolean =>
    line[field].trim() === '';
  return {
    ...typed,
    ...(isEmpty('value') ? { capacitance: told.capacitance } : {}),
    ...(isEmpty('tolerance') && isEmpty('value') ? { tolerance: told.tolerance } : {}),
    ...(isEmpty('volts') ? { ratedVoltage: told.ratedVoltage, voltageKind: told.voltageKind } : {}),
    ...(isEmpty('type') && isNearMade(catalogue, told.type ?? '', farad)
      ? { type: told.type }
      : {}),
    ...(reading?.safetyClass === undefined ? {} : { safetyClass: reading.safetyClass }),
  };
};

/**
 * Whether nothing but the letters of a line's designators says what it is, and they stand for what has no value
 * of its own: nobody asks of a lamp or a fuse which capacitor it may be, since the kind is asked first.
 */
const isLetteredAsOther = (catalogue: Catalogue, { kind, designators }: Line): boolean => {
  const usual = usualKind(catalogue, expandDesignators(designators).list);
  return kind === '' && usual !== undefined && !goesByValue(catalogue, usual);
};

/** The reading that settles a line; beside letters that stand for something else only a sure one does. */
const settledLine = (
  catalogue: Catalogue,
  readings: readonly Reading[],
  line: Line,
): Reading | undefined => {
  const settled = settledOf(catalogue, readings, line);
  return settled?.sure === 'sure' || !isLetteredAsOther(catalogue, line) ? settled : undefined;
};

/** Whether a reading is of the kind that a line is said to be: nobody asks of a resistor whether it has 55 nF. */
const isOfKind = (catalogue: Catalogue, kind: string, reading: Reading): boolean => {
  const own = catalogue.kinds[kind]?.unit === 'ohm' ? 'resistor' : kind;
  return !MARKED_ALIKE.has(own) || reading.kind === own;
};

const askMarking = (catalogue: Catalogue, line: Line, readings: readonly Reading[]): Ask[] => {
  if (isLetteredAsOther(catalogue, line)) return [];
  // Words such as “Capacitor, polyester” tell a kind that is said already, and no value.
  const isAnswered = line.value.trim() !== '' || (line.kind !== '' && !readings.some(hasValue));
  if (isAnswered || readings.length === 0 || settledOf(catalogue, readings, line) !== undefined)
    return [];
  // What tells a kind and no more, as of `10mH` that it may be a capacitor, answers nothing.
  const several = differing(catalogue, readings, line)
    .filter((reading) => isOfKind(catalogue, line.kind, reading))
    .filter((reading) =>
      Object.keys(typedFrom(catalogue, reading, line)).some((field) => field !== 'kind'),
    );
  if (several.length === 0) return [];
  const choices = several.slice(0, MOST_CHOICES).map((reading) => {
    return { label: inWords(catalogue, reading, line), set: typedFrom(catalogue, reading, line) };
  });
  return [
    {
      about: 'marking',
      question:
        several.length === 1
          ? `“${line.marking}” is not quite clear. Is it this?`
          : `“${line.marking}” may be read in several ways. Which is it?`,
      choices,
    },
  ];
};

const askValue = (part: PartOfLine, reading: Reading | undefined): Ask[] => {
  const marked = reading?.capacitance && exactly(valueOrdered(reading, reading.capacitance));
  return askWhichValue(part.capacitance?.typ, marked, 'F');
};

/** The reading of a marking that names types and no value; nothing for others. */
const ofWordsAlone = (readings: readonly Reading[]): Reading | undefined =>
  readings.some(hasValue) ? undefined : readings[0];

/** The reading that comes to the value which was chosen among several, for the types that it names. */
const chosenOf = (readings: readonly Reading[], { capacitance }: PartOfLine): Reading | undefined =>
  readings.find(
    (one) => capacitance !== undefined && isSameValue(one.capacitance?.typ ?? NaN, capacitance.typ),
  );

/** The words of a list, and what a style that is printed, such as `МЛТ-0,5`, says it is made of. */
const wordsToldBy = (said: Line, reading: Reading | undefined): string =>
  [wordsBeside(said), ...(reading?.evidence.map(({ means }) => means) ?? [])].join(' ');

/** The same for a part of another kind, or one that goes by type number; nothing for the rest. */
const understoodOther = (
  catalogue: Catalogue,
  { said, line }: { said: Line; line: Line },
  settled: Reading | undefined,
): Understood | undefined => {
  const id = kindOf(catalogue, line, settled);
  const kind = Object.hasOwn(catalogue.kinds, id) ? catalogue.kinds[id] : undefined;
  if (kind !== undefined)
    return understoodKind(catalogue, kind, line, {
      reading: settled,
      words: wordsToldBy(said, settled),
    });
  const families = familiesOf(catalogue, id);
  return families.size === 0
    ? undefined
    : understoodDevice(catalogue, families, { ...line, kind: id });
};

/** Whether a value is a number with its unit, or one that goes without. */
const isQuantity = (text: string): boolean =>
  (['F', 'ohm'] as const).some((unit) => parseQuantity(text, unit).ok);

/**
 * A line whose value is no number by itself, such as `100n/63V` or `10k lin`, with it for the marking:
 * many lists have a column for both. What is no marking either stays where it is.
 */
const withMarkedValue = (catalogue: Catalogue, line: Line): Line => {
  const { marking, value } = line;
  if (value.trim() === '' || isQuantity(value)) return line;
  const asMarked = (text: string): { marked: Line; readings: Reading[] } => {
    const marked = { ...line, marking: text, value: '' };
    return { marked, readings: readingsOf(catalogue, marked, undefined) };
  };
  const alone = asMarked(value);
  if (hasStrangeUnit(value, line.kind, alone.readings)) return line;
  if (marking.trim() === '') return alone.readings.some(hasValue) ? alone.marked : line;
  // A column that describes the part: `4u7 35V` and `tantalum`. It may as well be what is printed.
  const isPrinted = readingsOf(catalogue, { ...line, value: '' }, undefined).some(hasValue);
  if (isPrinted || !isReadWhole(alone.readings)) return line;
  const both = asMarked(`${value} ${marking}`);
  const isClear = settledOf(catalogue, both.readings, both.marked)?.capacitance !== undefined;
  return isClear ? both.marked : alone.marked;
};

/** A line of a resistor, as it is read for its value. */
const withoutSlopes = (said: Line, kind: string): Line =>
  kind === 'resistor'
    ? { ...said, marking: withoutSlope(said.marking), value: withoutSlope(said.value) }
    : said;

/** The kind of a type that was chosen; nothing where none is, or it is one of a capacitor. */
const kindOfType = ({ kindTypes }: Catalogue, type: string): string =>
  Object.hasOwn(kindTypes, type) ? (kindTypes[type]?.kind ?? '') : '';

/**
 * What a line means. What is typed holds; a marking that reads in one way fills what is not typed.
 * Whatever is not sure is asked, and a position is only ever offered. Never throws.
 * @param readColourRow reads markings that are a row of colours; without it they stay unread
 */
export const understoodLine = (
  catalogue: Catalogue,
  said: Line,
  readColourRow?: ReadColourRow,
): Understood => {
  const typedKind = kindMeant(catalogue, said.kind);
  const told = typedKind === '' ? kindTold(catalogue, said) : undefined;
  const kind = told ?? (typedKind === '' ? kindOfType(catalogue, said.type) : typedKind);
  const line = withMarkedValue(catalogue, { ...withoutSlopes(said, kind), kind });
  const readings = loose(catalogue, kind, readingsByLetters(catalogue, line, readColourRow));
  const settled = settledLine(catalogue, readings, line);
  const other = understoodOther(catalogue, { said, line }, settled);
  const isKindSaid = line.kind !== '';
  if (other !== undefined)
    return {
      part: { ...other.part, isKindSaid },
      asks: [...askMarking(catalogue, line, readings), ...other.asks],
    };
  const typed = filled(catalogue, line, settled);
  const { part, asks: askBare } =
    typed.kind === 'capacitor'
      ? withoutBareValue(catalogue, { ...said, value: line.value }, typed)
      : { part: typed, asks: [] };
  const asks = [
    ...askMarking(catalogue, line, readings),
    ...askBare,
    ...askValue(part, settled),
    ...askSection(part, settled),
  ];
  if (part.kind === 'capacitor')
    asks.push(
      ...askType(
        catalogue,
        said,
        part,
        settled ?? ofWordsAlone(readings) ?? chosenOf(readings, part),
      ),
      ...askPosition(catalogue, said, part),
    );
  return { part: { ...part, isKindSaid }, asks };
};

/** The same for `planJob`: the part with its questions. */
export const understandWith =
  (catalogue: Catalogue, readColourRow?: ReadColourRow): Understand =>
  (line) => {
    const { part, asks } = understoodLine(catalogue, line, readColourRow);
    const isOther = part.family === undefined && part.kind !== '' && asks.length === 0;
    return { ...part, asks, ...(isOther ? { known: knownOf(catalogue, line) } : {}) };
  };
