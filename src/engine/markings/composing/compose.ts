import { between, exactly } from '../../quantities/range.ts';
import { given } from '../../given.ts';
import type { Lexicon } from '../lexicon/lexicon.ts';
import type { Parse } from '../ways/parse.ts';
import type { Evidence, Reading, Tolerance } from '../meanings/reading.ts';
import { kindOf, said, type Said } from './said.ts';
import { hasSections, sectionsOf } from './sections-of.ts';
import { overTemperature, withTolerance } from './spread.ts';
import type { Assumed } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { isForAc, typesOf } from './types-of.ts';
import { underlineOf } from './underline.ts';

/** What is said of a resistor beside its value. */
const resistorOf = (parse: Parse) => {
  const [style] = said(parse, 'style');
  const watts = said(parse, 'power')[0]?.watts ?? style?.watts;
  return {
    ...given(
      'temperatureCoefficient',
      said(parse, 'coefficient')[0]?.coefficient ?? style?.coefficient,
    ),
    ...given('taper', said(parse, 'taper')[0]?.taper),
    ...given('gangs', said(parse, 'gangs')[0]?.count),
    ...given('construction', style?.construction),
    ...given('power', watts === undefined ? watts : exactly(watts)),
  };
};

/** The value, and what tolerance and temperature make of it. */
const valueOf = (parse: Parse, tolerance: Tolerance | undefined) => {
  const [value] = said(parse, 'capacitance');
  const [resistance] = said(parse, 'resistance');
  const [temperature] = said(parse, 'temperature');
  if (resistance !== undefined) return { resistance: withTolerance(resistance.value, tolerance) };
  const characteristic = temperature?.characteristic;
  if (value === undefined) return given('temperatureCharacteristic', characteristic);
  if (value.from !== undefined) {
    const middle = Number(((value.from + value.value) / 2).toPrecision(12));
    return { capacitance: between(value.from, value.value, middle) };
  }
  return {
    capacitance: withTolerance(value.value, tolerance),
    ...given('temperatureCharacteristic', characteristic),
    ...given(
      'capacitanceOverTemperature',
      characteristic && overTemperature(value.value, tolerance, characteristic),
    ),
  };
};

/** The lowest of several voltages: a part of two classes is rated for each duty by itself. */
const lowest = (voltages: readonly Said<'voltage'>[]): Said<'voltage'> | undefined =>
  voltages.toSorted((a, b) => a.volts.typ - b.volts.typ)[0];

/**
 * The rated voltage; where one of ac is marked beside it, that by itself. No part stands less direct
 * than AC voltage, so a lower one beside it is something else and does not count.
 */
const voltageOf = (parse: Parse) => {
  const rated = said(parse, 'voltage').filter((content) => content.rated);
  const ac = lowest(rated.filter(({ kind }) => kind === 'ac'));
  const other = lowest(
    rated.filter(({ kind, volts }) => kind !== 'ac' && volts.typ >= (ac?.volts.typ ?? 0)),
  );
  const duty = said(parse, 'safety').length > 1 ? lowest(rated) : undefined;
  const main = duty ?? other ?? ac;
  return {
    ...given('ratedVoltage', main?.volts),
    ...given('voltageKind', main?.kind ?? (main && said(parse, 'safety')[0] ? 'ac' : undefined)),
    ...(main === ac || duty !== undefined ? {} : given('acVoltage', ac?.volts)),
  };
};

/** Several sections, or one value with its voltage. */
const ratingsOf = (parse: Parse, tolerance: Tolerance | undefined) => {
  const sections = hasSections(parse) ? sectionsOf(parse, tolerance) : [];
  if (sections.length < 2) return { ...valueOf(parse, tolerance), ...voltageOf(parse) };
  const [first] = sections;
  const volts = first?.ratedVoltage;
  const alike = sections.every(({ ratedVoltage }) => ratedVoltage?.typ === volts?.typ);
  return {
    sections,
    ...given('ratedVoltage', alike ? volts : undefined),
    ...given('voltageKind', isForAc(parse) ? ('ac' as const) : undefined),
  };
};

/** Classes of mains duty, joined: a part may have two. */
const safetyClassOf = (parse: Parse): string | undefined => {
  const safety = said(parse, 'safety');
  return safety.length === 0 ? undefined : safety.map((each) => each.class).join('/');
};

/** What is printed of a part of another kind, in words; nothing beside a value. */
const notReadOf = ({ value, taken }: Parse, text: string): string | undefined => {
  if (value !== undefined) return undefined;
  const named = taken.flatMap(({ at, end, meaning: { content } }) => {
    const written = text.slice(at, end).replace(/\s+/g, ' ');
    if (content.says === 'other') return [`${written}, ${content.is}`];
    return content.says === 'power' ? [`${written}, a power`] : [];
  });
  return named.length === 0 ? undefined : named.join('; ');
};

/** What a mark says of parts of other kinds, each once; nothing where it says none of it. */
const othersOf = (parse: Parse): readonly string[] | undefined => {
  const named = [...new Set(said(parse, 'other').map(({ is }) => is))];
  return named.length === 0 ? undefined : named;
};

const sayAssumed = ({ at, as, why }: Assumed, text: string): string =>
  why === 'worn' ? `${text.charAt(at)} made up as ${as}` : `read ${text.charAt(at)} as ${as}`;

/** How stretches were understood, by their tokens: many ways of one marking share theirs. */
export type Understood = Map<Token, Evidence>;

/** How a stretch was understood, with what was made up or taken for another in it. */
const evidenceFor = ({ at, end, meaning, assumed }: Token, text: string): Evidence => ({
  text: text.slice(at, end),
  at,
  means: [meaning.means(), ...assumed.map((each) => sayAssumed(each, text))].join('; '),
  source: meaning.source,
  ...(assumed.length === 0 ? {} : { assumed: [...assumed] }),
});

const evidenceOf = (understood: Understood, token: Token, text: string): Evidence => {
  const known = understood.get(token) ?? evidenceFor(token, text);
  understood.set(token, known);
  return known;
};

/** Puts a reading together from a parse; how far to trust it is settled among its rivals. */
export const composed = (
  lexicon: Lexicon,
  parse: Parse,
  text: string,
  understood: Understood,
): Reading => {
  const underline = underlineOf(lexicon, parse);
  const tolerance =
    said(parse, 'tolerance')[0]?.tolerance ?? parse.value?.meaning.implies ?? underline.tolerance;
  return {
    kind: kindOf(parse),
    ...given('tolerance', tolerance),
    ...ratingsOf(parse, tolerance),
    ...given('ratedVoltage', underline.volts),
    ...resistorOf(parse),
    types: typesOf(lexicon, parse),
    ...given('date', said(parse, 'date')[0]?.dates.join(' or ')),
    ...given('safetyClass', safetyClassOf(parse)),
    ...given('polarity', said(parse, 'polarity')[0]?.polarity),
    ...given('notRead', notReadOf(parse, text)),
    ...given('others', othersOf(parse)),
    sure: 'possible',
    evidence: [
      ...parse.taken.map((token) => evidenceOf(understood, token, text)),
      ...underline.evidence,
    ].sort((a, b) => a.at - b.at),
    notUnderstood: parse.skipped.map(({ at, end }) => text.slice(at, end)),
    settleBy: [],
  };
};
