import { significant, type FigureRun } from '../lexicon/numbers.ts';
import { figuresAt, unitsFoundAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import {
  isAsWritten,
  isInNumber,
  isCyrillic,
  isFigure,
  isLetter,
  madeUp,
  othersAt,
  skipBlanks,
  wordEnds,
  type Assumed,
} from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import type { PointLetterRow } from '../lexicon/value-rows.ts';
import { figuresWeight, times, valueToken, type Quantity } from './value-token.ts';
import { areVoltsBehind } from '../lexicon/volts-at.ts';
import { weightOf, weights } from '../meanings/weights.ts';

interface LetterForm {
  place: 'start' | 'middle' | 'end';
  letter: string;
  /** Whether nothing but a nought stands before the letter. */
  nought: boolean;
  end: number;
  value: number;
  figures: string;
  /** How many figures are written, noughts behind others counted. */
  written: number;
  /** Whether a gap parts the letter from the figures. */
  apart: boolean;
  assumed: readonly Assumed[];
  cost: number;
}

/** Most figures before, after and around a letter that stands for the decimal point. */
const MOST_BEFORE = 3;
const MOST_AFTER = 3;
const MOST_TOGETHER = 4;

interface Letter {
  letter: string;
  assumed: readonly Assumed[];
  cost: number;
}

const NO_LETTER: readonly Letter[] = [];

/** What the character at an index is as a letter, or may be. */
const lettersAt = ({ lexicon, marking }: Scan, at: number): readonly Letter[] => {
  const written = marking.text.charAt(at);
  if (!lexicon.values.points.has(written) && isAsWritten(marking, at)) return NO_LETTER;
  if (marking.worn[at])
    return [...lexicon.values.points.keys()]
      .filter((as) => marking.cyrillic || !isCyrillic(as))
      .map((as) => ({
        letter: as,
        assumed: [{ at, as, why: 'worn' }],
        cost: weights.worn,
      }));
  const plain: Letter[] = isLetter(written) ? [{ letter: written, assumed: [], cost: 0 }] : [];
  const others = othersAt(marking, at).map(({ as, cost }): Letter => ({
    letter: as,
    assumed: [{ at, as, why: 'look-alike' }],
    cost,
  }));
  return [...plain, ...others].filter(({ letter }) => lexicon.values.points.has(letter));
};

const noRun = (at: number): FigureRun => ({ end: at, digits: '', assumed: [], cost: 0 });

interface Part {
  assumed: readonly Assumed[];
}

const NO_PART: Part = { assumed: [] };

/** Whether no more than one of some characters was made up. */
const isReadable = (first: Part, second = NO_PART, third = NO_PART): boolean =>
  madeUp(first.assumed) + madeUp(second.assumed) + madeUp(third.assumed) < 2;

/** How many figures of a run are letters that look alike. */
const lookAlike = ({ assumed }: FigureRun): number => assumed.length - madeUp(assumed);

/** Whether a figure is written among those before and behind a letter: `smo` is no 5µ0. */
const hasFigure = (before: FigureRun, after: FigureRun): boolean =>
  lookAlike(before) + lookAlike(after) < before.digits.length + after.digits.length;

/** Every way to see a letter between figures, or before them, as their decimal point. */
const insideAt = (scan: Scan, at: number): LetterForm[] => {
  const { marking } = scan;
  const first: FigureRun[] = isFigure(marking.text.charAt(at)) ? [] : [noRun(at)];
  const befores = [...first, ...figuresAt(scan, at, MOST_BEFORE)].filter((run) => isReadable(run));
  return befores.flatMap((before) =>
    lettersAt(scan, before.end)
      .filter((letter) => isReadable(before, letter))
      .flatMap((letter) =>
        figuresAt(scan, before.end + 1, MOST_AFTER)
          .filter((after) => before.digits.length + after.digits.length <= MOST_TOGETHER)
          .filter((after) => isReadable(before, letter, after) && hasFigure(before, after))
          .map((after): LetterForm => ({
            place: before.digits === '' ? 'start' : 'middle',
            letter: letter.letter,
            nought: before.digits === '0',
            end: after.end,
            value: Number(`${before.digits === '' ? '0' : before.digits}.${after.digits}`),
            figures: significant(before.digits + after.digits),
            written: (before.digits === '0' ? 0 : before.digits.length) + after.digits.length,
            apart: false,
            assumed: [...before.assumed, ...letter.assumed, ...after.assumed],
            cost: before.cost + letter.cost + after.cost,
          })),
      ),
  );
};

const FIGURES = /\d*/y;

/**
 * Whether a letter parts a value from the volts beside it, as in `22µ35`: with the letter for its
 * point the value would be one that no series has.
 */
const partsFromVolts = (scan: Scan, { digits }: { digits: string }, at: number): boolean => {
  FIGURES.lastIndex = at;
  const behind = FIGURES.exec(scan.marking.text)?.[0] ?? '';
  return areVoltsBehind(scan, at) && !scan.lexicon.places.has(significant(digits + behind));
};

/** Whether a letter is one of the tolerances that are met, and not only seldom. */
const isMetTolerance = ({ lexicon }: Scan, letter: string): boolean =>
  lexicon.tables.toleranceLetters.some((row) => row.letter === letter && row.met !== 'seldom');

/** Whether a word ends at an index, or behind thousands with the letter of a taper there, as in `47 kA`. */
const endsBefore = ({ lexicon, marking }: Scan, at: number): boolean =>
  wordEnds(marking, at) ||
  ('kKM'.includes(marking.text.charAt(at - 1)) &&
    wordEnds(marking, at + 1) &&
    lexicon.tables.tapers.some(
      ({ letter, use }) => use === 'usual' && letter === marking.text.charAt(at),
    ));

/** Every way to see a letter behind figures as their unit. */
const behindAt = (scan: Scan, at: number): LetterForm[] =>
  writtenAt(scan, at)
    .filter((number) => isReadable(number) && !number.grouped)
    .filter(
      (number) =>
        !isFigure(scan.marking.text.charAt(number.end + 1)) ||
        partsFromVolts(scan, number, number.end + 1),
    )
    .flatMap((number) => {
      const start = skipBlanks(scan.marking, number.end);
      const apart = start > number.end;
      return (
        lettersAt(scan, start)
          .filter((letter) => isReadable(number, letter))
          .filter(() => !apart || endsBefore(scan, start + 1))
          // A nought in front is of a code, which a letter that is met behind codes does not make a number.
          .filter((letter) => !number.padded || !isMetTolerance(scan, letter.letter))
          .map((letter): LetterForm => ({
            place: 'end',
            letter: letter.letter,
            nought: false,
            end: start + 1,
            value: number.value,
            figures: number.figures,
            written: number.digits.length,
            apart,
            assumed: [...number.assumed, ...letter.assumed],
            cost: number.cost + letter.cost + (apart ? weights.gap : 0),
          }))
      );
    });

/** Whether a unit in full follows where a letter alone was seen, as in `47nF`. */
const unitFollows = (scan: Scan, at: number): boolean =>
  unitsFoundAt(scan, at).some(
    ({ word, end }) => word.length > 1 && !isLetter(scan.marking.text.charAt(end)),
  );

/** Whether a capacitance is rather a resistance, as `0R22` is: capacitors do without the nought. */
const isOfResistor = (
  points: Scan['lexicon']['values']['points'],
  { nought, letter }: LetterForm,
  quantity: Quantity,
): boolean =>
  nought &&
  quantity === 'capacitance' &&
  (points.get(letter) ?? []).some((row) => row.quantity === 'resistance');

const WORDS_BEFORE = /^(?:\p{L}[\p{L}-]{2,}\s+)+/u;

/** A marking without words before it that are no figures, such as a maker's: what else is printed. */
const besideWords = (text: string): string => text.replace(WORDS_BEFORE, '');

/**
 * A small k behind figures, a capital letter behind a decimal point, and either before per cents, so
 * that it is no tolerance.
 */
const OHMS_ALONE =
  /^(?:\d+(?:[.,]\d+)?\s?%\s+\d+(?:[.,]\d+)?[kKM]|\d+(?:[.,]\d+)?\s?k|\d+[.,]\d+\s?[KM]|\d+(?:[.,]\d+)?\s?[kKM](?:\s+|\s*(?:±|\+\/?[-−–]|[-−–])\s*)\d*(?:[.,]?\d+)\s*%)$/u;

/** A small k that is of ohms whatever short words stand before it, and a taper behind a stroke. */
const SMALL_THOUSANDS = /^(?:\p{L}[\p{L}\d.-]*\s+)*\d+(?:[.,]\d+)?\s?k(?:\/\p{L}+)?$/u;

const TOLERANCE_BEHIND = String.raw`(?:\s?[FGJKM]|(?:\s+|\s?(?:±|\+/?[-−–])\s?)\d*[.,]?\d+\s?%)`;

/** An R for the point and a tolerance in per cent: of a few picofarads it would be one in picofarads. */
const POINT_AND_TOLERANCE = new RegExp(String.raw`^\d{1,3}R\d{1,2}${TOLERANCE_BEHIND}$`, 'u');

/** Whole thousands or millions that are no code, or a value and its tolerance, and nothing else. */
const THOUSANDS_ALONE = /^(?:\d{1,2}|\d{2}0)\s?[KM]$/u;

/** Thousands with a K for the point and a tolerance, which some old ceramics have as well. */
const THOUSANDS_AND_TOLERANCE = new RegExp(String.raw`^\d{1,3}K\d{1,2}${TOLERANCE_BEHIND}$`, 'u');

/**
 * Whole thousands or millions, or an E for ohms, with the letter of a tolerance behind; and an E behind a
 * nought or a fraction, for behind a code it is that of a voltage, and behind two figures that of a chip.
 */
const LETTER_AND_TOLERANCE = /^(?:\d+(?:[KM]|(?:[.,]\d+)?E)\s?[FGJKM]|(?:\d{2}0|\d+[.,]\d+)E)$/u;

/**
 * Whether nothing but figures and a letter that resistors have behind them is printed, as `10k`, `4.7K`
 * or `2.2M`, be it with per cents as `15k 1%`; whole figures and a capital letter by themselves are as
 * well those of a capacitor with its tolerance. So is an R between figures with a tolerance, as `1R5J`.
 */
const isOhmsAlone = ({ marking }: Scan, { place, assumed, value }: LetterForm): boolean => {
  if (assumed.length > 0 || value < 1) return false;
  const text = besideWords(marking.text);
  return place === 'end'
    ? OHMS_ALONE.test(text) || LETTER_AND_TOLERANCE.test(text) || SMALL_THOUSANDS.test(marking.text)
    : POINT_AND_TOLERANCE.test(text);
};

/** Whether a letter of its own behind that of the resistance tells that it is one. */
const isToldByTolerance = (scan: Scan, { place }: LetterForm): boolean =>
  (place === 'end' ? LETTER_AND_TOLERANCE : POINT_AND_TOLERANCE).test(
    besideWords(scan.marking.text),
  );

/** Two figures and a letter that chips have for a multiplier. */
const CODE_OF_CHIP = /^\d\dE$/u;

/** Whether two figures and such a letter are all that is on what is said to be a resistor, as the `10E` of a list. */
const isOfResistorAlone = ({ lexicon: { hints, bodies, bodiesOfKind }, marking }: Scan): boolean =>
  CODE_OF_CHIP.test(marking.text) &&
  (hints.kind === 'resistor' ||
    (hints.body !== undefined && (bodies.bitsOf([hints.body]) & bodiesOfKind.resistor) !== 0));

/** Whether what is printed is a resistance at least as often as anything else. */
const isRatherOhms = (scan: Scan, { place, assumed }: LetterForm): boolean =>
  assumed.length === 0 &&
  ((place === 'end' ? THOUSANDS_ALONE : THOUSANDS_AND_TOLERANCE).test(
    besideWords(scan.marking.text),
  ) ||
    isOfResistorAlone(scan));

/** What the letter of a resistance makes of it. */
const letterWeight = (scan: Scan, form: LetterForm, row: PointLetterRow): number =>
  (form.place === 'end' || row.tells_kind ? weights.letterOfOhms : 0) +
  (isOhmsAlone(scan, form) ? weights.ohmsAlone : 0) +
  (isRatherOhms(scan, form) ? weights.ohmsRather : 0);

/** Figures about a letter of parts that are precise to a per cent or two. */
const PRECISE_FIGURES = 3;

/** Whether as many figures stand about a letter as precise parts have, as in `1R00`. */
const hasPreciseFigures = ({ place, written }: LetterForm): boolean =>
  place !== 'end' && written >= PRECISE_FIGURES;

/** What the place of the letter makes of a value: a nought before it, and a type number about it. */
const placeWeight = (scan: Scan, at: number, form: LetterForm, { quantity }: PointLetterRow) =>
  (isOfResistor(scan.lexicon.values.points, form, quantity) ? weights.noughtBeforeLetter : 0) +
  (form.place === 'end' && isInNumber(scan.marking, at) ? weights.unitInNumber : 0);

const mayBeTolerance = ({ lexicon }: Scan, { letter }: PointLetterRow): boolean =>
  lexicon.tables.toleranceLetters.some((row) => row.letter === letter && row.met !== 'seldom');

/** Values in which a letter stands for the decimal point. */
export const letterValuesAt = (scan: Scan, at: number): Token[] => {
  const { points } = scan.lexicon.values;
  return [...insideAt(scan, at), ...behindAt(scan, at)]
    .filter((form) => form.figures !== '')
    .filter((form) => form.place !== 'end' || !unitFollows(scan, form.end - 1))
    .flatMap((form) => {
      const rows = points.get(form.letter) ?? [];
      const mayBeOhms =
        scan.lexicon.hints.kind !== 'capacitor' &&
        rows.some(({ quantity }) => quantity === 'resistance');
      return (
        rows
          .filter((row) => row.places.includes(form.place))
          // A letter of a tolerance behind a gap is that of a capacitor, and the unit of a resistor.
          .filter(
            (row) => !form.apart || row.quantity === 'resistance' || !mayBeTolerance(scan, row),
          )
          .filter((row) => form.value >= row.number_min && form.value <= row.number_max)
          .flatMap((row): Token[] => {
            const ofResistor = row.quantity === 'resistance';
            const precise = hasPreciseFigures(form);
            const written = row.precise || (precise && ofResistor) ? 'precise' : 'bare';
            const added = figuresWeight(scan, form.figures, written, form.assumed);
            if (added === undefined) return [];
            return [
              valueToken({
                at,
                end: form.end,
                quantity: row.quantity,
                value: times(form.value, row.factor),
                figures: form.figures,
                weight:
                  weightOf(weights.value, row.use) +
                  (ofResistor ? letterWeight(scan, form, row) : 0) +
                  (precise && mayBeOhms && !ofResistor ? weights.preciseFigures : 0) +
                  placeWeight(scan, at, form, row) +
                  added +
                  form.cost,
                bodies: row.bodyBits,
                origins: row.originBits,
                source: row.source,
                settle: row.settle,
                ...(row.volts_min === undefined ? {} : { voltsFrom: row.volts_min }),
                tellsKind:
                  (row.tells_kind || (ofResistor && (precise || isToldByTolerance(scan, form)))) &&
                  form.assumed.length === 0,
                assumed: form.assumed,
              }),
            ];
          })
      );
    });
};
