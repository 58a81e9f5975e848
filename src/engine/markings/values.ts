import type { Lexicon } from './lexicon.ts';
import { common, rarer } from './lexicon.ts';
import type { WrittenNumber } from './numbers.ts';
import { numbersAt } from './numbers.ts';
import { say } from './say.ts';
import type { Marking } from './text.ts';
import { isFigure, isLetter, skipBlanks, wordAt } from './text.ts';
import type { Token } from './token.ts';
import { weightOf, weights } from './weights.ts';

type Quantity = 'capacitance' | 'resistance';

/** A product without the noise of binary fractions. */
const times = (...factors: number[]): number =>
  Number(factors.reduce((product, factor) => product * factor, 1).toPrecision(12));

const contentOf = (quantity: Quantity, value: number, figures: string, withUnit: boolean) => ({
  says: quantity,
  value,
  figures,
  withUnit,
});

const sayIn = (quantity: Quantity, value: number): string =>
  say(value, quantity === 'capacitance' ? 'F' : 'Ω');

/** The meanings of figures whose last one counts the noughts. */
const multiplied = (lexicon: Lexicon, at: number, number: WrittenNumber, text: string): Token[] =>
  lexicon.tables.valueForms
    .filter((form) => form.shape === 'multiplier')
    .filter((form) => number.written >= form.figures_min && number.written <= form.figures_max)
    .flatMap((form) =>
      lexicon.tables.multipliers
        .filter((row) => row.scheme === 'figures' && row.figure === text.at(-1))
        .flatMap((row): Token[] => {
          const bodies = common(form.bodies, row.bodies);
          const origins = common(form.origins, row.origins);
          const value = times(Number(text.slice(0, -1)), row.factor, form.unit_f);
          if (bodies === undefined || origins === undefined) return [];
          if (!inSpan(form, value)) return [];
          const figures = text.slice(0, -1).replace(/^0+/, '');
          return [
            {
              at,
              end: number.end,
              slot: 'value',
              content: contentOf('capacitance', value, figures, false),
              weight:
                weightOf(weights.value, rarer(form.use, row.use)) +
                lexicon.seriesWeight(figures, number.written > 3 ? 'precise' : 'bare'),
              needs: [],
              bodies,
              origins,
              types: [],
              means: say(value, 'F'),
              source: row.use === 'usual' ? form.source : row.source,
              settle: form.settle,
              voltsFrom: form.volts_min,
            },
          ];
        }),
    );

const inSpan = (form: { value_min: number; value_max: number }, value: number): boolean =>
  value >= form.value_min * (1 - 1e-9) && value <= form.value_max * (1 + 1e-9);

/** The meanings of figures that are to be taken as they stand. */
const asWritten = (lexicon: Lexicon, at: number, number: WrittenNumber): Token[] =>
  lexicon.tables.valueForms
    .filter(() => number.decimal || !number.padded)
    .filter((form) => form.shape === (number.decimal ? 'decimal' : 'plain'))
    .filter((form) => number.written >= form.figures_min && number.written <= form.figures_max)
    .map((form) => ({ form, value: times(number.value, form.unit_f) }))
    .filter(({ form, value }) => inSpan(form, value))
    .map(({ form, value }) => ({
      at,
      end: number.end,
      slot: 'value',
      content: contentOf('capacitance', value, number.figures, false),
      weight: weightOf(weights.value, form.use) + lexicon.seriesWeight(number.figures, 'bare'),
      needs: [],
      bodies: form.bodies,
      origins: form.origins,
      types: [],
      means: say(value, 'F'),
      source: form.source,
      settle: form.settle,
      voltsFrom: form.volts_min,
    }));

/** Values written in figures alone. */
export const figureValuesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  numbersAt(marking, at)
    .filter((number) => !number.grouped && number.figures !== '')
    .flatMap((number) =>
      number.decimal
        ? asWritten(lexicon, at, number)
        : [
            ...multiplied(lexicon, at, number, marking.text.slice(at, number.end)),
            ...asWritten(lexicon, at, number),
          ],
    );

const figuresFrom = (marking: Marking, at: number): string => {
  let end = at;
  while (isFigure(marking.text.charAt(end))) end += 1;
  return marking.text.slice(at, end);
};

interface LetterForm {
  place: 'start' | 'middle' | 'end';
  letter: string;
  end: number;
  value: number;
  figures: string;
}

/** Most figures before, after and around a letter that stands for the decimal point. */
const MOST_BEFORE = 3;
const MOST_AFTER = 3;
const MOST_TOGETHER = 4;

const significant = (figures: string): string => figures.replace(/^0+/, '').replace(/0+$/, '');

