import { z } from 'zod';
import { drawingColumns } from './drawings.ts';
import {
  id,
  idList,
  number,
  optionalId,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
} from './cells.ts';

/** How often a style gives an answer, or shows a mark. */
const HOW = ['usual', 'sometimes', 'seldom'] as const;

/** A share or a power, above zero and up to one. */
const share = positive.refine((value) => value <= 1, 'expected a number up to 1');

/** A way in which parts look, whatever is inside. */
export const styleRow = z.strictObject({
  id,
  name: text.describe('as one would say it at the bench'),
  group: text.describe('heading that it stands under'),
  kinds: idList.describe('what may be inside, in look/kinds.csv, the most usual first'),
  met: z.enum(['common', 'met', 'rare']).describe('how often one meets it'),
  recognise: text.describe('how to know it, in our own words'),
  ...provenance,
});
export type StyleRow = z.output<typeof styleRow>;

/** What a part is made of, as far as a look and a test can tell. */
export const kindRow = z.strictObject({
  id,
  name: text.describe('for the middle of a sentence'),
  is: z.enum(['capacitor', 'resistor', 'junction', 'other']),
  type: optionalId.describe(
    'type in types.csv or kinds/types.csv; none for what this data has no type of',
  ),
});
export type KindRow = z.output<typeof kindRow>;

/** Something to look at, to know or to measure. */
export const questionRow = z.strictObject({
  id: id.describe('key of the address'),
  name: text,
  text: text.describe('the question itself'),
  kind: z
    .enum(['one', 'any', 'range', 'score'])
    .describe(
      'one: a part gives one of the answers; any: it may give several at once; range: a number; score: a few steps that count as numbers',
    ),
  part: z
    .union([z.literal(''), z.enum(['capacitor', 'resistor', 'junction'])])
    .describe('what a reading makes sense for; none for all'),
  unit: optionalId
    .or(text)
    .describe('unit in units.csv of the columns here and of numbers; grade for a plain number'),
  scale: z.union([z.literal(''), z.enum(['log', 'linear'])]),
  sign: z
    .union([z.literal(''), z.enum(['positive', 'signed', 'size'])])
    .describe('positive: never below zero; signed: may be; size: the sign is left out'),
  lowest: optionalNumber.describe('no reading below this, in the unit'),
  highest: optionalNumber.describe('no reading above this, in the unit'),
  near: optionalNumber.describe(
    'how far outside a range a reading may still be taken for one: a factor on a log scale, else in the unit',
  ),
  effort: positive.describe('1: a look; more: tools and time'),
  counts: share.describe(
    'power that its likelihood is raised to: below 1 where other questions say the same',
  ),
  unless: optionalId.describe(
    'question that says the same better: where it is answered, this is not counted',
  ),
  bare: optionalText.describe('unit of a number without one, as people write it'),
  hint: optionalText,
  how: optionalText.describe('how to measure it without harm'),
  cautions: idList.describe('cautions that asking it brings up, in cautions.csv'),
});
export type QuestionRow = z.output<typeof questionRow>;

/** One answer to a question that has fixed ones. */
export const answerRow = z.strictObject({
  question: id,
  id: id.describe('a number of steps for a score'),
  name: text,
  meaning: optionalText,
  drawn: optionalId.describe('style whose drawing shows it'),
});
export type AnswerRow = z.output<typeof answerRow>;

/** What a style, or whatever is inside, answers to a question. */
export const featureRow = z.strictObject({
  style: optionalId,
  kind: optionalId.describe('where no style: true of this kind in every style'),
  question: id,
  answers: idList,
  how: z.enum(HOW).describe('how often; answers that no row names are not met'),
  ...provenance,
});
export type FeatureRow = z.output<typeof featureRow>;

/** The span of a number for a style or for a kind. Rows of one question are alternatives. */
export const lookRangeRow = z.strictObject({
  style: optionalId,
  kind: optionalId.describe('where no style: true of this kind in every style'),
  question: id,
  low: optionalNumber.describe('none: open to the lowest reading'),
  usual_low: optionalNumber.describe('from here on usual; none: from low on'),
  usual_high: optionalNumber.describe('up to here usual; none: up to high'),
  high: optionalNumber.describe('none: open to the highest reading'),
  unit: text.describe(
    'unit in units.csv, of the kind that the question asks; s for a resistance times the capacitance',
  ),
  conditions: optionalText,
  ...provenance,
});
export type LookRangeRow = z.output<typeof lookRangeRow>;

/** Two styles that are taken for each other, or a style and something else, and what settles it. */
export const disguiseRow = z.strictObject({
  style: id,
  other: optionalId.describe('the other style'),
  words: optionalText.describe('where the other is no style of this data'),
  settled_by: text,
  ...provenance,
});
export type DisguiseRow = z.output<typeof disguiseRow>;

/** How a style is drawn: a part as one meets it, with an invented marking. */
export const styleDrawingRow = z.strictObject({ style: id, ...drawingColumns });

/** A rule of thumb that likelihoods are calculated with. */
export const weightRow = z.strictObject({
  id: z.enum([
    ...HOW,
    'mark-usual',
    'mark-sometimes',
    'mark-seldom',
    'mark-stray',
    'common',
    'met',
    'rare',
    'next-kind',
    'wrong',
    'edge',
    'foreign',
  ]),
  value: share,
  meaning: text,
  ...provenance,
});
export type WeightRow = z.output<typeof weightRow>;

/** What the loss at 120 Hz over that at 1 kHz says of a part. */
export const signRow = z.strictObject({
  id,
  low: number.describe('ratio'),
  high: number.describe('ratio'),
  says: text,
  ...provenance,
});
export type SignRow = z.output<typeof signRow>;

type Rows<Row extends z.ZodType> = z.output<Row>[];

/** The tables that a part is named with by its look. */
export interface LookTables {
  styles: Rows<typeof styleRow>;
  kinds: Rows<typeof kindRow>;
  questions: Rows<typeof questionRow>;
  answers: Rows<typeof answerRow>;
  features: Rows<typeof featureRow>;
  ranges: Rows<typeof lookRangeRow>;
  disguises: Rows<typeof disguiseRow>;
  drawings: Rows<typeof styleDrawingRow>;
  weights: Rows<typeof weightRow>;
  signs: Rows<typeof signRow>;
}
