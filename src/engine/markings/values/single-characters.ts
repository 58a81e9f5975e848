import type { Scan } from '../lexicon/scan.ts';
import { skipBlanks, wordBegins, wordEnds, type Marking } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { times, valueToken } from './value-token.ts';
import { weights } from '../meanings/weights.ts';

/** A character with the colour of its ink, as they stand in a marking, and where they end. */
interface Written {
  character: string;
  ink: string | undefined;
  end: number;
}

const WORD = /[a-z]{3,6}(?![\p{L}\d])/iuy;

/** A word of letters at an index, in small letters: the colour of the ink, if it is one. */
const wordAt = ({ text }: Marking, at: number): string => {
  WORD.lastIndex = at;
  return WORD.exec(text)?.[0].toLowerCase() ?? '';
};

/** `green E`, `E green`, or `E` alone. */
const writtenAt = (marking: Marking, at: number): Written => {
  const before = wordAt(marking, at);
  const from = before === '' ? at : skipBlanks(marking, at + before.length);
  const end = from + 1;
  const behind = before === '' ? wordAt(marking, skipBlanks(marking, end)) : '';
  return { character: marking.text.charAt(from), ink: before || behind || undefined, end };
};

/**
 * Values of ceramic chips with a single character, whose ink says the multiplier: read where the ink
 * is named, or where the part is known to be such a chip, and then for every ink.
 */
export const singleCharactersAt = ({ lexicon, marking }: Scan, at: number): Token[] => {
  if (!wordBegins(marking, at)) return [];
  const { character, ink, end } = writtenAt(marking, at);
  const row = lexicon.tables.singleCharacters.find((each) => each.character === character);
  if (row === undefined || !wordEnds(marking, end)) return [];
  const named = lexicon.tables.inkMultipliers.filter(({ colour }) => colour === ink);
  if (named.length === 0 && !row.bodies.includes(lexicon.hints.body ?? '')) return [];
  const [first] = named;
  const endOfInk =
    first === undefined
      ? end
      : Math.max(end, marking.text.toLowerCase().indexOf(first.colour, at) + first.colour.length);
  return (named.length === 0 ? lexicon.tables.inkMultipliers : named).map(({ colour, factor }) =>
    valueToken({
      at,
      end: endOfInk,
      quantity: 'capacitance',
      value: times(row.value, factor, 1e-12),
      figures: '',
      remark: `${character} in ${colour} ink`,
      weight: named.length === 0 ? weights.singleCharacter : weights.singleCharacterAndInk,
      bodies: lexicon.bodies.bitsOf(row.bodies),
      origins: lexicon.origins.all,
      source: row.source,
      settle: 'the ink of the single character says the multiplier',
      assumed: [],
    }),
  );
};
