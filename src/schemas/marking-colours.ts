import { z } from 'zod';
import { id, optionalId, provenance, text } from './cells.ts';

/** A colour that parts are marked with. Its fill is our own choice of paint, for drawings. */
export const colourRow = z.strictObject({
  id,
  name: text.describe('as it is said at the bench'),
  code: z
    .union([z.literal(''), z.string().regex(/^[A-Z]{2}$/, 'expected two capital letters')])
    .describe('letter code of IEC 60757, for those who type'),
  fill: z
    .union([z.literal(''), z.string().regex(/^#[\da-f]{6}$/, 'expected a colour such as #c4261d')])
    .describe('paint in drawings; none where nothing is painted'),
  ink: z.enum(['light', 'dark']).describe('letters that can be read on the fill'),
  shade_of: optionalId.describe('the colour that it is a lighter or darker shade of'),
  ...provenance,
});

type Rows<Row extends z.ZodType> = z.output<Row>[];

/** The tables that colours on parts are read with. */
export interface ColourTables {
  colours: Rows<typeof colourRow>;
}
