import type { TypeId } from '../catalogue.ts';
import { exactly } from '../quantities/range.ts';
import type { Range } from '../quantities/range.ts';
import type { Lexicon } from './lexicon.ts';
import type { Parse } from './parse.ts';
import type {
  Evidence,
  Reading,
  ReadingKind,
  TemperatureCharacteristic,
  Tolerance,
} from './reading.ts';
import { beyondSeriesOf } from './series-places.ts';
import type { Assumed } from './text.ts';
import { madeUp } from './text.ts';
import type { Content, Meaning, Slot, Token } from './token.ts';
import { weights } from './weights.ts';

type Said<Says extends Content['says']> = Extract<Content, { says: Says }>;

const said = <Says extends Content['says']>(parse: Parse, says: Says): Said<Says>[] =>
  parse.taken
    .map((token) => token.meaning.content)
    .filter((content): content is Said<Says> => content.says === says);

/** The value that a way gives the part, and what it is the value of. */
const valueSaid = (parse: Parse): Said<'capacitance' | 'resistance'> | undefined => {
  const content = parse.value?.meaning.content;
  return content?.says === 'capacitance' || content?.says === 'resistance' ? content : undefined;
};

/** Places that belong to the value, and follow its kind. */
const BESIDE_VALUE: ReadonlySet<Slot | undefined> = new Set(['value', 'tolerance', 'temperature']);

const kindOf = (parse: Parse): ReadingKind => {
  const isResistor =
    parse.value === undefined
      ? said(parse, 'style').length + said(parse, 'power').length > 0
      : valueSaid(parse)?.says === 'resistance';
  return isResistor ? 'resistor' : 'capacitor';
};

/** Whether something beside a bare value says that the part is a resistor. */
const isNamedResistor = ({ bodiesOfKind }: Lexicon, parse: Parse): boolean =>
  parse.value?.meaning.tellsKind === true ||
  parse.taken.some(
    ({ meaning }) =>
      !BESIDE_VALUE.has(meaning.slot) && (meaning.bodies & bodiesOfKind.capacitor) === 0,
  );

/** What two lists of types have in common, an empty one standing for all; nothing if they exclude each other. */
const common = (a: readonly TypeId[], b: readonly TypeId[]): readonly TypeId[] | undefined => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both = a.filter((item) => b.includes(item));
  return both.length === 0 ? undefined : both;
};

/** Bodies that a reading may stand on. */
const bodiesOf = (lexicon: Lexicon, parse: Parse) => {
  const { body } = lexicon.hints;
  const named = body === undefined ? lexicon.bodies.namesOf(parse.bodies) : [body];
  return lexicon.tables.bodies.filter((row) => named.length === 0 || named.includes(row.id));
};

/** Whether a value, F or ohm, is met in a body; a link of no ohms is. */
const inBody = (row: { value_min: number; value_max: number }, value: number): boolean =>
  value === 0 || (value >= row.value_min * 0.999 && value <= row.value_max * 1.001);

const fitsBodies = (lexicon: Lexicon, parse: Parse): boolean => {
  const bodies = bodiesOf(lexicon, parse);
  const value = valueSaid(parse)?.value;
  const volts = said(parse, 'voltage').find((content) => content.rated)?.volts.typ;
  return (
    bodies.length === 0 ||
    bodies.some(
      (row) =>
        (value === undefined || inBody(row, value)) && (volts === undefined || volts <= row.v_max),
    )
  );
};

/** Whether the voltage is lower than parts with such a value have. */
const voltageTooLow = (parse: Parse): boolean =>
  said(parse, 'voltage').some(
    (content) => content.rated && content.volts.typ < (parse.value?.meaning.voltsFrom ?? 0),
  );

/** What the body that the technician sees makes of those that the tokens allow. */
const bodyHinted = ({ hints, bodies, bodiesOfKind }: Lexicon, bits: number): number => {
  if (hints.body === undefined) return 0;
  const hint = bodies.bitsOf([hints.body]);
  if ((hint & bits) === 0) return weights.bodyDiffers;
  const kind = hint & bodiesOfKind.resistor ? bodiesOfKind.resistor : bodiesOfKind.capacitor;
  // Tokens that allow every body of a kind say nothing about the body.
  return (bits & kind) === kind ? 0 : weights.bodyAgrees;
};

