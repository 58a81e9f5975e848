import { readMarking, type Catalogue, type Reading } from '../../engine/index.ts';
import type { KnownNumber } from '../../search/known-numbers.ts';
import { typeNumberIn } from '../../search/type-number.ts';
import { expandDesignators } from '../model/designators.ts';
import type { Line } from '../model/job.ts';
import { kindInWords, namesCapacitorsToo, usualKind, withoutPlace } from './kinds.ts';
import { hasValue, isReadWhole } from './read-whole.ts';
import { slopeOf } from './slope.ts';

/** What a parts list calls a device; nothing for what is none. */
export const kindOfDevice = ({ devices }: Catalogue, id: string): string | undefined => {
  const family = devices.devices.find((row) => row.id === id)?.family;
  return devices.families.find((row) => row.id === family)?.kinds[0];
};

/** What parts lists call all that is in a list of numbers, but for what they have a word of its own for. */
const IN_LIST: Partial<Record<KnownNumber['list'], string>> = { chips: 'ic', logic: 'ic' };

/** What a parts list calls a number without a page: a driver with diodes in it is no diode. */
const kindOfKnown = (catalogue: Catalogue, { list, what }: KnownNumber): string | undefined => {
  const inWords = kindInWords(catalogue, what);
  return inWords === 'regulator' ? inWords : (IN_LIST[list] ?? inWords);
};

/** What a parts list calls the numbers of a register; what is in them or what they may be does not count. */
const kindOfSystem = (catalogue: Catalogue, names: string): string | undefined => {
  const [first = ''] = names.split(/ such as | with | or |[,;]/u);
  return kindInWords(catalogue, first);
};

/** What a parts list calls the part that has a type number; nothing for what may as well be a value. */
const kindByNumber = (catalogue: Catalogue, mark: string): string | undefined => {
  const number = typeNumberIn(catalogue, mark, readMarking(catalogue, mark));
  if (number === undefined || number.guessed) return undefined;
  const [device] = number.devices;
  // Two letters before the figures are a type's, though a value may be read out of them as well.
  if (!number.sure && !(device !== undefined && /^\p{L}{2}/u.test(mark.trim()))) return undefined;
  const [known] = number.known;
  if (device !== undefined) return kindOfDevice(catalogue, device.id);
  return known === undefined
    ? kindOfSystem(catalogue, number.system?.names ?? '')
    : kindOfKnown(catalogue, known);
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

/** The kind of what is turned by whoever uses it, which alone has a taper. */
const panelKind = ({ kinds }: Catalogue): string | undefined =>
  Object.values(kinds).find(({ wiper }) => wiper === 'panel')?.id;

/** The kind that a reading tells. */
export const kindOfReading = (catalogue: Catalogue, { kind, taper }: Reading): string =>
  (taper === undefined ? undefined : panelKind(catalogue)) ?? kind;

/** What goes by a value, and what is typed as such a part but bought in a way of its own. */
const goesByValue = ({ kinds }: Catalogue, kind: string): boolean =>
  kind === 'capacitor' || Object.hasOwn(kinds, kind);
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

/** Whether the letters of designators stand for capacitors. */
const isOfCapacitors = (catalogue: Catalogue, designators: string): boolean =>
  usualKind(catalogue, expandDesignators(designators).list) === 'capacitor';

/** Whether a kind has a wiper: the letters of designators of presets stand for panel controls as well. */
const isSetByHand = ({ kinds }: Catalogue, kind: string | undefined): boolean =>
  kind !== undefined && (kinds[kind]?.wiper ?? '') !== '';

/** Whether a part that letters such as VR and P stand for has a taper, as panel controls have and presets do not say. */
const isTurned = (catalogue: Catalogue, designators: string, texts: readonly string[]): boolean =>
  isSetByHand(catalogue, usualKind(catalogue, expandDesignators(designators).list)) &&
  texts.some((text) => readMarking(catalogue, text, { kind: 'resistor' })[0]?.taper !== undefined);

/** Whether a part is a capacitor though words beside it name another kind. */
const isCapacitorAllTheSame = (
  catalogue: Catalogue,
  inWords: string,
  { designators, marking, value }: Line,
): boolean => {
  // A column that describes may name what a part belongs to.
  const isLettered = isOfCapacitors(catalogue, designators);
  if (inWords === 'capacitor' || (marking.trim() === '' && !isLettered)) return false;
  // Trimmers are of resistance and of capacitance, and the value says which.
  const mayBe = isLettered || namesCapacitorsToo(catalogue, inWords);
  return isCapacitance(catalogue, value) || (mayBe && isCapacitance(catalogue, marking));
};

/**
 * The kind that a list tells outside its column of kinds: by a type number, or by words beside the value
 * that do not tell its place.
 */
export const kindTold = (catalogue: Catalogue, said: Line): string | undefined => {
  const { designators, marking, value, type } = said;
  if (Object.hasOwn(catalogue.types, type) || Object.hasOwn(catalogue.kindTypes, type))
    return undefined;
  const texts = [marking, value, type].filter((text) => text.trim() !== '');
  const bySlope = kindBySlope(catalogue, designators, texts);
  if (bySlope !== undefined) return bySlope;
  const byNumber = texts.map((text) => kindByNumber(catalogue, text)).find(Boolean);
  if (byNumber !== undefined) return byNumber;
  const inWords = texts
    .map((text) => kindInWords(catalogue, withoutPlace(catalogue, text)))
    .find((kind) => kind !== undefined);
  const turned = isTurned(catalogue, designators, texts) ? panelKind(catalogue) : undefined;
  if (inWords === undefined && turned !== undefined) return turned;
  const usual = usualKind(catalogue, expandDesignators(designators).list);
  // What a control is wound of is called by the name of a resistor.
  if (inWords === 'resistor' && isSetByHand(catalogue, usual)) return turned ?? usual;
  const byDesignator = kindBeside(catalogue, designators, inWords ?? '', texts);
  if (byDesignator !== undefined) return byDesignator;
  return inWords !== undefined && isCapacitorAllTheSame(catalogue, inWords, said)
    ? 'capacitor'
    : inWords;
};
