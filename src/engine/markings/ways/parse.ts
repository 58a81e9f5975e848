import { scanOf } from '../lexicon/scan.ts';
import type { Lexicon } from '../lexicon/lexicon.ts';
import {
  cutsRun,
  endOfWord,
  isBlank,
  isCodeAt,
  isFigure,
  isLetter,
  isSeparator,
  isTimesAt,
  isWornSign,
  wordBegins,
  type Marking,
} from '../text/text.ts';
import { awaitsValue, mayStand, mayTake, startOf, take, type Skipped, type Step } from './step.ts';
import type { Token } from '../meanings/token.ts';
import { tokensAt } from './tokens.ts';
import { weights } from '../meanings/weights.ts';

/** One way to take a whole marking. */
export interface Parse {
  score: number;
  value: Token | undefined;
  taken: readonly Token[];
  skipped: readonly Skipped[];
  bodies: number;
  origins: number;
}

/** What came of the search: the best ways, and the number of steps that were tried. */
export interface Search {
  parses: Parse[];
  steps: number;
}

/** Markings longer than this are read up to here; bodies carry far fewer characters. */
export const LONGEST_MARKING = 300;

/** Steps tried for one marking, about; where it is long, fewer ways are carried on. */
export const MOST_STEPS = 4000;

/** Ways carried on from an index for each value, values carried on, and the least that go on. */
const KEPT_OF_A_VALUE = 6;
const KEPT_OF_A_WORN_VALUE = 12;
const KEPT_VALUES = 14;
const KEPT_WORN_VALUES = 40;
export const KEPT_AT_LEAST = 3;

/** Ways that are looked at in full. */
const LOOKED_AT = 60;
const LOOKED_AT_WORN = 150;

const FIGURE = /\d/;

/** A value in full, or the first of several that a sign joins: nobody leaves that aside for figures alone. */
const VALUE_IN_FULL = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[pnuµμ]F?|mfd|[kM]?[ΩΩ]|\+)$/iu;

/** What it costs to leave a stretch without a meaning; next to nothing where it cannot be read. */
export const skipCost = (text: string): number => {
  if (text.split('').every(isWornSign)) return weights.wornLeft;
  const cost =
    weights.notUnderstood +
    text.length * weights.notUnderstoodCharacter +
    (FIGURE.test(text) ? weights.notUnderstoodFigures : 0);
  return (
    Math.max(cost, weights.notUnderstoodMost) + (VALUE_IN_FULL.test(text) ? weights.valueLeft : 0)
  );
};

/** A way on from an index other than by a token: passing over a separator, or leaving a stretch. */
interface Passage {
  end: number;
  cost: number;
  /** Whether a stretch stays without a meaning. */
  leaves: boolean;
  /** Whether what stands there keeps apart what is before it from what is behind. */
  parts: boolean;
}

const leaving = (marking: Marking, at: number, end: number, extra: number): Passage => ({
  end,
  cost: skipCost(marking.text.slice(at, end)) + extra,
  leaves: true,
  parts: true,
});

/** A point or comma that belongs to a number may not be passed over. */
const isPointOfNumber = (marking: Marking, at: number): boolean =>
  '.,·'.includes(marking.text.charAt(at)) &&
  isFigure(marking.text.charAt(at + 1)) &&
  (isFigure(marking.text.charAt(at - 1)) || wordBegins(marking, at));

/** Letters before figures, such as a maker's sign, stay without a meaning by themselves. */
const leavingLetters = (marking: Marking, at: number, tokens: readonly Token[]): Passage[] => {
  let end = at;
  while (isLetter(marking.text.charAt(end))) end += 1;
  const figuresFollow = end > at && isFigure(marking.text.charAt(end));
  if (!figuresFollow) return [];
  // What the tables have as one word with the letter is no code behind a stray one.
  const isStray =
    end === at + 1 && isCodeAt(marking, end) && !tokens.some((token) => token.end > end);
  return [leaving(marking, at, end, isStray ? weights.strayLetter : weights.restOfWord)];
};

/** Signs for what cannot be read stay without a meaning by themselves. */
const leavingWorn = (marking: Marking, at: number): Passage => {
  let end = at;
  while (isWornSign(marking.text.charAt(end))) end += 1;
  return leaving(marking, at, end, 0);
};

