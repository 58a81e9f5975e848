import type { TypeId } from '../../catalogue.ts';
import type { Lexicon } from '../lexicon/lexicon.ts';
import type { Parse } from '../ways/parse.ts';
import { isKnown } from '../beside/other-marks.ts';
import { kindOf, said, valueSaid, type Said } from '../composing/said.ts';
import { beyondSeriesOf } from '../lexicon/series-places.ts';
import { isMetInBody } from '../composing/in-body.ts';
import { madeUp } from '../text/text.ts';
import type { Content, Slot } from '../meanings/token.ts';
import { bodiesOf, typesOf } from '../composing/types-of.ts';
import { weights } from '../meanings/weights.ts';
import { FLOAT_ERROR } from '../../quantities/within.ts';

/** How precise resistors with four figures usually are, and the widest that they are, as fractions. */
const PRECISE = 0.01;
const UP_TO_OF_PRECISE = 0.02;

/** Places that belong to the value, and follow its kind. */
const BESIDE_VALUE: ReadonlySet<Slot | undefined> = new Set(['value', 'tolerance', 'temperature']);

/** Whether something beside a bare value says that the part is a resistor. */
const isNamedResistor = ({ bodiesOfKind }: Lexicon, parse: Parse): boolean =>
  parse.value?.meaning.tellsKind === true ||
  parse.taken.some(
    ({ meaning }) =>
      !BESIDE_VALUE.has(meaning.slot) && (meaning.bodies & bodiesOfKind.capacitor) === 0,
  );

/** Whether a code that resistors of one per cent have goes with that tolerance, as printed in `1501F`. */
const isPreciseCode = ({ value, taken }: Parse): boolean =>
  value?.meaning.toleranceUpTo === UP_TO_OF_PRECISE &&
  taken.some(
    ({ meaning: { content }, assumed }) =>
      content.says === 'tolerance' &&
      content.tolerance.unit === 'fraction' &&
      content.tolerance.plus === PRECISE &&
      assumed.length === 0,
  );

const fitsBodies = (lexicon: Lexicon, parse: Parse): boolean => {
  const bodies = bodiesOf(lexicon, parse);
  const value = valueSaid(parse)?.value;
  const volts = said(parse, 'voltage').find((content) => content.rated)?.volts.typ ?? 0;
  const tolerance = said(parse, 'tolerance').find(
    (content) => content.tolerance.unit === 'fraction',
  );
  const percent = 100 * (tolerance?.tolerance.plus ?? Infinity);
  return (
    bodies.length === 0 ||
    bodies.some(
      (row) =>
        (value === undefined || isMetInBody(row, value)) &&
        volts <= row.v_max &&
        percent >= row.tightest_percent * (1 - FLOAT_ERROR),
    )
  );
};

/** Old parts of a type are met beyond its usual values, but not so many times beyond. */
const BEYOND_USUAL = 10;

/** Types that something on the part names. */
const namedTypes = (lexicon: Lexicon, parse: Parse): readonly TypeId[] =>
  parse.taken.some(({ meaning }) => meaning.types.length > 0) ? typesOf(lexicon, parse) : [];

/** What the types that are named on a part make of its capacitance, and of how that is written. */
const typesAgree = (lexicon: Lexicon, parse: Parse): number => {
  const content = valueSaid(parse);
  const types = namedTypes(lexicon, parse);
  const rows = types.flatMap((type) => lexicon.types[type] ?? []);
  if (content === undefined || rows.length === 0) return 0;
  const { says, value } = content;
  // The types are those of capacitors, which have no resistance for their value.
  const isMet =
    says === 'capacitance' &&
    rows.some(
      ({ old_c_min: least, old_c_max: most }) =>
        value >= least / BEYOND_USUAL && value <= most * BEYOND_USUAL,
    );
  const isWrittenSo = types.every((type) => parse.value?.meaning.ofTypes?.includes(type));
  return (isMet ? 0 : weights.outsideTypes) + (isWrittenSo ? weights.formOfTypes : 0);
};

