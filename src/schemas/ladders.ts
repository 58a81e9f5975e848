import { z } from 'zod';
import { number, text } from './cells.ts';

/** A number of a table that goes steadily with another one, for the check alone. */
export const ladderRow = z.strictObject({
  file: text.describe('the table, as its path inside the data folder'),
  among: z
    .string()
    .transform((cell) => (cell === '' ? [] : cell.split(';')))
    .describe('columns that are alike in the rows that are set beside each other'),
  by: text.describe('the column that the rows are ordered by'),
  column: text.describe('the column that goes with it'),
  goes: z.enum(['up', 'down', 'near']).describe('which way as the other rises; near: either way'),
  step: number
    .refine((value) => value > 1, 'expected a ratio above 1')
    .describe('the greatest ratio between neighbours'),
});
