import { FLOAT_ERROR } from '../quantities/within.ts';
import { SERIES_NAMES, valuesBetween, type SeriesName } from './series.ts';

/** The values of a series on either side of a wanted one; both the same where it is a member. */
export interface Neighbours {
  series: SeriesName;
  below: number;
  above: number;
}

/**
 * For every series, the coarsest first, the nearest values at or below and at or above a wanted one.
 * @param value above zero; anything else gives an empty list
 */
export const nearestEach = (value: number): Neighbours[] =>
  value > 0 && Number.isFinite(value)
    ? SERIES_NAMES.map((series) => {
        // Every series has a value within a decade to either side.
        const members = valuesBetween(series, value / 10.1, value * 10.1);
        const below = members.findLast((member) => member <= value * (1 + FLOAT_ERROR)) ?? value;
        const above = members.find((member) => member >= value * (1 - FLOAT_ERROR)) ?? value;
        return { series, below, above };
      })
    : [];
