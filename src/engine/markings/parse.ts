import { scanOf } from './scan.ts';
import type { Lexicon } from './lexicon.ts';
import type { Marking } from './text.ts';
import {
  cutsRun,
  endOfWord,
  isBlank,
  isFigure,
  isLetter,
  isSeparator,
  isWornSign,
  wordBegins,
} from './text.ts';
import type { Skipped, Step } from './step.ts';
import { awaitsValue, mayTake, startOf, take } from './step.ts';
import type { Token } from './token.ts';
import { tokensAt } from './tokens.ts';
import { weights } from './weights.ts';

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

/** What it costs to leave a stretch without a meaning; next to nothing where it cannot be read. */
const skipCost = (text: string): number => {
  if (text.split('').every(isWornSign)) return weights.wornLeft;
  const cost =
    weights.notUnderstood +
    text.length * weights.notUnderstoodCharacter +
    (FIGURE.test(text) ? weights.notUnderstoodFigures : 0);
  return Math.max(cost, weights.notUnderstoodMost);
};

const skip = (step: Step, marking: Marking, end: number, extra: number): Step => ({
  ...step,
  at: end,
  score: step.score + skipCost(marking.text.slice(step.at, end)) + extra,
  before: step,
  token: undefined,
  near: false,
  skipped: { at: step.at, end },
});

/** A point or comma that belongs to a number may not be passed over. */
const isPointOfNumber = (marking: Marking, at: number): boolean =>
  '.,·'.includes(marking.text.charAt(at)) &&
  isFigure(marking.text.charAt(at + 1)) &&
  (isFigure(marking.text.charAt(at - 1)) || wordBegins(marking, at));

/** Letters before figures, such as a maker's sign, stay without a meaning by themselves. */
const skipLetters = (step: Step, marking: Marking): Step[] => {
  let end = step.at;
  while (isLetter(marking.text.charAt(end))) end += 1;
  const figuresFollow = end > step.at && isFigure(marking.text.charAt(end));
  return figuresFollow ? [skip(step, marking, end, weights.restOfWord)] : [];
};

/** Signs for what cannot be read stay without a meaning by themselves. */
const skipWorn = (step: Step, marking: Marking): Step[] => {
  let end = step.at;
  while (isWornSign(marking.text.charAt(end))) end += 1;
  return end > step.at ? [skip(step, marking, end, 0)] : [];
};

/** The ways on from a step other than by a token. */
const passOver = (step: Step, marking: Marking): Step[] => {
  if (awaitsValue(step)) return [];
  const { at } = step;
  const character = marking.text.charAt(at);
  if (isWornSign(character)) return skipWorn(step, marking);
  const passable = isSeparator(character);
  if (passable && !isPointOfNumber(marking, at)) {
    return [{ ...step, at: at + 1, near: step.near && (isBlank(character) || character === '(') }];
  }
  const end = endOfWord(marking, passable ? at + 1 : at);
  if (wordBegins(marking, at)) return [skip(step, marking, end, 0), ...skipLetters(step, marking)];
  return cutsRun(marking, at) ? [] : [skip(step, marking, end, weights.restOfWord)];
};

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
    if (step.token !== undefined) taken.unshift(step.token);
    if (step.skipped !== undefined) skipped.unshift(step.skipped);
  }
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
    const tokens = tokensAt(scan, at);
    for (const step of prune(arrived, carriedOn(length, tokens.length), worn)) {
      tried += tokens.length + 1;
      for (const token of tokens)
        if (mayTake(step, token, marking)) waiting[token.end]?.push(take(step, token));
      for (const next of passOver(step, marking)) waiting[next.at]?.push(next);
    }
  }
  const ends = (waiting[length] ?? []).sort(byScore).slice(0, worn ? LOOKED_AT_WORN : LOOKED_AT);
  return { parses: ends.map(unrolled), steps: tried };
};
