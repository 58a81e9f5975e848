import { unitsFoundAt, voltsFoundAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import {
  isFigure,
  isInNumber,
  isLetter,
  skipBlanks,
  skipBlanksBack,
  wordBegins,
  wordEnds,
} from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { figuresWeight, times, valueToken } from './value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/** Whether a unit may end here: no letter follows, or a single one that may be a tolerance. */
const unitEnds = (text: string, end: number): boolean =>
  !isLetter(text.charAt(end)) || !isLetter(text.charAt(end + 1));

/** The longest units of the table that stand at an index. */
const unitsAt = (scan: Scan, at: number) => {
  const found = unitsFoundAt(scan, at).flatMap(({ item, end, sameCase, assumed, cost }) => {
    if (!unitEnds(scan.marking.text, end)) return [];
    const { row } = item;
    const { quantity } = row;
    if (quantity === 'fraction' || quantity === 'power') return [];
    if (row.exact_case && !sameCase) return [];
    return [{ item, quantity, end, assumed, cost }];
  });
  const longest = Math.max(...found.map(({ end }) => end));
  return found.filter(({ end }) => end === longest);
};

/** Between a unit and the figures behind it. */
const BEFORE_FIGURES = /\s*[:=]?\s*/y;

/** Whether a word means something by itself as well, as `MF` does that is a metal film. */
const isMark = ({ lexicon: { tables } }: Scan, word: string): boolean =>
  tables.bodyMarks.some(({ mark }) => mark === word) ||
  tables.dielectricCodes.some(({ code }) => code === word);

/** Whether figures that a unit before them is of end here, with no unit or letter of their own. */
const areBare = (scan: Scan, end: number): boolean =>
  wordEnds(scan.marking, end) && unitsAt(scan, skipBlanks(scan.marking, end)).length === 0;

/** Whether a marking begins with a word for its volts, so that its other units come first as well. */
const isLabel = (scan: Scan): boolean =>
  voltsFoundAt(scan, 0).some(
    ({ item, end }) => item.row.place === 'before' && wordEnds(scan.marking, end),
  );

type FoundUnit = ReturnType<typeof unitsAt>[number];
type Figures = ReturnType<typeof writtenAt>[number];

/** A value from its figures and its unit, wherever the two stand, with what else weighs and what was taken. */
const valueOf = (
  number: Figures,
  { item: { row, bodies, origins }, quantity }: FoundUnit,
  { at, end, weight, assumed }: Pick<Token, 'at' | 'end' | 'weight' | 'assumed'>,
): Token =>
  valueToken({
    ...{ at, end, quantity, bodies, origins, assumed },
    value: times(number.value, row.factor),
    figures: number.figures,
    unit: row.name,
    weight: weightOf(weights.valueWithUnit, row.use) + number.cost + weight,
    source: row.source,
    settle: row.settle,
  });

/** Values with their unit before the figures, as labels have them: `MFD 8`, `µF 10`, `OHMS 500`. */
const behindUnitAt = (scan: Scan, at: number): Token[] => {
  const { text } = scan.marking;
  if (!isLetter(text.charAt(at)) || !wordBegins(scan.marking, at)) return [];
  const isBehindFigures = isFigure(text.charAt(skipBlanksBack(scan.marking, at) - 1));
  if (isBehindFigures && !isLabel(scan)) return [];
  return unitsAt(scan, at)
    .filter(
      ({ end, assumed }) => end - at > 1 && assumed.length === 0 && !isLetter(text.charAt(end)),
    )
    .filter(({ end }) => !isMark(scan, text.slice(at, end)))
    .flatMap((unit) => {
      BEFORE_FIGURES.lastIndex = unit.end;
      BEFORE_FIGURES.test(text);
      return writtenAt(scan, BEFORE_FIGURES.lastIndex)
        .filter(({ figures, assumed }) => figures !== '' && assumed.length === 0)
        .filter(({ end }) => areBare(scan, end))
        .map((number) => {
          const added = figuresWeight(scan, number.figures, 'unit', []) ?? 0;
          const weight = added + weights.unitBefore;
          return valueOf(number, unit, { at, end: number.end, weight, assumed: [] });
        });
    });
};

/** Values with their unit behind the figures; in a type number that begins as `CSR13E106KP` does, letters behind are none. */
const beforeUnitAt = (scan: Scan, at: number): Token[] =>
  writtenAt(scan, at)
    .filter((number) => number.figures !== '' && !isInNumber(scan.marking, at))
    .flatMap((number) => {
      const units = unitsAt(scan, skipBlanks(scan.marking, number.end));
      const added =
        units.length === 0 ? 0 : figuresWeight(scan, number.figures, 'unit', number.assumed);
      if (added === undefined) return [];
      return units.map((unit) => {
        const completed = unit.cost < 0 ? weights.completedUnit : 0;
        return {
          ...valueOf(number, unit, {
            at,
            end: unit.end,
            weight: added + unit.cost + completed,
            assumed: [...number.assumed, ...unit.assumed],
          }),
          withUsualUnit: unit.item.row.use === 'usual' && unit.assumed.length === 0,
        };
      });
    });

/** Values with their unit, which stands behind the figures or, on labels, before them. */
export const unitValuesAt = (scan: Scan, at: number): Token[] => [
  ...beforeUnitAt(scan, at),
  ...behindUnitAt(scan, at),
];
