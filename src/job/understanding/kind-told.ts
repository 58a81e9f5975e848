import { parseQuantity, readMarking, type Catalogue, type Reading } from '../../engine/index.ts';
import type { KnownNumber } from '../../search/known-numbers.ts';
import { typeNumberIn } from '../../search/type-number.ts';
import { expandDesignators } from '../model/designators.ts';
import type { ToldKindRow } from '../../schemas/job.ts';
import type { Line } from '../model/job.ts';
import { kindInWords, kindWord, namesCapacitorsToo, usualKind, withoutPlace } from './kinds.ts';
import { hasValue, isReadWhole } from './read-whole.ts';
import { slopeOf } from './slope.ts';

/** What a parts list calls a device; nothing for what is none. */
export const kindOfDevice = ({ devices }: Catalogue, id: string): string | undefined => {
  const family = devices.devices.find((row) => row.id === id)?.family;
  return devices.families.find((row) => row.id === family)?.kinds[0];
};

/** The row that tells the kind of all numbers of a list, or of all marks of a sort of other parts. */
const toldBy = ({ job: { toldKinds } }: Catalogue, by: ToldKindRow['by'], told: string) =>
  toldKinds.find((row) => row.by === by && row.told === told);

/** What our own words about a number go on with once they have said what it is. */
const MORE_OF_IT = / (?:such as|with|or|for|of|in|that) |[,;]/u;

/** The kind that words about a number name; what is in the part, or what else it may be, does not count. */
const kindOfWords = (catalogue: Catalogue, about: string): string | undefined =>
  kindInWords(catalogue, about.split(MORE_OF_IT)[0] ?? '');

/** What a parts list calls a number without a page: a driver with diodes in it is no diode. */
const kindOfKnown = (catalogue: Catalogue, { list, what }: KnownNumber): string | undefined => {
  const inWords = kindOfWords(catalogue, what);
  const row = toldBy(catalogue, 'list', list);
  return row === undefined || row.rather.some((kind) => kind === inWords) ? inWords : row.kind;
};

/** Whether a kind goes by a value, as capacitors do. */
export const goesByValue = ({ kinds }: Catalogue, kind: string): boolean =>
  kind === 'capacitor' || Object.hasOwn(kinds, kind);

/** A text of a line, how it may be read as a capacitor or resistor, and the kind of its designator's letters. */
interface Printed {
  mark: string;
  readings: readonly Reading[];
  usual: string | undefined;
}

/** What a parts list calls the part that has a type number; nothing for what may as well be a value. */
const kindByNumber = (
  catalogue: Catalogue,
  { mark, readings, usual }: Printed,
): string | undefined => {
  const number = typeNumberIn(catalogue, mark, readings);
  if (number === undefined || number.guessed) return undefined;
  const [device] = number.devices;
  // Two letters before the figures are a type's, though a value may be read out of them as well; and what
  // letters such as D and IC stand for has a number before it has a value.
  const isNumber = device !== undefined && /^\p{L}{2}/u.test(mark.trim());
  const hasNumbers = usual !== undefined && !goesByValue(catalogue, usual);
  if (!number.sure && !isNumber && !hasNumbers) return undefined;
  const [known] = number.known;
  if (device !== undefined) return kindOfDevice(catalogue, device.id);
  return known === undefined
    ? kindOfWords(catalogue, number.system?.names ?? '')
    : kindOfKnown(catalogue, known);
};

/** The kind that a mark of another part tells, such as `10 mH` and `T 0,8A`. */
const kindByMark = (
  catalogue: Catalogue,
  { readings: [best], usual }: Printed,
): string | undefined => {
  const rows = best?.others?.flatMap((what) => toldBy(catalogue, 'mark', what) ?? []) ?? [];
  return rows.find(({ unlettered }) => !unlettered || usual === undefined)?.kind;
};

/** The kind that the style which is printed on a resistor tells, such as `СП5-2` of a trimmer. */
const kindByStyle = (catalogue: Catalogue, mark: string): string | undefined => {
  const [best] = readMarking(catalogue, mark, { kind: 'resistor' });
  const kind = kindOfWords(catalogue, best?.construction ?? '');
  return isSetByHand(catalogue, kind) ? kind : undefined;
};

