import type { Lexicon } from './lexicon.ts';
import { common } from './lexicon.ts';
import type { Marking } from './text.ts';
import {
  cutsRun,
  endOfWord,
  isFigure,
  isLetter,
  isSeparator,
  wordBegins,
  wordEnds,
} from './text.ts';
import type { Need, Token } from './token.ts';
import { spanHolds } from './tolerances.ts';
import { tokensAt } from './tokens.ts';
import { weights } from './weights.ts';

/** A stretch that stays without a meaning. */
export interface Skipped {
  at: number;
  end: number;
}

/** One way to take the marking up to an index: a chain of what was taken and what was skipped. */
export interface Parse {
  at: number;
  score: number;
  last?: Token | undefined;
  /** True where nothing but blanks lies between the last token and here. */
  near: boolean;
  value?: Token | undefined;
  taken: readonly Token[];
  skipped: readonly Skipped[];
  /** Bodies and origins that all of its tokens allow; nothing yet where empty. */
  bodies: readonly string[];
  origins: readonly string[];
}

/** Markings longer than this are read up to here; bodies carry far fewer characters. */
export const LONGEST_MARKING = 300;

/** Parses kept at an index for each value, and values kept. */
const KEPT_OF_A_VALUE = 6;
const KEPT_VALUES = 14;

const start: Parse = {
  at: 0,
  score: 0,
  near: true,
  taken: [],
  skipped: [],
  bodies: [],
  origins: [],
};

const touching = (parse: Parse, says: string): boolean =>
  parse.last?.end === parse.at && parse.last.content.says === says;

const isValue = (token: Token | undefined): boolean =>
  token !== undefined && token.slot === 'value';

/** Whether what a token needs about it is there. */
const meets = (need: Need, parse: Parse, token: Token, marking: Marking): boolean => {
  switch (need) {
    case 'after-value':
      return isValue(parse.last) && parse.near;
    case 'touching-value':
      return isValue(parse.last) && parse.last?.end === parse.at;
    case 'touching-tolerance':
      return touching(parse, 'tolerance');
    case 'touching-temperature':
      return touching(parse, 'temperature');
    case 'touching-before-value':
      return isFigure(marking.text.charAt(token.end));
    case 'value-before':
      return parse.value !== undefined;
    case 'whole-word':
      return wordBegins(marking, token.at) && wordEnds(marking, token.end);
  }
};

/** Whether a tolerance meaning is the one for the value that it stands behind. */
const fitsValue = (parse: Parse, token: Token): boolean => {
  if (token.content.says !== 'tolerance' || parse.value === undefined) return true;
  const { fromF, belowF, tolerance } = token.content;
  const content = parse.value.content;
  if (content.says === 'resistance') return tolerance.unit === 'fraction' && belowF === undefined;
  if (content.says !== 'capacitance') return true;
  return spanHolds(content.value, { from: fromF, below: belowF });
};

const filled = (parse: Parse, token: Token): boolean =>
  token.slot !== undefined && parse.taken.some((other) => other.slot === token.slot);

/** After a chip's voltage letter, nothing but the value may come. */
const awaitsValue = (parse: Parse): boolean =>
  parse.last?.needs.includes('touching-before-value') === true;

const joined = (
  have: readonly string[],
  add: readonly string[],
  clash: number,
): { items: readonly string[]; cost: number } => {
  const both = common(have, add);
  return both === undefined ? { items: have, cost: clash } : { items: both, cost: 0 };
};

const take = (parse: Parse, token: Token): Parse => {
  const bodies = joined(parse.bodies, token.bodies, weights.bodiesClash);
  const origins = joined(parse.origins, token.origins, weights.originsClash);
  return {
    ...parse,
    at: token.end,
    score: parse.score + token.weight + bodies.cost + origins.cost,
    last: token,
    near: true,
    value: isValue(token) ? token : parse.value,
    taken: [...parse.taken, token],
    bodies: bodies.items,
    origins: origins.items,
  };
};

