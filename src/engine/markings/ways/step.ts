import type { Lexicon } from '../lexicon/lexicon.ts';
import { isChipCodeAt, isFigure, wordBegins, wordEnds, type Marking } from '../text/text.ts';
import type { Content, Meaning, Need, Slot, Token } from '../meanings/token.ts';
import { spanHolds } from '../ratings/tolerances.ts';
import { weights } from '../meanings/weights.ts';

/** A stretch that stays without a meaning. */
export interface Skipped {
  at: number;
  end: number;
}

/** One step of a way through the marking: a token taken, a stretch skipped, or a separator. */
export interface Step {
  at: number;
  score: number;
  before: Step | undefined;
  token: Token | undefined;
  skipped: Skipped | undefined;
  last: Token | undefined;
  /** True where nothing but blanks lies between the last token and here. */
  near: boolean;
  value: Token | undefined;
  /** Whether a style, a name of its type, and the sign of a section, was taken. */
  styled: boolean;
  named: boolean;
  signed: boolean;
  /** First class of mains duty that was taken. */
  safety: string | undefined;
  /** Places of the reading that are filled, a bit for each. */
  slots: number;
  /** Bodies and origins that all of its tokens allow, a bit for each. */
  bodies: number;
  origins: number;
}

const slotBits: Record<Slot, number> = {
  value: 1,
  tolerance: 2,
  voltage: 4,
  temperature: 8,
  safety: 16,
  date: 32,
  climate: 64,
  dielectric: 128,
  power: 256,
  'ac-voltage': 512,
  taper: 1024,
};

const bitOf = (slot: Slot | undefined): number => (slot === undefined ? 0 : slotBits[slot]);

/** Places that hold the rated voltage, of dc and of ac. */
const VOLTAGES = slotBits.voltage | slotBits['ac-voltage'];

const touching = (step: Step, says: string): boolean =>
  step.last?.end === step.at && step.last.meaning.content.says === says;

const isValue = (token: Token | undefined): boolean => token?.meaning.slot === 'value';

/** Places of the value and of what is rated beside it. */
const RATINGS: ReadonlySet<Slot | undefined> = new Set([
  'value',
  'voltage',
  'ac-voltage',
  'power',
  'temperature',
]);

const isRating = ({ meaning: { slot } }: Token): boolean => RATINGS.has(slot);

/** Whether what a token must have about it is there, of what the steps before it decide. */
const met: Readonly<Record<Need, (step: Step) => boolean>> = {
  'after-value': (step) => step.near && isValue(step.last),
  'after-rating': (step) => step.near && step.last !== undefined && isRating(step.last),
  'touching-value': (step) => isValue(step.last) && step.last?.end === step.at,
  'touching-rating': (step) =>
    step.last !== undefined && step.last.end === step.at && isRating(step.last),
  'touching-tolerance': (step) => touching(step, 'tolerance'),
  'after-tolerance': (step) => step.near && step.last?.meaning.content.says === 'tolerance',
  'touching-temperature': (step) => touching(step, 'temperature'),
  'touching-style': (step) => touching(step, 'types'),
  resistor: (step) => step.value?.meaning.content.says === 'resistance',
  'style-before': (step) => step.styled,
  'type-before': (step) => step.named,
  'value-before': (step) => step.value !== undefined,
  'rating-before': (step) => (step.slots & VOLTAGES) !== 0,
  'touching-before-value': () => true,
  'whole-word': () => true,
};

/** Whether what a token must have about it is there, of what the text decides. */
export const mayStand = ({ at, end, needs }: Token, marking: Marking): boolean =>
  needs.every((need) => {
    if (need === 'whole-word') return wordBegins(marking, at) && wordEnds(marking, end);
    return (
      need !== 'touching-before-value' ||
      isFigure(marking.text.charAt(end)) ||
      isChipCodeAt(marking.text, end) ||
      marking.worn[end] === true
    );
  });

/** The capacitances of a value, F: one, or those of the sections of a can. */
const capacitancesOf = (content: Content): readonly number[] => {
  if (content.says === 'sections') return content.values;
  return content.says === 'capacitance' ? [content.value] : [];
};