/** Whether a text is a value that only capacitors have, such as `100 µF 63 V`. */
const isCapacitance = (catalogue: Catalogue, text: string): boolean => {
  const readings = readMarking(catalogue, text);
  const [best] = readings;
  return (
    isReadWhole(readings) &&
    best?.sure !== 'possible' &&
    readings.every(({ kind }) => kind === 'capacitor')
  );
};

/** Whether a kind has a wiper: the letters of designators of presets stand for panel controls as well. */
const isSetByHand = ({ kinds }: Catalogue, kind: string | undefined): boolean =>
  kind !== undefined && (kinds[kind]?.wiper ?? '') !== '';

/** The kind of what is turned by whoever uses it, which alone has a taper. */
const panelKind = ({ kinds }: Catalogue): string | undefined =>
  Object.values(kinds).find(({ wiper }) => wiper === 'panel')?.id;

/** The kind that a reading tells. */
export const kindOfReading = (catalogue: Catalogue, { kind, taper }: Reading): string =>
  (taper === undefined ? undefined : panelKind(catalogue)) ?? kind;

/** What is typed as a part that goes by value, but bought in a way of its own. */
const OF_ITS_OWN: ReadonlySet<string> = new Set(['other', 'resistor-network']);

/**
 * The kind of a value that is named beside another thing, as in `C302 470/25 regulator out`: the one that
 * its designator stands for, or that of a sure capacitance; nothing where the word may be meant.
 */
const kindBeside = (
  catalogue: Catalogue,
  designators: string,
  inWords: string,
  texts: readonly string[],
): string | undefined => {
  if (inWords === '' || goesByValue(catalogue, inWords) || OF_ITS_OWN.has(inWords))
    return undefined;
  const usual = usualKind(catalogue, expandDesignators(designators).list);
  if (usual === undefined)
    return texts.some((text) => isCapacitance(catalogue, text)) ? 'capacitor' : undefined;
  if (!goesByValue(catalogue, usual)) return undefined;
  const kind = usual === 'capacitor' ? 'capacitor' : 'resistor';
  const best = texts
    .flatMap((text) => readMarking(catalogue, text, { kind }).slice(0, 1))
    .find((reading) => reading.kind === kind && hasValue(reading));
  if (best === undefined) return undefined;
  // The letters of resistors and of presets stand for panel controls as well.
  return (best.taper !== undefined && panelKind(catalogue)) || usual;
};

/** A frequency, which is no value of a resistor. */
const HERTZ = /\d\s*[kM]?Hz(?!\p{L})/iu;

/** The kind that is told by thousands of ppm, which no capacitor is asked for. */
const kindBySlope = (
  catalogue: Catalogue,
  designators: string,
  texts: readonly string[],
): string | undefined => {
  const slope = texts.map(slopeOf).find(Boolean);
  const usual = usualKind(catalogue, expandDesignators(designators).list) ?? 'resistor';
  if (slope === undefined || usual === 'capacitor') return undefined;
  // A resonator is as loose as a resistor that follows the temperature is steep.
  const isTuned = texts.some((text) => HERTZ.test(text));
  return slope === 'rises' && usual === 'resistor' && !isTuned ? usual : 'other';
};

/** What parts go by whose letters tell which of two kinds a value is of. */
const UNITS_OF: Readonly<Record<string, 'F' | 'ohm' | undefined>> = {
  capacitor: 'F',
  resistor: 'ohm',
};

/** Whether the letters of designators stand for capacitors. */
const isOfCapacitors = (catalogue: Catalogue, designators: string): boolean =>
  usualKind(catalogue, expandDesignators(designators).list) === 'capacitor';

/**
 * Whether a part that letters such as VR and P stand for has a taper, as panel controls have and presets do
 * not say. At letters of fixed resistors all readings have to have one: a letter may be a tolerance.
 */
const isTurned = (
  catalogue: Catalogue,
  usual: string | undefined,
  texts: readonly string[],
): boolean => {
  if (usual !== 'resistor' && !isSetByHand(catalogue, usual)) return false;
  return texts.some((text) => {
    const readings = readMarking(catalogue, text, { kind: 'resistor' });
    const isTapered = ({ taper }: Reading): boolean => taper !== undefined;
    return usual === 'resistor'
      ? readings.length > 0 && readings.every(isTapered)
      : readings.slice(0, 1).some(isTapered);
  });
};