/** Whether what can be set has a type named beside it that cannot, as that of a film. */
const isRangeOfOthers = ({ value, taken }: Parse): boolean => {
  const content = value?.meaning.content;
  if (content?.says !== 'capacitance' || content.from === undefined) return false;
  const own = value?.meaning.types ?? [];
  return taken.some(
    (token) =>
      token.meaning.content.says === 'types' &&
      token.meaning.types.length > 0 &&
      !token.meaning.types.some((type) => own.includes(type)),
  );
};

/** Whether a class of mains duty stands beside a voltage for AC. */
const isSafetyWithAc = (parse: Parse): boolean =>
  said(parse, 'safety').length > 0 && said(parse, 'voltage').some(({ kind }) => kind === 'ac');

/**
 * What a voltage makes of a letter that may be a class of mains duty: no mains has as few volts, or
 * direct ones, and such parts say that theirs alternate. A letter with its figure, such as X2, is a
 * class in any case.
 */
const safetyLetter = ({ trade }: Lexicon, parse: Parse): number => {
  const rated = said(parse, 'voltage').filter((each) => each.rated);
  const isLetter = said(parse, 'safety').some((safety) => safety.class.length === 1);
  if (!isLetter || rated.length === 0) return 0;
  if (rated.some(({ volts }) => volts.typ < trade.lowestMains)) return weights.safetyOffMains;
  if (rated.some(({ kind }) => kind === 'ac')) return 0;
  return rated.some(({ kind }) => kind === 'dc') ? weights.safetyOffMains : weights.safetyWithoutAc;
};

/** Whether a style or series is named whose values are not written so. */
const isStyleOfOthers = ({ value, taken }: Parse): boolean =>
  value !== undefined &&
  taken.some(
    ({ meaning: { content, origins, countsZeros } }) =>
      (content.says === 'style' && (origins & value.meaning.origins) === 0) ||
      (countsZeros === false && value.meaning.countsZeros === true),
  );

/** Whether a tolerance is written out in per cent rather than as a letter. */
const isInPercent = ({ of, tolerance }: Said<'tolerance'>): boolean =>
  of === undefined && tolerance.unit === 'fraction';

/** Most figures that cannot be a code that counts noughts. */
const FIGURES_BEFORE_CODES = 2;

/** Whether watts are printed, or a style that tells them beside figures too few for a code, as in `RH-25 10`. */
const hasWatts = (parse: Parse): boolean => {
  const { at = 0, end = 0 } = parse.value ?? {};
  const isShort = end - at <= FIGURES_BEFORE_CODES;
  return (
    said(parse, 'power').length > 0 ||
    (isShort && said(parse, 'style').some(({ watts }) => watts !== undefined))
  );
};

/** Ohms that need watts beside them: below, the letters of a film may as well be those of microfarads. */
const LEAST_WITHOUT_WATTS = 10;

/** Whether a code ends in a nought, which counts no zeros: `100` for 10 pF or 10 ohm, `1500` for 150 ohm. */
const countsNone = ({ says, value }: Said<'capacitance' | 'resistance'>, parse: Parse): boolean => {
  const { at = 0, end = 0 } = parse.value ?? {};
  return value < (says === 'resistance' ? 10 ** (end - at - 1) : 100e-12);
};

/**
 * What words beside figures make of them, as in `0.47 5W`, `220 carbon film`, `R5 220` and `180 5%`: who
 * writes those out writes no code for the value. Watts, what a resistor is made of and its designator tell
 * its plain ohms.
 */
const besideWords = (parse: Parse): number => {
  const { countsZeros } = parse.value?.meaning ?? {};
  const content = valueSaid(parse);
  if (content === undefined) return 0;
  const isOfResistor = content.says === 'resistance';
  const isListed = said(parse, 'designator').length > 0;
  const isFilm = said(parse, 'material').length > 0 && content.value >= LEAST_WITHOUT_WATTS;
  const isTold = isOfResistor && (isFilm || hasWatts(parse));
  if (countsZeros === false && isOfResistor)
    return isTold || isListed ? weights.plainBesideWords : 0;
  const isWritten = isTold || isListed || said(parse, 'tolerance').some(isInPercent);
  return countsZeros === true && countsNone(content, parse) && isWritten
    ? weights.codeBesideWords
    : 0;
};

