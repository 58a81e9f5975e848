import type { Catalogue } from '../catalogue.ts';
import { composed, scoreOf } from './compose.ts';
import { lexiconOf } from './lexicon.ts';
import { LONGEST_MARKING, parsesOf } from './parse.ts';
import { ranked } from './rank.ts';
import type { Hints, Reading } from './reading.ts';
import { markingOf } from './text.ts';

/** What reading a marking needs of the catalogue. */
export type MarkingCatalogue = Pick<Catalogue, 'markings' | 'series' | 'types'>;

/** What is beyond the longest marking stays without a meaning. */
const withRest = (reading: Reading, rest: string): Reading =>
  rest === '' ? reading : { ...reading, notUnderstood: [...reading.notUnderstood, rest] };

/**
 * Every way in which the marking on a part can be understood, best first; none where nothing in it
 * has a meaning. Never throws, whatever the text. Values in F, ohm, V and as fractions. Each
 * character is evidence, not understood, or a separator without a meaning of its own.
 */
export const readMarking = (
  catalogue: MarkingCatalogue,
  text: string,
  hints: Hints = {},
): Reading[] => {
  const lexicon = lexiconOf(catalogue, hints);
  const head = text.slice(0, LONGEST_MARKING);
  const ways = parsesOf(lexicon, markingOf(head))
    .parses.filter((parse) => parse.taken.length > 0)
    .map((parse) => ({ parse, score: scoreOf(lexicon, parse) }));
  return ranked(ways, (parse) => composed(lexicon, parse, head)).map((reading) =>
    withRest(reading, text.slice(LONGEST_MARKING)),
  );
};
