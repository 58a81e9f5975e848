import type { MarkingTables } from '../../../schemas/markings.ts';
import { caseCost } from '../lexicon/case-cost.ts';
import type { Names } from '../lexicon/names.ts';
import { isUnitOfPower } from './powers.ts';
import type { Tolerance } from '../meanings/reading.ts';
import { sayTolerance } from '../meanings/say.ts';
import type { Item, Scan } from '../lexicon/scan.ts';
import {
  isBlank,
  isFigure,
  isInNumber,
  isLetter,
  isTimesAt,
  madeUp,
  skipBlanks,
  skipBlanksBack,
  wordEnds,
} from '../text/text.ts';
import type { ElsewhereTolerance, Meaning, Need, Token, Use } from '../meanings/token.ts';
import { inOrderOfUse } from '../meanings/use.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import { areVoltsBehind } from '../lexicon/volts-at.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';

type ToleranceRow = MarkingTables['toleranceLetters'][number];

/** What a row of the table of tolerance letters says, in SI units. */
export const toleranceOf = (row: ToleranceRow): Tolerance =>
  row.unit === 'percent'
    ? { minus: row.minus / 100, plus: row.plus / 100, unit: 'fraction' }
    : { minus: row.minus * 1e-12, plus: row.plus * 1e-12, unit: 'F' };

/** One meaning of a tolerance letter. */
export interface ToleranceMeaning {
  tolerance: Tolerance;
  use: ToleranceRow['use'];
  bodies: readonly string[];
  origins: readonly string[];
  source: string;
}

/** Whether a capacitance in F is in the span that a meaning is for. */
export const spanHolds = (
  capacitance: number,
  span: { from: number | undefined; below: number | undefined },
): boolean =>
  capacitance >= (span.from ?? 0) * (1 - 1e-9) &&
  capacitance < (span.below ?? Infinity) * (1 - 1e-9);

/**
 * Every meaning of a tolerance letter, the usual one first. The same letter is picofarads below
 * 10 pF and per cent above, so a capacitance in F narrows them. Latin and Cyrillic letters differ.
 */
export const readToleranceLetter = (
  tables: MarkingTables,
  letter: string,
  capacitance?: number,
): ToleranceMeaning[] =>
  inOrderOfUse(
    tables.toleranceLetters
      .filter((row) => row.letter === letter)
      .filter(
        (row) =>
          capacitance === undefined ||
          spanHolds(capacitance, { from: row.from_f, below: row.below_f }),
      ),
  ).map((row) => ({
    tolerance: toleranceOf(row),
    use: row.use,
    bodies: row.bodies,
    origins: row.origins,
    source: row.source,
  }));

/** What of a row decides how its letter is found. */
type LetterRow = Pick<ToleranceRow, 'letter' | 'script' | 'use' | 'met' | 'bodies'>;

const AFTER_GAP: readonly Need[] = ['after-value', 'whole-word'];
const AFTER_RATING: readonly Need[] = ['after-rating', 'whole-word'];
const BEFORE_VOLTS: readonly Need[] = ['after-value'];
const TOUCHING: readonly Need[] = ['touching-value'];
const TOUCHING_RATING: readonly Need[] = ['touching-rating'];

const VOLTS_AND_LETTER = /\s(\d{2,3})\p{L}$/u;

/** Whether the letter before an index ends a word of figures that are usual volts, as in `226 16K`. */
const isBehindVolts = ({ lexicon, marking }: Scan, end: number): boolean =>
  wordEnds(marking, end) &&
  lexicon.usualVolts.has(Number(VOLTS_AND_LETTER.exec(marking.text.slice(0, end))?.[1]));

/** What a tolerance letter must have about it, behind a gap or without one; volts may touch a common one. */
const toleranceNeeds = (
  scan: Scan,
  { met }: LetterRow,
  gap: boolean,
  end: number,
): readonly Need[] => {
  if (!gap) return met === 'often' && isBehindVolts(scan, end) ? TOUCHING_RATING : TOUCHING;
  if (met !== 'often') return AFTER_GAP;
  return areVoltsBehind(scan, end) ? BEFORE_VOLTS : AFTER_RATING;
};

/** What a letter adds that cannot be read, by how often it is met. */
const completedLetter = (found: FoundWord<Item>, met: ToleranceRow['met']): number =>
  madeUp(found.assumed) > 0 ? weights.completedLetter[met] : 0;

/** Whether figures run on behind a gap, so that the letter belongs to them. */
const isFigureAfterGap = (text: string, at: number, gap: boolean): boolean =>
  gap && isFigure(text.charAt(at));

/** Figures of the codes that a tolerance letter follows at once. */
const FIGURES_OF_CODE = 3;

/** Whether a letter may be the unit of a capacitance in a place, by one of some uses. */
const mayBeUnit = (
  { lexicon }: Scan,
  letter: string,
  place: 'middle' | 'end',
  uses: readonly Use[],
): boolean =>
  (lexicon.values.points.get(letter) ?? []).some(
    (row) => row.quantity === 'capacitance' && row.places.includes(place) && uses.includes(row.use),
  );