/** Whether a tolerance meaning is the one for the value that it stands behind. */
const fitsValue = (step: Step, { meaning }: Token): boolean => {
  if (meaning.content.says !== 'tolerance' || step.value === undefined) return true;
  const { of, fromF, belowF, tolerance } = meaning.content;
  const { content } = step.value.meaning;
  if (content.says === 'resistance') return of !== 'capacitance' && tolerance.unit === 'fraction';
  return (
    of !== 'resistance' &&
    capacitancesOf(content).every((value) => spanHolds(value, { from: fromF, below: belowF }))
  );
};

/** After a chip's voltage letter, nothing but the value may come. */
export const awaitsValue = (step: Step): boolean =>
  step.last?.needs.includes('touching-before-value') === true;

/** Whether a value opens a further section of a can: behind the voltage or the sign of another. */
const opensSection = (step: Step, { meaning: { content } }: Token): boolean => {
  const first = step.value?.meaning.content;
  if (content.says !== 'capacitance' || !content.withUnit) return false;
  const isFirst = first?.says === 'sections' || (first?.says === 'capacitance' && first.withUnit);
  return isFirst && (step.signed || (step.slots & VOLTAGES) !== 0);
};

/**
 * Whether a part for the mains bears a second class, one across the line and one to earth, or the
 * voltage of the class just before, as in `X1 400 Y1 250`.
 */
const opensDuty = (step: Step, { meaning: { content } }: Token): boolean => {
  if (content.says === 'safety')
    return step.safety !== undefined && !step.safety.includes(content.class.charAt(0));
  return content.says === 'voltage' && step.last?.meaning.content.says === 'safety';
};

/** Whether a token that may stand there may be the next step. */
export const mayTake = (step: Step, token: Token): boolean =>
  ((step.slots & bitOf(token.meaning.slot)) === 0 ||
    opensSection(step, token) ||
    opensDuty(step, token)) &&
  (isValue(token) || !awaitsValue(step)) &&
  token.needs.every((need) => met[need](step)) &&
  fitsValue(step, token);

/** What a tolerance costs that is tighter or wider than parts have whose value is written so. */
const unusualTolerance = (step: Step, { content }: Meaning): number => {
  if (content.says !== 'tolerance' || step.value === undefined) return 0;
  const { toleranceFrom = 0, toleranceUpTo = Infinity } = step.value.meaning;
  const { plus, unit } = content.tolerance;
  if (unit !== 'fraction') return 0;
  return plus > toleranceUpTo || plus < toleranceFrom ? weights.unusualTolerance : 0;
};

/** Whether a token is a style of resistors or of capacitors. */
const isStyle = ({ content }: Meaning): boolean =>
  content.says === 'style' || (content.says === 'types' && content.style);

/** The step after a token. */
export const take = (step: Step, token: Token): Step => {
  const { meaning } = token;
  const bodies = step.bodies & meaning.bodies;
  const origins = step.origins & meaning.origins;
  const further = isValue(token) && step.value !== undefined;
  const clash =
    (bodies === 0 ? weights.bodiesClash : 0) + (origins === 0 ? weights.originsClash : 0);
  return {
    at: token.end,
    score:
      step.score +
      token.weight +
      clash +
      unusualTolerance(step, meaning) +
      (further ? weights.furtherSection : 0),
    before: step,
    token,
    skipped: undefined,
    last: token,
    near: true,
    value: isValue(token) && !further ? token : step.value,
    styled: step.styled || isStyle(meaning),
    named: step.named || meaning.content.says === 'types',
    signed: step.signed || meaning.content.says === 'symbol',
    safety: step.safety ?? (meaning.content.says === 'safety' ? meaning.content.class : undefined),
    slots: (further ? step.slots & ~VOLTAGES : step.slots) | bitOf(meaning.slot),
    bodies: bodies === 0 ? step.bodies : bodies,
    origins: origins === 0 ? step.origins : origins,
  };
};

/** Where every way begins. */
export const startOf = ({ bodies, origins }: Lexicon): Step => ({
  at: 0,
  score: 0,
  before: undefined,
  token: undefined,
  skipped: undefined,
  last: undefined,
  near: true,
  value: undefined,
  styled: false,
  named: false,
  signed: false,
  safety: undefined,
  slots: 0,
  bodies: bodies.all,
  origins: origins.all,
});
