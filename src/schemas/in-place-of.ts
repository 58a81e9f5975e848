import { z } from 'zod';
import { sitePage } from './bench-words.ts';
import { provenance, text } from './cells.ts';

/** What can be said of a part that has more or less of a quantity than the old one, wherever it sits. */
export const inPlaceOfRow = z.strictObject({
  quantity: z.enum([
    'capacitance',
    'resistance',
    'tolerance',
    'rated-voltage',
    'power',
    'highest-temperature',
    'line-pulses',
    'impulse-test',
  ]),
  than_old: z.enum(['more', 'less']).describe('what the part to be fitted has'),
  says: text.describe('what that means, in whole sentences'),
  page: sitePage.describe('path of the page that goes on from there'),
  title: text.describe('what the link to it says'),
  ...provenance,
});
export type InPlaceOfRow = z.output<typeof inPlaceOfRow>;
