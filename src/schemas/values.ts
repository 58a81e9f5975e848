import { z } from 'zod';
import { count, id, idList, number, positive, provenance, text } from './cells.ts';

/** A unit that tables are written in, and what it is in SI. */
export const unitRow = z.strictObject({
  unit: text,
  si: text.describe('the SI unit (or fraction) that the engine calculates in'),
  factor: positive.describe('one of this unit in the SI unit'),
  name: text,
});
export type UnitRow = z.output<typeof unitRow>;

/** One value of a preferred-number series. */
export const seriesRow = z.strictObject({
  series: z.enum(['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192']),
  position: count.describe('1 for the first value of the decade'),
  value: number.refine((value) => value >= 1 && value < 10, 'expected a value from 1 up to 10'),
  ...provenance,
});
export type SeriesRow = z.output<typeof seriesRow>;

/** One value of parts that are made in a list of values of their own. */
export const valueListRow = z.strictObject({
  list: id.describe('named as a series in market.csv'),
  value: positive.describe('SI'),
  ...provenance,
});
export type ValueListRow = z.output<typeof valueListRow>;

/** A rated voltage that capacitors are made for. */
export const voltageRow = z.strictObject({
  volts: positive,
  kind: z.enum(['dc', 'ac']),
  families: idList.describe('families that use it; none for all'),
  ...provenance,
});
export type VoltageRow = z.output<typeof voltageRow>;
