import { z } from 'zod';
import { number, optionalText, text } from './cells.ts';

/** Between what the numbers of one column lie, for the check alone. */
export const plausibleRow = z.strictObject({
  file: text.describe('the table, as its path inside the data folder'),
  column: text.describe('a column of it that holds numbers, one or several'),
  by: optionalText.describe('the row is bounded by what stands in this column, or nothing'),
  is: optionalText.describe('what stands there in the rows that this one is about'),
  lowest: number.describe('no number of the column is lower'),
  highest: number.describe('nor higher'),
});