/** Whether a part is a capacitor though words beside it name another kind. */
const isCapacitorAllTheSame = (
  catalogue: Catalogue,
  inWords: string,
  { designators, marking, value }: Line,
): boolean => {
  const isLettered = isOfCapacitors(catalogue, designators);
  // A trimmer at C1 is one of capacitance, whatever of its value can be read.
  if (isLettered && namesCapacitorsToo(catalogue, inWords)) return true;
  // A column that describes may name what a part belongs to.
  if (inWords === 'capacitor' || (marking.trim() === '' && !isLettered)) return false;
  // Trimmers are of resistance and of capacitance, and the value says which.
  const mayBe = isLettered || namesCapacitorsToo(catalogue, inWords);
  return isCapacitance(catalogue, value) || (mayBe && isCapacitance(catalogue, marking));
};

/** The kind that a value in a column of its own tells: that of the letters beside it, where it is one of theirs. */
const kindByValue = (usual: string | undefined, value: string): string | undefined => {
  const unit = UNITS_OF[usual ?? ''];
  // Figures alone may be of any unit.
  if (/^\d*$/u.test(value.trim())) return undefined;
  return unit !== undefined && parseQuantity(value, unit).ok ? usual : undefined;
};

/** What a line says besides its column of kinds, and the kind that the letters of its designators stand for. */
interface Told {
  said: Line;
  texts: readonly string[];
  usual: string | undefined;
}

/** The kind that words beside a value name, where they do not tell its place, or that a taper tells. */
const kindByWords = (catalogue: Catalogue, { said, texts, usual }: Told): string | undefined => {
  const inWords = texts
    .map((text) => kindInWords(catalogue, withoutPlace(catalogue, text)))
    .find((kind) => kind !== undefined);
  const tapered = [...texts, `${said.value} ${said.type}`.trim()];
  const turned = isTurned(catalogue, usual, tapered) ? panelKind(catalogue) : undefined;
  if (inWords === undefined && turned !== undefined) return turned;
  // What a control is wound of is called by the name of a resistor.
  if (inWords === 'resistor' && isSetByHand(catalogue, usual)) return turned ?? usual;
  const byDesignator = kindBeside(catalogue, said.designators, inWords ?? '', texts);
  if (byDesignator !== undefined) return byDesignator;
  return inWords !== undefined && isCapacitorAllTheSame(catalogue, inWords, said)
    ? 'capacitor'
    : inWords;
};

/** The kind that is left to a value in its column, and to a note where the letters stand for nothing. */
const kindByTheRest = (catalogue: Catalogue, { said, usual }: Told): string | undefined => {
  const byValue = said.marking.trim() === '' ? kindByValue(usual, said.value) : undefined;
  // The letters of resistors stand for controls too, where a note is the name of one and nothing else.
  const noted = kindWord(catalogue, said.note)?.kind;
  if (usual === 'resistor' && isSetByHand(catalogue, noted)) return noted;
  if (byValue !== undefined || usual !== undefined) return byValue;
  return kindInWords(catalogue, withoutPlace(catalogue, said.note));
};

/**
 * The kind that a list tells outside its column of kinds: by a type number, by words beside the value that do
 * not tell its place, or by a value beside the letters of such a part.
 */
export const kindTold = (catalogue: Catalogue, said: Line): string | undefined => {
  const { designators, marking, value, type } = said;
  if (Object.hasOwn(catalogue.types, type) || Object.hasOwn(catalogue.kindTypes, type))
    return undefined;
  const texts = [marking, value, type].filter((text) => text.trim() !== '');
  const usual = usualKind(catalogue, expandDesignators(designators).list);
  const byPrint = texts
    .map((mark) => ({ mark, readings: readMarking(catalogue, mark), usual }))
    .flatMap((one) => [kindByNumber(catalogue, one), kindByMark(catalogue, one)])
    .find(Boolean);
  const told = { said, texts, usual };
  return (
    kindBySlope(catalogue, designators, texts) ??
    byPrint ??
    texts.map((text) => kindByStyle(catalogue, text)).find(Boolean) ??
    kindByWords(catalogue, told) ??
    kindByTheRest(catalogue, told)
  );
};