/** The same for the origin. */
const originHinted = ({ hints, origins }: Lexicon, bits: number): number => {
  if (hints.origin === undefined || bits === origins.all) return 0;
  const allowed = (origins.bitsOf([hints.origin]) & bits) !== 0;
  return allowed ? weights.originAgrees : weights.originDiffers;
};

/** What it makes of a reading that it is one of a capacitor or of a resistor. */
const kindHinted = (lexicon: Lexicon, parse: Parse): number => {
  const { hints, bodies, bodiesOfKind } = lexicon;
  const value = valueSaid(parse);
  const kind = kindOf(parse);
  const body = hints.body === undefined ? 0 : bodies.bitsOf([hints.body]);
  const known = hints.kind ?? (body & bodiesOfKind.resistor ? 'resistor' : undefined);
  if (known !== undefined) return known === kind ? 0 : weights.kindDiffers;
  return value?.says === 'resistance' && !value.withUnit && !isNamedResistor(lexicon, parse)
    ? weights.resistor
    : 0;
};

/** How well a made-up value agrees with its tolerance. */
const seriesAgrees = ({ places, tables }: Lexicon, parse: Parse): number => {
  const tolerance = said(parse, 'tolerance')[0]?.tolerance;
  const place = places.get(valueSaid(parse)?.figures ?? '');
  const made = madeUp(parse.value?.assumed ?? []) > 0;
  if (!made || place === undefined || tolerance?.unit !== 'fraction') return 0;
  const beyond = beyondSeriesOf(tables.seriesTolerances, place, tolerance.plus);
  return beyond <= 0 ? weights.inSeriesOfTolerance : beyond * weights.beyondSeriesOfTolerance;
};

/** How well a parse holds together, with what is known about the part. */
export const scoreOf = (lexicon: Lexicon, parse: Parse): number =>
  parse.score +
  (parse.value === undefined ? weights.noValue : 0) +
  (fitsBodies(lexicon, parse) ? 0 : weights.outsideBody) +
  (voltageTooLow(parse) ? weights.voltageTooLow : 0) +
  seriesAgrees(lexicon, parse) +
  bodyHinted(lexicon, parse.bodies) +
  originHinted(lexicon, parse.origins) +
  kindHinted(lexicon, parse);

/** Those of some types that the bodies of a reading can be, or all where that leaves none. */
const ofBodies = (lexicon: Lexicon, parse: Parse, types: readonly TypeId[]): TypeId[] => {
  const families = bodiesOf(lexicon, parse).map((row) => row.family);
  const fitting = types.filter((type) => {
    const family = lexicon.types[type]?.family;
    return family === undefined || families.includes(family);
  });
  return fitting.length === 0 ? [...types] : fitting;
};

/** Types that all naming tokens allow; where they exclude each other, safety first, then the rest. */
const typesOf = (lexicon: Lexicon, parse: Parse): TypeId[] => {
  const naming = parse.taken
    .map((token) => token.meaning)
    .filter((meaning) => meaning.types.length > 0);
  const first = ({ slot }: Meaning): number => (slot === 'safety' ? 0 : 1);
  const ordered = naming.toSorted((a, b) => first(a) - first(b));
  const agreed = ordered.reduce<readonly TypeId[] | undefined>(
    (types, meaning) => (types === undefined ? undefined : common(types, meaning.types)),
    [],
  );
  const types = agreed ?? [...new Set(ordered.flatMap((meaning) => meaning.types))];
  const { body } = lexicon.hints;
  const { type } = lexicon.hints;
  if (type !== undefined && (types.length === 0 || types.includes(type))) return [type];
  if (types.length > 0) return ofBodies(lexicon, parse, types);
  const named = lexicon.bodies.namesOf(parse.bodies);
  const bodies = body === undefined ? (named.length === 1 ? named : []) : [body];
  return lexicon.tables.bodies.filter((row) => bodies.includes(row.id)).flatMap((row) => row.types);
};

/** The ends of a value with its tolerance. */
export const withTolerance = (value: number, tolerance: Tolerance | undefined): Range => {
  if (tolerance === undefined) return exactly(value);
  const { minus, plus, unit } = tolerance;
  return unit === 'fraction'
    ? { min: value * (1 - minus), typ: value, max: value * (1 + plus) }
    : { min: Math.max(0, value - minus), typ: value, max: value + plus };
};

