import { z } from 'zod';
import { provenance, text } from './cells.ts';

/** A letter that says how far a part may be off its value. */
export const toleranceLetterRow = z.strictObject({
  letter: text,
  ...provenance,
});

/** The tables that markings are read with. */
export interface MarkingTables {
  toleranceLetters: z.output<typeof toleranceLetterRow>[];
}
