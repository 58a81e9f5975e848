import { z } from 'zod';
import { id, idList, optionalNumber, provenance, text } from './cells.ts';

/** A rule on whether an old part needs replacing at all. */
export const triageRow = z.strictObject({
  id: id.describe('unique, such as paper-always'),
  types: idList.describe('types that it is for'),
  positions: idList.describe('positions that it is for; none for all'),
  reading: z
    .enum(['none', 'age', 'capacitance', 'loss-120hz', 'loss-1khz', 'insulation', 'insulation-rc'])
    .describe(
      'what it goes by; none: it always applies; capacitance: reading over mark; insulation-rc: resistance times marked capacitance',
    ),
  comparison: z.enum(['any', 'at-least', 'below']),
  limit: optionalNumber.describe('in the unit'),
  unit: text.describe('unit in units.csv; x where there is no limit'),
  advice: z.enum(['replace', 'test', 'leave']),
  why: text,
  ...provenance,
});
export type TriageRow = z.output<typeof triageRow>;
