import type { Hints } from '../../../src/engine/markings/index.ts';
import type { Lexicon } from '../../../src/engine/markings/lexicon.ts';
import { lexiconOf } from '../../../src/engine/markings/lexicon.ts';
import type { Scan } from '../../../src/engine/markings/scan.ts';
import { scanOf } from '../../../src/engine/markings/scan.ts';
import { markingOf } from '../../../src/engine/markings/text.ts';
import type { Content, Token } from '../../../src/engine/markings/token.ts';
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
