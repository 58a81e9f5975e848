import type { Lexicon } from './lexicon.ts';
import { readTemperatureCharacteristic, sayCharacteristic, slopeLetters } from './temperatures.ts';
import type { TemperatureMeaning } from './temperatures.ts';
import type { Marking } from './text.ts';
import { cutsRun, isFigure, isLetter, wordAt, wordBegins, wordEnds } from './text.ts';
import type { Need, Token } from './token.ts';
import { weightOf, weights } from './weights.ts';

const tokenOf = (
  at: number,
  end: number,
  meaning: TemperatureMeaning,
  weight: number,
  needs: Need[],
): Token => ({
  at,
  end,
  slot: 'temperature',
  content: { says: 'temperature', characteristic: meaning.characteristic },
  weight,
  needs,
  bodies: meaning.bodies,
  origins: meaning.origins,
  types: meaning.types,
  means: sayCharacteristic(meaning.characteristic),
  source: meaning.source,
});

/** Whether a code may stand here: it cuts no run of letters or figures in two. */
const standsFree = (marking: Marking, at: number, end: number): boolean =>
  !cutsRun(marking, at) && !cutsRun(marking, end);

/** A letter by itself that seldom means anything is looked at only where the body is known. */
const isAskedFor = (lexicon: Lexicon, meaning: TemperatureMeaning): boolean =>
  meaning.alone || meaning.use !== 'rare' || meaning.bodies.includes(lexicon.hints.body ?? '');

/** A single letter stands alone, or begins a word that goes on with the value. */
const letterNeeds = (marking: Marking, at: number, end: number): Need =>
  wordBegins(marking, at) && /^\d{3}(?!\d)/.test(marking.text.slice(end))
    ? 'touching-before-value'
    : 'whole-word';

/** Codes that stand whole in a table. */
const namedAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  [
    ...new Set(
      [...lexicon.tables.class1Codes, ...lexicon.tables.class2Codes].map((row) => row.code),
    ),
  ]
    .map((code) => ({ code, found: wordAt(marking, at, code) }))
    .flatMap(({ code, found }) => {
      if (found === undefined || !standsFree(marking, at, found.end)) return [];
      // Two letters by themselves are too easily part of a name to be taken in small ones.
      if (!found.sameCase && code.length < 3) return [];
      return readTemperatureCharacteristic(lexicon.tables, code)
        .filter((meaning) => isAskedFor(lexicon, meaning))
        .map((meaning) =>
          tokenOf(
            at,
            found.end,
            meaning,
            weightOf(meaning.alone ? weights.temperature : weights.temperatureLetter, meaning.use) +
              (found.sameCase ? 0 : weights.otherCase),
            meaning.alone ? [] : [letterNeeds(marking, at, found.end)],
          ),
        );
    });

const BY_RULE = /[A-Za-z]\d[A-Za-z]|\d[A-Z]\d/y;

/** Three-place codes that are put together by rule. */
const ruledAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] => {
  BY_RULE.lastIndex = at;
  const written = BY_RULE.exec(marking.text)?.[0];
  if (written === undefined || !standsFree(marking, at, at + 3)) return [];
  const code = written.toUpperCase();
  return readTemperatureCharacteristic(lexicon.tables, code)
    .filter((meaning) => meaning.byRule)
    .filter(
      (meaning) =>
        (meaning.characteristic.class === 2 && !isFigure(code.charAt(0))) ||
        (wordBegins(marking, at) && wordEnds(marking, at + 3)),
    )
    .map((meaning) =>
      tokenOf(
        at,
        at + 3,
        meaning,
        weightOf(weights.temperature, meaning.use) + (written === code ? 0 : weights.otherCase),
        [],
      ),
    );
};

/** A slope letter behind the tolerance letter. */
const slopeLettersAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  slopeLetters(lexicon.tables, marking.text.charAt(at))
    .filter(() => !isLetter(marking.text.charAt(at + 2)))
    .map((meaning) =>
      tokenOf(at, at + 1, meaning, weightOf(weights.temperatureLetter, meaning.use), [
        'touching-tolerance',
      ]),
    );

/** Every temperature characteristic that can be seen at an index. */
export const temperaturesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] => [
  ...namedAt(lexicon, marking, at),
  ...ruledAt(lexicon, marking, at),
  ...slopeLettersAt(lexicon, marking, at),
];
