import { z } from 'zod';
import { id, idList, optionalId, optionalNumber, provenance, text } from './cells.ts';

/** Something that can hurt a person or the equipment. */
export const cautionRow = z.strictObject({
  id,
  title: text,
  text: text.describe('what to do, in our own words'),
  severity: z
    .enum(['danger', 'care'])
    .describe('danger: it can kill or maim; care: it spoils parts or mildly hurts'),
  types: idList.describe('types whose pages show it; none for all'),
  positions: idList.describe(
    'positions whose pages show it; with a condition, pages of pairs only where that holds; none for all',
  ),
  condition: optionalId.describe('condition that brings it up'),
  from: optionalNumber.describe('shown from this value of the condition on, in its unit'),
  made: idList.describe(
    'shown where a stand-in made of two parts in one of these ways is offered; with a condition, where both hold',
  ),
  ...provenance,
});
export type CautionRow = z.output<typeof cautionRow>;
