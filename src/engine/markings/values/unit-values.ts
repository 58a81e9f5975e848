import { unitsFoundAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import { isInNumber, isLetter, skipBlanks } from '../text/text.ts';
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

/** Values with their unit; in a type number that begins as `CSR13E106KP` does, letters behind are none. */
export const unitValuesAt = (scan: Scan, at: number): Token[] =>
  writtenAt(scan, at)
    .filter((number) => number.figures !== '' && !isInNumber(scan.marking, at))
    .flatMap((number) => {
      const units = unitsAt(scan, skipBlanks(scan.marking, number.end));
      const added =
        units.length === 0 ? 0 : figuresWeight(scan, number.figures, 'unit', number.assumed);
      if (added === undefined) return [];
      return units.map(({ item: { row, bodies, origins }, quantity, end, assumed, cost }) => ({
        ...valueToken({
          at,
          end,
          quantity,
          value: times(number.value, row.factor),
          figures: number.figures,
          unit: row.name,
          weight:
            weightOf(weights.valueWithUnit, row.use) +
            added +
            number.cost +
            cost +
            (cost < 0 ? weights.completedUnit : 0),
          bodies,
          origins,
          source: row.source,
          settle: row.settle,
          assumed: [...number.assumed, ...assumed],
        }),
        withUsualUnit: row.use === 'usual' && assumed.length === 0,
      }));
    });
