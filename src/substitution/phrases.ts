import {
  formatQuantity,
  formatValue,
  sidesInWords,
  type Assessment,
  type Finding,
  type Habit,
  type KindPart,
  type Made,
  type MountedOtherwise,
  type Part,
  type Range,
  type Tolerance,
  type Unit,
} from '../engine/index.ts';
import { inHabit } from '../text/in-habit.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { listed } from '../text/words.ts';

/** Shares below this are as good as none: no limit lies near, and more digits would say nothing. */
const NO_SHARE = 1e-6;

/** Whether a share is there, but too small to be told in figures. */
const isTiny = (value: number, unit: string): boolean =>
  unit === 'fraction' && value > 0 && value < NO_SHARE;

const tinyWords = (habit?: Habit): string => `under ${formatValue(NO_SHARE, 'fraction', habit)}`;

/** Shares beyond this are all the same to a reader, as where nothing at all is allowed. */
const ALL_SHARES = 1000;

const isHuge = (value: number, unit: string): boolean => unit === 'fraction' && value > ALL_SHARES;

const hugeWords = (habit?: Habit): string => `over ${formatValue(ALL_SHARES, 'fraction', habit)}`;

/** One figure in the unit of a finding, or words where it is too small or too large to be told. */
const printFigure = (value: number, unit: string, habit?: Habit): string => {
  if (isTiny(value, unit)) return tinyWords(habit);
  return isHuge(value, unit) ? hugeWords(habit) : formatValue(value, unit as Unit, habit);
};

/** A range in the unit of a finding, as a reader sees it. */
export const printRange = (range: Range, unit: string, habit?: Habit): string => {
  if (isTiny(range.max, unit)) return tinyWords(habit);
  const min = isTiny(Math.abs(range.min), unit) ? 0 : range.min;
  if (isHuge(range.min, unit)) return hugeWords(habit);
  if (isHuge(range.max, unit))
    return `${formatValue(min, unit as Unit, habit)} to ${hugeWords(habit)}`;
  return formatQuantity({ ...range, min }, unit as Unit, habit);
};

/** The headline of a range: its typical value. */
export const printTypical = (range: Range, unit: string, habit?: Habit): string =>
  printFigure(range.typ, unit, habit);

/** The limit of a finding in words. */
export const printLimit = ({ limit, unit }: Finding, habit?: Habit): string => {
  if (limit === undefined || unit === 'grade') return '';
  const print = (value: number): string => formatValue(value, unit as Unit, habit);
  const { low, high } = limit;
  if (low !== undefined && high !== undefined) return `${print(low)} to ${print(high)}`;
  if (high !== undefined) return `at most ${print(high)}`;
  return low === undefined ? '' : `at least ${print(low)}`;
};

/** The limit as what it asks, so that nobody takes it for a part of the figure beside it. */
const askedLimit = (finding: Finding, habit?: Habit): string => {
  const limit = printLimit(finding, habit);
  return limit && `${limit} ${finding.limit?.high === undefined ? 'needed' : 'allowed'}`;
};

/** Margins beyond this are all the same to a reader. */
export const AMPLE = 100;

/** How far a figure is beyond a lower limit of nought, of which nothing is a multiple; none for others. */
const beyondNought = ({
  limit,
  standIn,
}: Pick<Finding, 'limit' | 'standIn'>): number | undefined =>
  limit?.low === 0 && limit.high === undefined ? standIn?.min : undefined;

/** How much a finding has to spare, in words. */
export const printMargin = (
  finding: Pick<Finding, 'margin' | 'missing' | 'unit' | 'limit' | 'standIn'>,
  habit?: Habit,
): string => {
  const { margin, missing, unit } = finding;
  if (missing.length > 0) return 'not known';
  if (unit === 'grade') return margin >= 1 ? 'met' : 'not met';
  const beyond = beyondNought(finding);
  if (beyond !== undefined) {
    const amount = formatValue(Math.abs(beyond), unit as Unit, habit);
    return beyond < 0 ? `${amount}, short` : amount;
  }
  if (margin >= AMPLE) return 'over 100 ×';
  if (margin >= 0.9995) return `${formatValue(margin, 'ratio', habit)}`;
  return margin < 1 / AMPLE ? 'missed by far' : `${formatValue(margin, 'ratio', habit)}, short`;
};

/** Whether a limit lies between the ends of a figure, so that some parts meet it and others do not. */
const straddles = ({ standIn, limit }: Finding): boolean =>
  [limit?.low, limit?.high].some(
    (end) => end !== undefined && standIn !== undefined && standIn.min < end && end < standIn.max,
  );

/**
 * One finding as a reason, such as "offset by leakage 13.5 V (at most 0.5 V allowed)", with what is usual
 * where the ends of the figure lie on both sides of the limit.
 */
export const reasonPhrase = (finding: Finding, habit?: Habit): string => {
  const name = midSentence(finding.name);
  if (finding.standIn === undefined) return `${name}, which is not known`;
  if (finding.unit === 'grade') return finding.working;
  const notes = [
    straddles(finding) ? `usually ${printTypical(finding.standIn, finding.unit, habit)}` : '',
    askedLimit(finding, habit),
  ].filter(Boolean);
  const figure = `${name} ${printRange(finding.standIn, finding.unit, habit)}`;
  return notes.length === 0 ? figure : `${figure} (${notes.join('; ')})`;
};

