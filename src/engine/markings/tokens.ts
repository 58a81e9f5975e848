import { climateAt } from './climate.ts';
import { datesAt } from './dates.ts';
import type { Lexicon } from './lexicon.ts';
import { temperaturesAt } from './temperature-tokens.ts';
import type { Marking } from './text.ts';
import type { Token } from './token.ts';
import { toleranceLettersAt, writtenTolerancesAt } from './tolerances.ts';
import { figureValuesAt, letterValuesAt, mantissaValuesAt, unitValuesAt } from './values.ts';
import { codedVoltagesAt, writtenVoltagesAt } from './voltages.ts';
import { wordsAt } from './words.ts';

/** Every way to take the marking from an index on. */
export const tokensAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] => {
  const withUnit = [
    ...unitValuesAt(lexicon, marking, at),
    ...writtenVoltagesAt(lexicon, marking, at),
  ];
  const withoutUnit = withUnit.some((token) => token.withUsualUnit)
    ? []
    : [...figureValuesAt(lexicon, marking, at), ...letterValuesAt(lexicon, marking, at)];
  return [
    ...withUnit,
    ...withoutUnit,
    ...codedVoltagesAt(lexicon, marking, at),
    ...mantissaValuesAt(lexicon, marking, at),
    ...toleranceLettersAt(lexicon, marking, at),
    ...writtenTolerancesAt(lexicon, marking, at),
    ...temperaturesAt(lexicon, marking, at),
    ...wordsAt(lexicon, marking, at),
    ...climateAt(lexicon, marking, at),
    ...datesAt(lexicon, marking, at),
  ];
};
