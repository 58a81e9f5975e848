import type { TypeId } from '../catalogue.ts';
import { exactly } from '../quantities/range.ts';
import type { Range } from '../quantities/range.ts';
import type { Lexicon } from './lexicon.ts';
import type { Names } from './names.ts';
import type { Parse } from './parse.ts';
import type { Evidence, Reading, TemperatureCharacteristic, Tolerance } from './reading.ts';
import type { Content, Meaning, Token } from './token.ts';
import { weights } from './weights.ts';

type Said<Says extends Content['says']> = Extract<Content, { says: Says }>;

const said = <Says extends Content['says']>(parse: Parse, says: Says): Said<Says>[] =>
  parse.taken
    .map((token) => token.meaning.content)
    .filter((content): content is Said<Says> => content.says === says);

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

const fitsBodies = (lexicon: Lexicon, parse: Parse): boolean => {
  const bodies = bodiesOf(lexicon, parse);
  const value = said(parse, 'capacitance')[0]?.value;
  const volts = said(parse, 'voltage').find((content) => content.rated)?.volts.typ;
  return (
    bodies.length === 0 ||
    bodies.some(
      (row) =>
        (value === undefined || (value >= row.c_min * 0.999 && value <= row.c_max * 1.001)) &&
        (volts === undefined || volts <= row.v_max),
    )
  );
};

/** Whether the voltage is lower than parts with such a value have. */
const voltageTooLow = (parse: Parse): boolean =>
  said(parse, 'voltage').some(
    (content) => content.rated && content.volts.typ < (parse.value?.meaning.voltsFrom ?? 0),
  );

/** What a hint makes of the names that the tokens agree on. */
const hinted = (
  hint: string | undefined,
  names: Names,
  bits: number,
  agrees: number,
  differs: number,
): number => {
  if (hint === undefined || bits === names.all) return 0;
  return (names.bitsOf([hint]) & bits) === 0 ? differs : agrees;
};

/** How well a parse holds together, with what is known about the part. */
export const scoreOf = (lexicon: Lexicon, parse: Parse): number => {
  const { hints } = lexicon;
  const kind = said(parse, 'resistance').length > 0 ? 'resistor' : 'capacitor';
  return (
    parse.score +
    (parse.value === undefined ? weights.noValue : 0) +
    (fitsBodies(lexicon, parse) ? 0 : weights.outsideBody) +
    (voltageTooLow(parse) ? weights.voltageTooLow : 0) +
    hinted(hints.body, lexicon.bodies, parse.bodies, weights.bodyAgrees, weights.bodyDiffers) +
    hinted(
      hints.origin,
      lexicon.origins,
      parse.origins,
      weights.originAgrees,
      weights.originDiffers,
    ) +
    (hints.kind === undefined || hints.kind === kind ? 0 : weights.kindDiffers)
  );
};

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

/** How a stretch was understood, with what was made up or taken for another in it. */
const evidenceOf = ({ at, end, meaning, assumed }: Token, text: string): Evidence => ({
  text: text.slice(at, end),
  at,
  means: meaning.means(),
  source: meaning.source,
  ...(assumed.length === 0 ? {} : { assumed: [...assumed] }),
});

/** Puts a reading together from a parse; how far to trust it is settled among its rivals. */
export const composed = (lexicon: Lexicon, parse: Parse, text: string): Reading => {
  const tolerance = said(parse, 'tolerance')[0]?.tolerance;
  return {
    kind: said(parse, 'resistance').length === 0 ? 'capacitor' : 'resistor',
    ...given('tolerance', tolerance),
    ...valueOf(parse, tolerance),
    ...voltageOf(parse),
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