/** Figures with or without a point, and no letter among them that is it. */
const PLAIN_FIGURES = /(?<![\p{L}\d.,])\d+(?:[.,]\d+)?$/u;

/** The same, or a fraction without the nought before its point. */
const OHMS = /(?<![\p{L}\d.,])(?:\d+(?:[.,]\d+)?|[.,]\d+)$/u;

/** Characters of the longest number that a letter of ohms stands behind, and one before it. */
const LONGEST_NUMBER = 8;

/** Whether a letter behind plain figures is the unit of ohms, and tells that they are some, as that of `270E`. */
const isUnitOfOhms = ({ lexicon, marking: { text } }: Scan, letter: string, behind: number) =>
  OHMS.test(text.slice(Math.max(0, behind - LONGEST_NUMBER), behind)) &&
  (lexicon.values.points.get(letter) ?? []).some(
    (row) => row.tells_kind && row.places.includes('end') && row.use !== 'rare',
  );

const USUAL: readonly Use[] = ['usual'];
const MET: readonly Use[] = ['usual', 'other'];

/** Whether the figures before a letter stand behind one that is their point, as in `m12P`. */
const isBehindPoint = ({ lexicon, marking: { text } }: Scan, at: number): boolean => {
  let from = at;
  while (isFigure(text.charAt(from - 1))) from -= 1;
  return (lexicon.values.points.get(text.charAt(from - 1)) ?? []).some(
    ({ quantity, places, use }) =>
      quantity === 'capacitance' && use === 'usual' && places.includes('start'),
  );
};

/** Whether the letter at an index is one of the tolerances that are often met. */
const isOften = ({ lexicon, marking: { text } }: Scan, at: number): boolean =>
  lexicon.tables.toleranceLetters.some(
    (row) => row.met === 'often' && row.letter === text.charAt(at),
  );

const PADDED_CODE = /(?<![\d.,])0\d{3}$/;

/** Whether the figures before an index are a code that begins with a nought, as in `0620P`. */
const isPadded = (text: string, at: number): boolean =>
  PADDED_CODE.test(text.slice(Math.max(0, at - 5), at));

/**
 * Whether a letter behind figures is rather the unit of the value, as the P of `47P` and `100PK` and
 * the R of `56R2Z` are: a tolerance letter of its own follows, or the letter is seldom met as a
 * tolerance and the figures are too few for a code or end in a nought, as in `470P`.
 */
const isUnitOfValue = (scan: Scan, { met, use }: LetterRow, at: number, end: number): boolean => {
  const { text } = scan.marking;
  const letter = text.charAt(at);
  const behind = skipBlanksBack(scan.marking, at);
  if (!isFigure(text.charAt(behind - 1)) || isBehindPoint(scan, behind) || isPadded(text, behind))
    return false;
  if (isInNumber(scan.marking, behind - FIGURES_OF_CODE)) return false;
  const isNoCode =
    !isFigure(text.charAt(behind - FIGURES_OF_CODE)) || text.charAt(behind - 1) === '0';
  const isSeldom = met === 'seldom' && isNoCode;
  if (isLetter(text.charAt(end)))
    return mayBeUnit(scan, letter, 'end', met === 'seldom' && isOften(scan, end) ? MET : USUAL);
  const place = isFigure(text.charAt(end)) ? 'middle' : 'end';
  return (
    isSeldom &&
    (mayBeUnit(scan, letter, place, use === 'rare' ? USUAL : MET) ||
      (place === 'end' && isUnitOfOhms(scan, letter, behind)))
  );
};

/** Plain figures that count no zeros: few of them, round ones, or with a point. */
const FIGURES_OF_POWER = /(?<![\p{L}\d.,])(?:\d{1,2}|\d+0|\d*[.,]\d+)$/u;

/**
 * Whether a letter behind plain figures is a unit of power, as the W of `0.5W` and `10 W` is: it is seldom
 * met as a tolerance.
 */
const isForWatts = (scan: Scan, { met }: LetterRow, at: number, end: number): boolean =>
  met === 'seldom' &&
  FIGURES_OF_POWER.test(scan.marking.text.slice(0, skipBlanksBack(scan.marking, at))) &&
  isUnitOfPower(scan, at, end);

const FIGURES_AND_GAP = /(?<![\p{L}\d.,])(\d+(?:[.,]\d+)?)\s$/u;

/** Whether a gap and figures that are usual volts stand before an index, as before the last letter of `25 В`. */
const isBehindUsualVolts = ({ usualVolts }: Scan['lexicon'], text: string, at: number): boolean =>
  usualVolts.has(
    Number(FIGURES_AND_GAP.exec(text.slice(Math.max(0, at - 9), at))?.[1]?.replace(',', '.')),
  );