/** The ways on from an index other than by a token; the same for every step that arrives there. */
const passagesAt = (marking: Marking, at: number, tokens: readonly Token[]): Passage[] => {
  const character = marking.text.charAt(at);
  if (isWornSign(character)) return [leavingWorn(marking, at)];
  const passable = isSeparator(character);
  if (passable && !isPointOfNumber(marking, at)) {
    const parts = !isBlank(character) && character !== '(';
    return [{ end: at + 1, cost: 0, leaves: false, parts }];
  }
  if (isTimesAt(marking, at))
    return [{ end: at + 1, cost: weights.times, leaves: false, parts: true }];
  const end = endOfWord(marking, passable ? at + 1 : at);
  if (wordBegins(marking, at))
    return [leaving(marking, at, end, 0), ...leavingLetters(marking, at, tokens)];
  return cutsRun(marking, at) ? [] : [leaving(marking, at, end, weights.restOfWord)];
};

/** The step behind a passage. */
const pass = (step: Step, { end, cost, leaves, parts }: Passage): Step =>
  leaves
    ? {
        ...step,
        at: end,
        score: step.score + cost,
        before: step,
        token: undefined,
        near: false,
        skipped: { at: step.at, end },
      }
    : { ...step, at: end, near: step.near && !parts };

const byScore = (a: { score: number }, b: { score: number }): number => b.score - a.score;

/** What tells the value of one step from that of another: ohms count below nought. */
const valueKey = ({ value }: Step): number => {
  const content = value?.meaning.content;
  if (content?.says === 'capacitance') return content.value;
  if (content?.says === 'sections') return content.values.reduce((sum, value) => sum + value, 0.5);
  return content?.says === 'resistance' ? -content.value : NaN;
};

/** Keeps the best steps, but not of one value alone. */
const prune = (steps: Step[], most: number, worn: boolean): Step[] => {
  if (steps.length <= 1) return steps;
  const values = worn ? KEPT_WORN_VALUES : KEPT_VALUES;
  const ofEach = worn ? KEPT_OF_A_WORN_VALUE : KEPT_OF_A_VALUE;
  const ofValue = new Map<number, Step[]>();
  for (const step of steps.sort(byScore)) {
    const key = valueKey(step);
    const group = ofValue.get(key);
    if (group === undefined) {
      if (ofValue.size < values) ofValue.set(key, [step]);
    } else if (group.length < ofEach) group.push(step);
  }
  return [...ofValue.values()].flat().slice(0, most);
};

/** The tokens and skipped stretches of a way, in the order of the marking. */
const unrolled = (end: Step): Parse => {
  const taken: Token[] = [];
  const skipped: Skipped[] = [];
  for (let step: Step | undefined = end; step !== undefined; step = step.before) {
    if (step.token !== undefined) taken.push(step.token);
    if (step.skipped !== undefined) skipped.push(step.skipped);
  }
  taken.reverse();
  skipped.reverse();
  const { score, value, bodies, origins } = end;
  return { score, value, taken, skipped, bodies, origins };
};

/** How many ways may go on from an index where so many tokens stand. */
const carriedOn = (length: number, tokens: number): number =>
  Math.max(KEPT_AT_LEAST, Math.floor(MOST_STEPS / (length * (tokens + 1))));

/**
 * Every good way to take a whole marking. At each index the tokens of the tables are tried, then
 * passing over a separator, then leaving a word without a meaning; only the best few are carried on.
 */
export const parsesOf = (lexicon: Lexicon, marking: Marking): Search => {
  const { length } = marking.text;
  const scan = scanOf(lexicon, marking);
  const worn = marking.worn.includes(true);
  const waiting: Step[][] = Array.from({ length: length + 1 }, () => []);
  waiting[0] = [startOf(lexicon)];
  let tried = 0;
  for (let at = 0; at < length; at += 1) {
    const arrived = waiting[at] ?? [];
    if (arrived.length === 0) continue;
    const tokens = tokensAt(scan, at).filter((token) => mayStand(token, marking));
    const passages = passagesAt(marking, at, tokens);
    for (const step of prune(arrived, carriedOn(length, tokens.length), worn)) {
      tried += tokens.length + 1;
      for (const token of tokens)
        if (mayTake(step, token)) waiting[token.end]?.push(take(step, token));
      if (awaitsValue(step)) continue;
      for (const passage of passages) waiting[passage.end]?.push(pass(step, passage));
    }
  }
  const ends = (waiting[length] ?? []).sort(byScore).slice(0, worn ? LOOKED_AT_WORN : LOOKED_AT);
  return { parses: ends.map(unrolled), steps: tried };
};
