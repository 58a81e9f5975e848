import { z } from 'zod';
import { id, optionalNumber, optionalText, text } from './cells.ts';

/** Kinds of source that may stand behind a figure marked `published`. */
export const publishedKinds = [
  'standard',
  'data-sheet',
  'handbook',
  'application-note',
  'textbook',
  'paper',
  'encyclopedia',
] as const;

/** One document, or one of the two stand-ins for a document: `trade` and `identity`. */
export const sourceRow = z.strictObject({
  id: id.describe('used in the source column of every other table and in addresses'),
  title: text,
  publisher: optionalText,
  year: optionalNumber,
  kind: z
    .enum([...publishedKinds, 'web-page', 'trade', 'identity'])
    .describe('web-page and trade never carry a published figure; identity is arithmetic'),
  url: z.union([z.literal(''), z.url({ protocol: /^https?$/ })]),
  seen: z
    .enum(['full-text', 'excerpt', 'not-seen'])
    .describe('whether the document was read; a published figure needs one that was'),
});
export type SourceRow = z.output<typeof sourceRow>;