/** Whether the voltage is lower than parts with such a value have. */
const voltageTooLow = (parse: Parse): boolean =>
  said(parse, 'voltage').some(
    (content) => content.rated && content.volts.typ < (parse.value?.meaning.voltsFrom ?? 0),
  );

/** Whether a rated voltage stands by itself, with gaps about it. */
const hasVoltsApart = ({ taken }: Parse): boolean =>
  taken.some(
    ({ at, end, meaning: { content } }, index) =>
      content.says === 'voltage' &&
      content.rated &&
      (taken[index - 1]?.end ?? -1) < at &&
      (taken[index + 1]?.at ?? Infinity) > end,
  );

/** What a voltage adds to a value that stands for a part with one, as the 10 of `10 16` is. */
const voltsBeside = (parse: Parse): number =>
  parse.value?.meaning.voltsBeside === true && hasVoltsApart(parse) ? weights.voltsBeside : 0;

/**
 * What volts behind a stroke add to figures that are written so with them, as the 10 of `10/63` are on a
 * polar part. A tolerance is rather on a film or ceramic, which has its own figures; a body that is seen
 * tells by itself which of them it has.
 */
const strokeVolts = ({ hints }: Lexicon, parse: Parse): number => {
  const { value, taken } = parse;
  const most = value?.meaning.strokeVoltsMax;
  if (value === undefined || most === undefined) return 0;
  if (hints.body !== undefined || said(parse, 'tolerance').length > 0) return 0;
  const content = taken.find(({ at }) => at >= value.end)?.meaning.content;
  return content?.says === 'voltage' && content.rated && content.volts.typ <= most
    ? weights.strokeVolts
    : 0;
};

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
  const isNamed = isNamedResistor(lexicon, parse) || isPreciseCode(parse);
  return value?.says === 'resistance' && !value.withUnit && !isNamed ? weights.resistor : 0;
};

