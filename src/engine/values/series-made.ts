import { FLOAT_ERROR } from '../quantities/within.ts';
import type { SeriesName } from './series.ts';

/** A series and the widest tolerance (per cent) that parts are made in it to. */
export interface SeriesTolerance {
  series: SeriesName;
  percent: number;
}

/**
 * The finest series that parts of a tolerance are made in: between two that for the wider one, beyond
 * the widest the coarsest that is listed.
 * @param rows from the coarsest series on
 * @param tolerance fraction, zero or above
 */
export const finestFor = (
  rows: readonly SeriesTolerance[],
  tolerance: number,
): SeriesName | undefined =>
  (rows.findLast(({ percent }) => percent / 100 >= tolerance * (1 - FLOAT_ERROR)) ?? rows[0])
    ?.series;
