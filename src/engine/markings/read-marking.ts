import type { Scored } from './ranking/candidate.ts';
import { composed, type Understood } from './composing/compose.ts';
import { lexiconOf } from './ways/lexicon-of.ts';
import type { Lexicon, MarkingCatalogue } from './lexicon/lexicon.ts';
import { LONGEST_MARKING, parsesOf, skipCost } from './ways/parse.ts';
import { ranked } from './ranking/rank.ts';
import { scoreOf } from './ranking/score.ts';
import type { Hints, Reading } from './meanings/reading.ts';
import {
  hasNanoInLatin,
  hasSovietStyle,
  isFigure,
  isWornSign,
  markingOf,
  type LookAlikes,
} from './text/text.ts';

/** What is beyond the longest marking stays without a meaning. */
const withRest = (reading: Reading, rest: string): Reading =>
  rest === '' ? reading : { ...reading, notUnderstood: [...reading.notUnderstood, rest] };

/** Longer markings are not read a second time. */
export const LONGEST_TWICE = 40;

/** Best reading below this, and one that leaves figures without a meaning, is worth a second look. */
const GOOD = 2.5;

/** What it cost to leave words of letters aside, such as a maker's: they make no reading poor. */
const lettersLeft = ({ parse }: Scored, text: string): number =>
  parse.skipped
    .filter(({ end }) => !isFigure(text.charAt(end)))
    .map(({ at, end }) => text.slice(at, end))
    .filter((left) => /^\p{L}+$/u.test(left))
    .reduce((sum, left) => sum - skipCost(left), 0);

/** Whether a style and nothing else is printed, as `DM15` is. */
const isStyleAlone = ({ parse: { taken, skipped } }: Scored): boolean =>
  skipped.length === 0 &&
  taken.every(({ meaning: { content } }) => content.says === 'types' && content.style);

/** Whether letters that are left before a number end in one that looks like a figure, as in `O.1 uF`. */
const endsLikeFigure = (text: string, at: number, end: number): boolean =>
  /^[OoIl]$/.test(text.slice(at, end)) && /^[.,]\d/.test(text.slice(end));

/** Whether a reading as written is so poor that characters may have been taken for others. */
const isPoor = ([best]: readonly Scored[], text: string): boolean =>
  best === undefined ||
  (!isStyleAlone(best) && best.score + lettersLeft(best, text) < GOOD) ||
  best.parse.skipped.some(
    ({ at, end }) => /\d/.test(text.slice(at, end)) || endsLikeFigure(text, at, end),
  );

const waysOf = (lexicon: Lexicon, text: string, lookAlikes?: LookAlikes): Scored[] => {
  const cyrillic = lexicon.hints.origin === 'soviet' || undefined;
  return parsesOf(lexicon, markingOf(text, lookAlikes, cyrillic))
    .parses.filter((parse) => parse.taken.length > 0)
    .map((parse) => ({ parse, score: scoreOf(lexicon, parse) }))
    .sort((a, b) => b.score - a.score);
};

/** With more characters missing than this, others are not taken for what they may be as well. */
const MOST_WORN_TWICE = 1;

/** What taking characters for others must add to the best reading. */
const WORTH_IT = 0.5;

/** The origin whose letters may have been typed as Latin ones: the one that is said, else the one that shows. */
const scriptOf = ({ hints: { origin } }: Lexicon, text: string): string | undefined =>
  origin ?? (hasNanoInLatin(text) || hasSovietStyle(text) ? 'soviet' : undefined);

/**
 * Whether letters of the origin's own script may have been typed as Latin ones, be it only some of them:
 * nobody sees which of the two an H of `К73-17 3H3` is.
 */
const mayBeTypedInLatin = (lexicon: Lexicon, text: string): boolean => {
  const origin = scriptOf(lexicon, text);
  return (
    origin !== undefined &&
    lexicon.tables.lookAlikes.some(
      ({ origins, written }) => origins.includes(origin) && text.includes(written),
    )
  );
};

/** The ways as written; where they are poor, those with characters taken for others as well. */
const goodWaysOf = (lexicon: Lexicon, text: string): Scored[] => {
  const ways = waysOf(lexicon, text);
  if (text.split('').filter(isWornSign).length > MOST_WORN_TWICE) return ways;
  const isGood = !isPoor(ways, text) && !mayBeTypedInLatin(lexicon, text);
  if (text.length > LONGEST_TWICE || isGood) return ways;
  const others = waysOf(lexicon, text, lexicon.lookAlikes(scriptOf(lexicon, text)));
  const gain = (others[0]?.score ?? -Infinity) - (ways[0]?.score ?? 0);
  return gain >= WORTH_IT ? others : ways;
};

/**
 * Every way in which the marking on a part can be understood, best first; none where nothing in it
 * has a meaning. A character that cannot be read is written as `?`, `_`, `#` or `▯`, any number of
 * them as `…`; what they may have been is made up from the tables. Never throws, whatever the text.
 * Values in F, ohm, V and as fractions. Each character is evidence, not understood, or a separator
 * without a meaning of its own.
 */
export const readMarking = (
  catalogue: MarkingCatalogue,
  text: string,
  hints: Hints = {},
): Reading[] => {
  const lexicon = lexiconOf(catalogue, hints);
  const head = text.slice(0, LONGEST_MARKING);
  const understood: Understood = new Map();
  return ranked(lexicon.trade, goodWaysOf(lexicon, head), (parse) =>
    composed(lexicon, parse, head, understood),
  ).map((reading) => withRest(reading, text.slice(LONGEST_MARKING)));
};
