import { z } from 'zod';
import { idList, provenance, text } from './cells.ts';

/** One way of making a stand-in of two parts, or of a part and a resistor. */
export const combinationRow = z.strictObject({
  id: z.enum(['parallel', 'series', 'back-to-back', 'with-resistor']),
  mends: idList.describe('findings of a single part that it can mend'),
  wiring: text.describe('how it is put together'),
  mind: text.describe('what it does not do, or what to look after'),
  ...provenance,
});
export type CombinationRow = z.output<typeof combinationRow>;