/** Every way to see a letter as the decimal point of a number at an index. */
const letterFormsAt = (marking: Marking, at: number): LetterForm[] => {
  const before = figuresFrom(marking, at);
  const letterAt = at + before.length;
  const letter = marking.text.charAt(letterAt);
  const after = figuresFrom(marking, letterAt + 1);
  const fits =
    isLetter(letter) &&
    before.length <= MOST_BEFORE &&
    after.length > 0 &&
    after.length <= MOST_AFTER &&
    before.length + after.length <= MOST_TOGETHER;
  const inside: LetterForm[] = fits
    ? [
        {
          place: before === '' ? 'start' : 'middle',
          letter,
          end: letterAt + 1 + after.length,
          value: Number(`${before === '' ? '0' : before}.${after}`),
          figures: significant(before + after),
        },
      ]
    : [];
  const behind = numbersAt(marking, at)
    .filter((number) => !number.grouped && !isFigure(marking.text.charAt(number.end + 1)))
    .map((number): LetterForm => ({
      place: 'end',
      letter: marking.text.charAt(number.end),
      end: number.end + 1,
      value: number.value,
      figures: number.figures,
    }));
  return [...inside, ...behind].filter((form) => form.figures !== '');
};

/** Whether a unit in full follows where a letter alone was seen, as in `47nF`. */
const unitFollows = (lexicon: Lexicon, marking: Marking, at: number): boolean =>
  lexicon.tables.unitWords.some((row) => {
    const found = wordAt(marking, at, row.word, row.exact_case);
    return row.word.length > 1 && found !== undefined && !isLetter(marking.text.charAt(found.end));
  });

/** Values in which a letter stands for the decimal point. */
export const letterValuesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  letterFormsAt(marking, at)
    .filter((form) => form.place !== 'end' || !unitFollows(lexicon, marking, form.end - 1))
    .flatMap((form) =>
      lexicon.tables.pointLetters
        .filter((row) => row.letter === form.letter && row.places.includes(form.place))
        .filter((row) => form.value >= row.number_min && form.value <= row.number_max)
        .map((row) => ({
          at,
          end: form.end,
          slot: 'value',
          content: contentOf(row.quantity, times(form.value, row.factor), form.figures, false),
          weight:
            weightOf(weights.value, row.use) +
            lexicon.seriesWeight(form.figures, row.precise ? 'precise' : 'bare'),
          needs: [],
          bodies: row.bodies,
          origins: row.origins,
          types: [],
          means: sayIn(row.quantity, times(form.value, row.factor)),
          source: row.source,
          settle: row.settle,
        })),
    );

/** Whether a unit may end here: no letter follows, or a single one that may be a tolerance. */
const unitEnds = (marking: Marking, end: number): boolean =>
  !isLetter(marking.text.charAt(end)) || !isLetter(marking.text.charAt(end + 1));

/** The longest units of the table that stand at an index. */
const unitsAt = (lexicon: Lexicon, marking: Marking, at: number) => {
  const found = lexicon.tables.unitWords.flatMap((row) => {
    const word = wordAt(marking, at, row.word, row.exact_case);
    return row.quantity !== 'fraction' && word !== undefined && unitEnds(marking, word.end)
      ? [{ row, quantity: row.quantity, end: word.end }]
      : [];
  });
  const longest = Math.max(...found.map(({ end }) => end));
  return found.filter(({ end }) => end === longest);
};

/** Values with their unit. */
export const unitValuesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  numbersAt(marking, at)
    .filter((number) => number.figures !== '')
    .flatMap((number) =>
      unitsAt(lexicon, marking, skipBlanks(marking, number.end)).map(({ row, quantity, end }) => {
        const value = times(number.value, row.factor);
        return {
          at,
          end,
          slot: 'value',
          content: contentOf(quantity, value, number.figures, true),
          weight:
            weightOf(weights.valueWithUnit, row.use) + lexicon.seriesWeight(number.figures, 'unit'),
          needs: [],
          bodies: row.bodies,
          origins: row.origins,
          types: [],
          means: `${sayIn(quantity, value)} (${row.name})`,
          source: row.source,
          settle: row.settle,
          withUsualUnit: row.use === 'usual',
        };
      }),
    );

/** Values of small chips: a letter for two figures, then a figure that counts the noughts. */
export const mantissaValuesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] => {
  const text = marking.text.slice(at, at + 2);
  return lexicon.tables.mantissaLetters
    .filter((row) => row.letter === text.charAt(0))
    .flatMap((row) =>
      lexicon.tables.multipliers
        .filter((digit) => digit.scheme === 'letter-figure' && digit.figure === text.charAt(1))
        .map((digit) => times(row.value, digit.factor, 1e-12))
        .map((value) => ({
          at,
          end: at + 2,
          slot: 'value',
          content: contentOf('capacitance', value, '', false),
          weight: weightOf(weights.mantissaLetter, row.use),
          needs: ['whole-word' as const],
          bodies: row.bodies,
          origins: row.origins,
          types: [],
          means: say(value, 'F'),
          source: row.source,
          settle: 'only ceramic chips carry a letter and a figure alone',
        })),
    );
};
