import { FLOAT_ERROR } from '../quantities/within.ts';
import { decadeOf, inDecade, valuesBetween, type SeriesName } from './series.ts';

/** Preferred values that add up, one way or the other, to a wanted one. */
export interface Combined {
  /** `sum`: capacitors in parallel, resistors in series; `reciprocal`: the other way. */
  join: 'single' | 'sum' | 'reciprocal';
  /** Falling. */
  values: number[];
  whole: number;
  /** From the wanted value, fraction, either sign. */
  error: number;
}

/** Parts smaller than this share of the whole add less than tolerances take away. */
const SMALLEST_SHARE = 1e-3;

/** The member of a series nearest to a value, by ratio. */
const nearest = (value: number, series: SeriesName): number => {
  const decade = Math.floor(Math.log10(value));
  const mantissas = decadeOf(series);
  const above = mantissas.findIndex((mantissa) => inDecade(mantissa, decade) >= value);
  const high = above === -1 ? inDecade(1, decade + 1) : inDecade(mantissas[above] ?? 1, decade);
  const last = mantissas.at(above === -1 ? -1 : above - 1) ?? 1;
  const low = inDecade(last, above === 0 ? decade - 1 : decade);
  return value / low < high / value ? low : high;
};

/** What a value counts for where the parts add up, and back again. */
type Turn = (value: number) => number;
const asItIs: Turn = (value) => value;
const reciprocal: Turn = (value) => 1 / value;

/**
 * Sets of so many members whose turned values add up to nearly a goal: all but the last from the
 * series, the last the one that fits best. Each set once, its largest contribution first.
 */
const setsOf = (goal: number, series: SeriesName, parts: number, turn: Turn): number[][] => {
  if (parts === 1) return [[nearest(turn(goal), series)]];
  // The largest contribution is at least an equal share.
  const [low, high] = [turn((goal / parts) * (1 - FLOAT_ERROR)), turn(goal * (1 - SMALLEST_SHARE))];
  return valuesBetween(series, Math.min(low, high), Math.max(low, high)).flatMap((first) =>
    setsOf(goal - turn(first), series, parts - 1, turn)
      .filter(([second = 0]) => turn(second) <= turn(first) * (1 + FLOAT_ERROR))
      .map((rest) => [first, ...rest]),
  );
};

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/**
 * The best ways to make a value of one, two and three preferred ones, the closest first within each
 * number of parts.
 * @param value above zero
 * @param most parts, 1 to 3
 * @param kept of each number of parts
 */
export const combinePreferred = (
  value: number,
  series: SeriesName,
  most: number,
  kept = 3,
): Combined[] => {
  if (!(value > 0) || !Number.isFinite(value)) return [];
  const joined = (values: readonly number[], join: Combined['join']): Combined => {
    const whole = join === 'reciprocal' ? 1 / total(values.map((one) => 1 / one)) : total(values);
    return {
      join,
      values: values.toSorted((a, b) => b - a),
      whole,
      error: whole / value - 1,
    };
  };
  return Array.from({ length: most }, (_, index) => index + 1).flatMap((parts) => {
    const ways =
      parts === 1
        ? [joined([nearest(value, series)], 'single')]
        : [
            ...setsOf(value, series, parts, asItIs).map((one) => joined(one, 'sum')),
            ...setsOf(1 / value, series, parts, reciprocal).map((one) => joined(one, 'reciprocal')),
          ];
    const distinct = new Map(ways.map((way) => [`${way.join} ${way.values.join(' ')}`, way]));
    return [...distinct.values()]
      .toSorted((a, b) => Math.abs(a.error) - Math.abs(b.error))
      .slice(0, parts === 1 ? 1 : kept);
  });
};