/** A capacitor, or a part of another kind, whose value and rating bring their units along. */
export type AnyPart = Part | KindPart;

const tolerancePhrase = ({ minus, plus }: Tolerance, habit?: Habit): string => {
  const percent = (fraction: number): string => formatValue(fraction, 'fraction', habit);
  return minus === plus ? `±${percent(plus)}` : `+${percent(plus)}/−${percent(minus)}`;
};

/** What the rating of a capacitor is called: of one for AC with that, since its mark may say DC too. */
export const ratingLabel = (kind: Part['voltageKind'] | undefined): string =>
  kind === 'ac' ? 'Rated voltage, AC' : 'Rated voltage';

/** A rating as it is ordered: parts of a watt in watts. */
export const ratingPhrase = (rating: number, unit: Unit, habit?: Habit): string =>
  unit === 'W'
    ? `${formatValue(rating, 'number', habit)}\u00A0W`
    : formatValue(rating, unit, habit);

/** A part of a kind besides capacitors: `10 kΩ ±1 % 0.25 W`. */
const kindPhrase = (part: KindPart, habit?: Habit): string => {
  const { value, unit, tolerance, rating, ratingUnit } = part;
  return [
    value === undefined || unit === undefined ? '' : formatValue(value, unit, habit),
    tolerance === undefined ? '' : tolerancePhrase(tolerance, habit),
    rating === undefined || ratingUnit === undefined ? '' : ratingPhrase(rating, ratingUnit, habit),
  ]
    .filter((words) => words !== '')
    .join(' ');
};

/** A single part, in the order in which one reads it out: `10 nF ±5 % 100 V`. */
const singlePhrase = (part: Part, habit?: Habit): string => {
  const tolerance = tolerancePhrase(part.tolerance, habit);
  const alternating = part.voltageKind === 'ac' ? ' AC' : '';
  return `${formatValue(part.capacitance, 'F', habit)} ${tolerance} ${formatValue(part.ratedVoltage, 'V', habit)}${alternating}`;
};

/** How the parts of a stand-in are joined, after them. */
const JOINED = {
  parallel: 'in parallel',
  series: 'in series',
  'back-to-back': 'back to back',
} as const;

const madePhrase = ({ kind, parts, resistor, power, bleeder }: Made, habit?: Habit): string => {
  const singles = parts.map((part) => singlePhrase(part, habit));
  const [first = '', second] = singles;
  const ohms = (ohm: number): string => formatValue(ohm, 'ohm', habit);
  if (kind === 'with-resistor') {
    const watts = power === undefined ? '' : ` ${formatValue(power, 'W', habit)}`;
    return `${first} with ${ohms(resistor ?? 0)}${watts} in series`;
  }
  const together = first === second ? `2 × ${first}` : singles.join(' and ');
  const across = bleeder === undefined ? '' : `, ${ohms(bleeder)} across each`;
  return `${together} ${JOINED[kind]}${across}`;
};

/** What to order: `10 nF ±5 % 100 V`, or `2 × 22 nF ±1 % 63 V in parallel`. */
export const partPhrase = (part: AnyPart, habit?: Habit): string => {
  if (!('capacitance' in part)) return kindPhrase(part, habit);
  return part.made === undefined ? singlePhrase(part, habit) : madePhrase(part.made, habit);
};

/** Style and sides of what to order: `radial can, ⌀8 × 11.5 mm`. */
export const sizePhrase = ({ buy }: Pick<Assessment, 'buy'>, habit?: Habit): string => {
  if (buy === undefined) return '';
  const { style, body } = buy;
  const sides = body === undefined ? [] : [inHabit(sidesInWords(body.shape, body), habit)];
  return [style, ...sides].join(', ');
};

/** Lead pitches on offer: `3.5 or 5 mm`. */
export const pitchPhrase = ({ buy }: Pick<Assessment, 'buy'>, habit?: Habit): string => {
  const ofBody = buy?.body?.pitch ?? [];
  const all = ofBody.length === 0 ? (buy?.pitch ?? []) : ofBody;
  const pitch = all.map((mm) => inHabit(String(mm), habit));
  return pitch.length === 0 ? '' : `${listed(pitch, 'or')}\u00A0mm`;
};

/** Body and pitch to order: `radial can, ⌀8 × 11.5 mm, pitch 3.5 mm`. */
export const bodyPhrase = (assessment: Pick<Assessment, 'buy'>, habit?: Habit): string => {
  const pitch = pitchPhrase(assessment, habit);
  return [sizePhrase(assessment, habit), pitch && `pitch ${pitch}`].filter(Boolean).join(', ');
};

/** Rating and sides of another style, behind its name: ` for 40 V, ⌀8 × 18 mm`. */
export const otherwisePhrase = (
  { ratedVoltage, body }: MountedOtherwise,
  habit?: Habit,
): string => {
  const volts = ` for ${formatValue(ratedVoltage, 'V', habit)}`;
  if (body === undefined) return volts;
  const { shape, length_mm: length, width_mm: width, height_mm: height } = body;
  return `${volts}, ${inHabit(sidesInWords(shape, { length, width, height }), habit)}`;
};

/** Whether a part is only ruled out because nobody makes it. */
export const isNotMade = ({ findings }: Pick<Assessment, 'findings'>): boolean =>
  findings.some(({ finding, verdict }) => finding === 'availability' && verdict === 'keep-out');