/** Whether a test, surge or peak voltage would be lower than the rating. */
const testBelowRating = (parse: Parse): boolean => {
  const voltages = said(parse, 'voltage');
  const rated = Math.max(...voltages.filter((each) => each.rated).map(({ volts }) => volts.typ));
  return voltages.some((each) => !each.rated && each.volts.typ < rated);
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

/** More significant figures than the resistance of a potentiometer is given in. */
const FIGURES_OF_POT = 2;

/** Whether a potentiometer would be more precise than they are made. */
const isTooPreciseForPot = ({ trade }: Lexicon, parse: Parse): boolean =>
  said(parse, 'taper').length > 0 &&
  ((valueSaid(parse)?.figures.length ?? 0) > FIGURES_OF_POT ||
    said(parse, 'tolerance').some(({ tolerance }) => tolerance.plus <= trade.closestPotentiometer));

/** Whether nothing but another kind of part is read where what it is was said. */
const isOtherThanSaid = (lexicon: Lexicon, parse: Parse): boolean =>
  parse.value === undefined && said(parse, 'other').length > 0 && isKnown(lexicon);

/** What is said of any part: the travel of a fader is a length. */
const OF_ANY_PART = 'a length';

/** Whether a taper stands beside what says that the part is of another kind: rather ampere than an A. */
const isTaperOfOther = (parse: Parse): boolean =>
  said(parse, 'taper').length > 0 && said(parse, 'other').some(({ is }) => is !== OF_ANY_PART);

/** Whether a taper stands on what its style says to be a potentiometer, whose letter is then no tolerance. */
const isTaperOfStyle = ({ taken }: Parse): boolean =>
  taken.some(
    ({ meaning: { content, bodies } }) =>
      content.says === 'taper' &&
      taken.some(
        ({ meaning: style }) => style.content.says === 'style' && (style.bodies & ~bodies) === 0,
      ),
  );

/** What it makes of a taper that something else says to be on a potentiometer, or on another part. */
const taperBeside = (parse: Parse): number =>
  (isTaperOfOther(parse) ? weights.kindDiffers : 0) +
  (isTaperOfStyle(parse) ? weights.taperOfStyle : 0);

/** Whether a range without a unit has a voltage beside it. */
const isRangeWithVolts = (parse: Parse): boolean => {
  const content = parse.value?.meaning.content;
  return (
    content?.says === 'capacitance' &&
    content.from !== undefined &&
    said(parse, 'voltage').some(({ rated }) => rated)
  );
};

/** Whether both ends of what a part may have stand beside AC volts. */
const isSpanWithAc = (parse: Parse): boolean => {
  const content = parse.value?.meaning.content;
  return (
    content?.says === 'capacitance' &&
    content.span === true &&
    said(parse, 'voltage').some(({ rated, kind }) => rated && kind === 'ac')
  );
};

/** Whether the tolerance is greater than the value: nobody makes 0.27 pF of ±2 pF. */
const isToleranceAboveValue = (parse: Parse): boolean => {
  const value = valueSaid(parse)?.value;
  return (
    value !== undefined &&
    said(parse, 'tolerance').some(
      ({ tolerance }) => tolerance.unit !== 'fraction' && tolerance.minus > value,
    )
  );
};

/** What stands on parts that are neither capacitors nor resistors, and what may stand there besides. */
const OF_OTHERS: ReadonlySet<Content['says']> = new Set(['other', 'power']);
const BESIDE_OTHERS: ReadonlySet<Content['says']> = new Set(['remark', 'designator', 'voltage']);

const saysOfOthers = ({ taken }: Parse): boolean =>
  taken.some(({ meaning: { content } }) => OF_OTHERS.has(content.says));

/**
 * Whether a size or a designator stands beside no value, or that of a part which has none, such as a lamp,
 * beside one.
 */
const isBesideNothing = (parse: Parse): boolean => {
  const designators = said(parse, 'designator');
  if (designators.some(({ ofOther }) => ofOther === true))
    return parse.value !== undefined || (parse.taken.length > 1 && !saysOfOthers(parse));
  return parse.value === undefined && said(parse, 'size').length + designators.length > 0;
};

/** Whether nothing is read but what is not of a capacitor or resistor; watts alone are no value either. */
const isOtherAlone = (parse: Parse): boolean =>
  saysOfOthers(parse) &&
  parse.taken.every(
    ({ meaning: { content } }) => OF_OTHERS.has(content.says) || BESIDE_OTHERS.has(content.says),
  );

/** How well a parse holds together, with what is known about the part. */
export const scoreOf = (lexicon: Lexicon, parse: Parse): number =>
  parse.score +
  (parse.value === undefined ? weights.noValue : 0) +
  (isBesideNothing(parse) ? weights.besideNothing : 0) +
  (fitsBodies(lexicon, parse) ? 0 : weights.outsideBody) +
  typesAgree(lexicon, parse) +
  (isRangeOfOthers(parse) ? weights.outsideTypes : 0) +
  (isOtherThanSaid(lexicon, parse) ? weights.kindDiffers : 0) +
  taperBeside(parse) +
  (isOtherAlone(parse) ? weights.otherAlone : 0) +
  (isRangeWithVolts(parse) ? weights.voltageOfRange : 0) +
  (isSpanWithAc(parse) ? weights.spanWithAc : 0) +
  (isSafetyWithAc(parse) ? weights.safetyWithAc : 0) +
  safetyLetter(lexicon, parse) +
  (isStyleOfOthers(parse) ? weights.styleOfOthers : 0) +
  voltsBeside(parse) +
  strokeVolts(lexicon, parse) +
  besideWords(parse) +
  (voltageTooLow(parse) ? weights.voltageTooLow : 0) +
  seriesAgrees(lexicon, parse) +
  (isToleranceAboveValue(parse) ? weights.toleranceAboveValue : 0) +
  (isTooPreciseForPot(lexicon, parse) ? weights.taperOfPrecisePart : 0) +
  (testBelowRating(parse) ? weights.testBelowRating : 0) +
  bodyHinted(lexicon, parse.bodies) +
  originHinted(lexicon, parse.origins) +
  kindHinted(lexicon, parse);
