import { z } from 'zod';
import { id, list, text } from './cells.ts';

/** A change of the data that a reader should hear of. */
export const changeRow = z.strictObject({
  id,
  date: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/, 'expected a date such as 2026-11-28')
    .describe('the day of the change'),
  kind: z
    .enum(['new', 'changed', 'mended'])
    .describe('new: there was no such thing; changed: another reading of it; mended: it was wrong'),
  tables: list.describe('the tables that changed'),
  title: text,
  text: text.describe('what changed and what it means for answers'),
});
export type ChangeRow = z.output<typeof changeRow>;