/** Largest fall and rise over the temperature span, as fractions. */
const changeOver = (characteristic: TemperatureCharacteristic): { min: number; max: number } => {
  const { capacitanceChange, coefficient, tReference, tMin, tMax } = characteristic;
  if (capacitanceChange !== undefined) return capacitanceChange;
  if (coefficient === undefined) return { min: 0, max: 0 };
  const ends = [tMin - tReference, tMax - tReference].flatMap((difference) => [
    coefficient.min * difference,
    coefficient.max * difference,
  ]);
  return { min: Math.min(0, ...ends), max: Math.max(0, ...ends) };
};

/** The ends of a value over the temperature span, with its tolerance. */
export const overTemperature = (
  value: number,
  tolerance: Tolerance | undefined,
  characteristic: TemperatureCharacteristic,
): Range => {
  const range = withTolerance(value, tolerance);
  const change = changeOver(characteristic);
  return {
    min: Math.max(0, range.min * (1 + change.min)),
    typ: value,
    max: range.max * (1 + change.max),
  };
};

/** A property, left out where it has no value. */
export const given = <Key extends string, Value>(
  key: Key,
  value: Value | undefined,
): Partial<Record<Key, Value>> =>
  value === undefined ? {} : ({ [key]: value } as Record<Key, Value>);

/** What is said of a resistor beside its value. */
const resistorOf = (parse: Parse) => {
  const [style] = said(parse, 'style');
  const watts = said(parse, 'power')[0]?.watts ?? style?.watts;
  return {
    ...given(
      'temperatureCoefficient',
      said(parse, 'coefficient')[0]?.coefficient ?? style?.coefficient,
    ),
    ...given('power', watts === undefined ? watts : exactly(watts)),
  };
};

const valueOf = (parse: Parse, tolerance: Tolerance | undefined) => {
  const value = said(parse, 'capacitance')[0]?.value;
  const resistance = said(parse, 'resistance')[0]?.value;
  const characteristic = said(parse, 'temperature')[0]?.characteristic;
  return {
    ...given('capacitance', value === undefined ? value : withTolerance(value, tolerance)),
    ...given(
      'resistance',
      resistance === undefined ? resistance : withTolerance(resistance, tolerance),
    ),
    ...given('temperatureCharacteristic', characteristic),
    ...given(
      'capacitanceOverTemperature',
      value === undefined || characteristic === undefined
        ? undefined
        : overTemperature(value, tolerance, characteristic),
    ),
  };
};

const voltageOf = (parse: Parse) => {
  const rated = said(parse, 'voltage').find((content) => content.rated);
  return { ...given('ratedVoltage', rated?.volts), ...given('voltageKind', rated?.kind) };
};

const safetyOf = (parse: Parse) => {
  const [safety] = said(parse, 'safety');
  if (safety === undefined) return {};
  return {
    safetyClass: safety.class,
    safetyPulses: {
      ...given('peakInService', safety.peakInService),
      ...given('impulseTest', safety.impulseTest),
    },
  };
};

const sayAssumed = ({ at, as, why }: Assumed, text: string): string =>
  why === 'worn' ? `${text.charAt(at)} made up as ${as}` : `read ${text.charAt(at)} as ${as}`;

/** How a stretch was understood, with what was made up or taken for another in it. */
const evidenceOf = ({ at, end, meaning, assumed }: Token, text: string): Evidence => ({
  text: text.slice(at, end),
  at,
  means: [meaning.means(), ...assumed.map((each) => sayAssumed(each, text))].join('; '),
  source: meaning.source,
  ...(assumed.length === 0 ? {} : { assumed: [...assumed] }),
});

/** Puts a reading together from a parse; how far to trust it is settled among its rivals. */
export const composed = (lexicon: Lexicon, parse: Parse, text: string): Reading => {
  const tolerance = said(parse, 'tolerance')[0]?.tolerance ?? parse.value?.meaning.implies;
  return {
    kind: kindOf(parse),
    ...given('tolerance', tolerance),
    ...valueOf(parse, tolerance),
    ...voltageOf(parse),
    ...resistorOf(parse),
    types: typesOf(lexicon, parse),
    ...given('date', said(parse, 'date')[0]?.dates.join(' or ')),
    ...safetyOf(parse),
    ...given('polarity', said(parse, 'polarity')[0]?.polarity),
    ...given('climate', said(parse, 'climate')[0]?.climate),
    sure: 'possible',
    evidence: parse.taken.map((token) => evidenceOf(token, text)),
    notUnderstood: parse.skipped.map(({ at, end }) => text.slice(at, end)),
    settleBy: [],
  };
};