const skip = (parse: Parse, marking: Marking, end: number, extra: number): Parse => {
  const text = marking.text.slice(parse.at, end);
  const cost =
    weights.notUnderstood +
    text.length * weights.notUnderstoodCharacter +
    (/\d/.test(text) ? weights.notUnderstoodFigures : 0);
  return {
    ...parse,
    at: end,
    score: parse.score + Math.max(cost, weights.notUnderstoodMost) + extra,
    near: false,
    skipped: [...parse.skipped, { at: parse.at, end }],
  };
};

/** A point or comma that belongs to a number may not be passed over. */
const isPointOfNumber = (marking: Marking, at: number): boolean =>
  '.,'.includes(marking.text.charAt(at)) &&
  isFigure(marking.text.charAt(at + 1)) &&
  (isFigure(marking.text.charAt(at - 1)) || wordBegins(marking, at));

/** Letters before figures, such as a maker's sign, stay without a meaning by themselves. */
const skipLetters = (parse: Parse, marking: Marking): Parse[] => {
  let end = parse.at;
  while (isLetter(marking.text.charAt(end))) end += 1;
  const figuresFollow = end > parse.at && isFigure(marking.text.charAt(end));
  return figuresFollow ? [skip(parse, marking, end, weights.restOfWord)] : [];
};

/** The ways on from a parse other than by a token. */
const passOver = (parse: Parse, marking: Marking): Parse[] => {
  if (awaitsValue(parse)) return [];
  const { at } = parse;
  const character = marking.text.charAt(at);
  const passable = isSeparator(character);
  if (passable && !isPointOfNumber(marking, at)) {
    return [{ ...parse, at: at + 1, near: parse.near && /\s/u.test(character) }];
  }
  const end = endOfWord(marking, passable ? at + 1 : at);
  if (wordBegins(marking, at))
    return [skip(parse, marking, end, 0), ...skipLetters(parse, marking)];
  return cutsRun(marking, at) ? [] : [skip(parse, marking, end, weights.restOfWord)];
};

const byScore = (a: Parse, b: Parse): number => b.score - a.score;

/** Keeps the best parses, but not of one value alone. */
const prune = (parses: Parse[]): Parse[] => {
  const byValue = new Map<string, Parse[]>();
  for (const parse of parses.sort(byScore)) {
    const content = parse.value?.content;
    const key =
      content?.says === 'capacitance' || content?.says === 'resistance'
        ? `${content.says} ${content.value.toPrecision(6)}`
        : '';
    const group = byValue.get(key) ?? [];
    if (group.length < KEPT_OF_A_VALUE) byValue.set(key, [...group, parse]);
  }
  return [...byValue.values()].slice(0, KEPT_VALUES).flat();
};

/**
 * Every good way to take a whole marking. At each index the tokens of the tables are tried, then
 * passing over a separator, then leaving a word without a meaning; only the best few are carried on.
 */
export const parsesOf = (lexicon: Lexicon, marking: Marking): Parse[] => {
  const length = marking.text.length;
  const waiting: Parse[][] = Array.from({ length: length + 1 }, () => []);
  waiting[0] = [start];
  for (let at = 0; at < length; at += 1) {
    const parses = prune(waiting[at] ?? []);
    const tokens = parses.length === 0 ? [] : tokensAt(lexicon, marking, at);
    for (const parse of parses) {
      const taken = tokens
        .filter((token) => !filled(parse, token) && (isValue(token) || !awaitsValue(parse)))
        .filter((token) => token.needs.every((need) => meets(need, parse, token, marking)))
        .filter((token) => fitsValue(parse, token))
        .map((token) => take(parse, token));
      for (const next of [...taken, ...passOver(parse, marking)]) waiting[next.at]?.push(next);
    }
  }
  return (waiting[length] ?? []).sort(byScore);
};
