import { z } from 'zod';
import { id, idList, optionalId, optionalNumber, provenance, text } from './cells.ts';

/** What a caution may rest on. */
const NEEDS = ['type', 'position', 'condition'] as const;

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
  needs: idList
    .refine((items) => items.every((item) => NEEDS.some((one) => one === item)), {
      error: 'expected type, position or condition',
    })
    .describe('all of these must hold; none where any of its types and positions is enough'),
  part: z
    .enum(['', 'old', 'new'])
    .describe('the part whose type counts in the work on a board; none for either'),
  kinds: idList.describe('kinds of part that bring it up in the work on a board; none for all'),
  ...provenance,
});
export type CautionRow = z.output<typeof cautionRow>;
