import type { Catalogue } from '../catalogue.ts';
import { isSeriesName, valuesBetween } from '../values/index.ts';

/**
 * The values (F) between two limits, both included, that a row of the market says are made: those
 * of a series of preferred numbers, or of a list such as that of motor capacitors. Rising.
 */
export const madeValues = (
  { valueLists }: Pick<Catalogue, 'valueLists'>,
  name: string,
  low: number,
  high: number,
): number[] =>
  isSeriesName(name)
    ? valuesBetween(name, low, high)
    : valueLists
        .filter(({ list, value }) => list === name && value >= low && value <= high)
        .map(({ value }) => value);