/** Whether a letter behind figures is rather that of volts, as the V of `2x12V` is: in a type number it is none. */
const isForVolts = ({ lexicon, marking }: Scan, at: number): boolean =>
  (isFigure(marking.text.charAt(at - 1)) || isBehindUsualVolts(lexicon, marking.text, at)) &&
  !isInNumber(marking, at - FIGURES_OF_CODE) &&
  lexicon.tables.voltageWords.some(
    ({ word, place, use }) =>
      place === 'after' && use === 'usual' && word === marking.text.charAt(at),
  );

/** Whether it was said that the part is a capacitor, which has no watts. */
const isSaidToBeCapacitor = ({ lexicon: { hints, bodies, bodiesOfKind } }: Scan): boolean =>
  hints.kind === 'capacitor' ||
  (hints.body !== undefined && (bodies.bitsOf([hints.body]) & bodiesOfKind.capacitor) !== 0);

/** What a letter that is rather a unit of what stands before it loses as a tolerance. */
const forUnit = (scan: Scan, row: LetterRow, meaning: Meaning, at: number, end: number): number => {
  if (isForWatts(scan, row, at, end))
    return isSaidToBeCapacitor(scan) ? weights.toleranceForUnit : weights.toleranceForPower;
  if (isUnitOfValue(scan, row, at, end)) {
    const isBeforeVolts =
      row.met === 'seldom' && areVoltsBehind(scan, skipBlanks(scan.marking, end));
    return weights.toleranceForUnit + (isBeforeVolts ? weights.seldomBeforeVolts : 0);
  }
  return isForVolts(scan, at) || isMultiplier(scan, meaning, at) ? weights.toleranceForUnit : 0;
};

/**
 * Whether a letter behind the plain figures of a resistance is rather its thousand or million, as the K of
 * `470K` is; that of `4K7K` has its thousand already, and that of `RC20GF472K` noughts in its code.
 */
const isMultiplier = ({ lexicon, marking }: Scan, { content }: Meaning, at: number) =>
  content.says === 'tolerance' &&
  content.of === 'resistance' &&
  PLAIN_FIGURES.test(marking.text.slice(Math.max(0, at - FIGURES_OF_CODE - 1), at)) &&
  !isInNumber(marking, at - FIGURES_OF_CODE) &&
  (lexicon.values.points.get(marking.text.charAt(at)) ?? []).some(
    ({ quantity, places }) => quantity === 'resistance' && places.includes('end'),
  );

/** Whether a seldom letter has figures at once behind it, as the N of `100N750` has. */
const isBeforeFigures = (text: string, { met }: LetterRow, end: number): boolean =>
  met === 'seldom' && isFigure(text.charAt(end));

/** Whether a letter is seldom met, and on one sort of body alone: nobody takes what is worn for it. */
const isOfFew = ({ met, bodies }: LetterRow): boolean => met === 'seldom' && bodies.length > 0;

/** A letter of either table of tolerances as a word to be found. */
export const letterItem = (row: LetterRow, meaning: Meaning): [word: string, item: Item] => {
  const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    const { text } = scan.marking;
    const before = text.charAt(at - 1);
    const gap = isBlank(before) || before === '(';
    if (row.script === 'cyrillic' && !found.sameCase) return undefined;
    if (madeUp(found.assumed) > 0 && isOfFew(row)) return undefined;
    if (isFigureAfterGap(text, at, gap) || isTimesAt(scan.marking, at)) return undefined;
    return {
      at,
      end: found.end,
      meaning,
      weight:
        weightOf(weights.tolerance, row.use) +
        caseCost(scan, at, found) +
        (gap ? weights.gap : 0) +
        completedLetter(found, row.met) +
        forUnit(scan, row, meaning, at, found.end) +
        (isBeforeFigures(text, row, found.end) ? weights.toleranceBeforeFigures : 0) +
        found.cost,
      needs: toleranceNeeds(scan, row, gap, found.end),
      assumed: found.assumed,
    };
  };
  return [row.letter, { kind: 'word', take, mayBeMadeUp: true }];
};

const sayRow = ({ minus, plus, unit }: ToleranceRow): string =>
  sayTolerance(minus, plus, unit === 'percent' ? '%' : 'pF');

/** What other rows have the letter of one for. */
const elsewhere = (tables: MarkingTables, row: ToleranceRow): ElsewhereTolerance[] =>
  tables.toleranceLetters
    .filter((other) => other.letter === row.letter && sayRow(other) !== sayRow(row))
    .map((other) => ({ fromF: other.from_f, belowF: other.below_f, means: sayRow(other) }));

/** The tolerance letters as words to be found. */
export const toleranceItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] =>
  tables.toleranceLetters.map((row) => {
    const meaning: Meaning = {
      slot: 'tolerance',
      content: {
        says: 'tolerance',
        of: 'capacitance',
        tolerance: toleranceOf(row),
        fromF: row.from_f,
        belowF: row.below_f,
        elsewhere: elsewhere(tables, row),
      },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: [],
      means: () => sayRow(row),
      source: row.source,
    };
    return letterItem(row, meaning);
  });
