import type { Hints } from '../../../src/engine/markings/index.ts';
import { lexiconOf } from '../../../src/engine/markings/ways/lexicon-of.ts';
import type { Lexicon } from '../../../src/engine/markings/lexicon/lexicon.ts';
import { scanOf, wordsFoundAt, type Scan } from '../../../src/engine/markings/lexicon/scan.ts';
import { markingOf } from '../../../src/engine/markings/text/text.ts';
import type { Content, Token } from '../../../src/engine/markings/meanings/token.ts';
import { catalogue } from './tables.ts';

/** The words and rows that markings are read by, with what is known of the part. */
export const lexiconFor = (hints: Hints = {}): Lexicon => lexiconOf(catalogue, hints);

/** A marking opened for reading as it is written. */
export const scanFor = (text: string, hints: Hints = {}): Scan =>
  scanOf(lexiconFor(hints), markingOf(text));

/** The same, where characters may have been taken for others. */
export const scanWithLookAlikes = (text: string, hints: Hints = {}): Scan => {
  const lexicon = lexiconFor(hints);
  return scanOf(lexicon, markingOf(text, lexicon.lookAlikes(hints.origin)));
};

/** What tokens say of one thing, with the tokens. */
export const saying = <Says extends Content['says']>(
  tokens: readonly Token[],
  says: Says,
): { token: Token; content: Extract<Content, { says: Says }> }[] =>
  tokens.flatMap((token) => {
    const { content } = token.meaning;
    return content.says === says
      ? [{ token, content: content as Extract<Content, { says: Says }> }]
      : [];
  });

/** A token as where it ends, what it means, how readily it is believed, and what it needs. */
export type Short = [end: number, means: string, weight: number, needs?: string];

const rounded = (weight: number): number => Number(weight.toFixed(9)) + 0;

/** Tokens in short. */
export const inShort = (tokens: readonly Token[]): Short[] =>
  tokens.map(({ end, meaning, weight, needs }) =>
    needs.length === 0
      ? [end, meaning.means(), rounded(weight)]
      : [end, meaning.means(), rounded(weight), needs.join(' ')],
  );

/** What is expected of them, without the noise of binary fractions. */
export const expected = (shorts: readonly Short[]): Short[] =>
  shorts.map(([end, means, weight, ...rest]) => [end, means, rounded(weight), ...rest]);

/** The tokens of the words of the tables that are taken by themselves at an index. */
export const wordTokensAt = (scan: Scan, at: number): Token[] =>
  wordsFoundAt(scan, at).flatMap((found) => found.item.take(scan, at, found) ?? []);

/** Those of them that fill a place of the reading. */
export const wordsOf = (scan: Scan, at: number, ...slots: Token['meaning']['slot'][]): Token[] =>
  wordTokensAt(scan, at).filter(({ meaning }) => slots.includes(meaning.slot));
