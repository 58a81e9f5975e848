import { z } from 'zod';
import { id, optionalId, optionalText, text } from './cells.ts';

/** A job that was invented to show what the pages for jobs do. Nothing of it is a fact. */
export const demoJobRow = z.strictObject({
  id,
  title: text,
  equipment: text,
  note: optionalText,
  invented: text.describe('that the board is invented, as its pages say it'),
  spare_share: text.describe('share of each quantity that is bought besides'),
  spare_least: text.describe('spares of each thing, at least'),
});
export type DemoJobRow = z.output<typeof demoJobRow>;

/** A line of the parts list of an invented job, each cell as somebody would type it. */
export const demoPartRow = z.strictObject({
  job: id,
  designators: text,
  kind: text,
  marking: optionalText,
  type: optionalId,
  value: optionalText,
  tolerance: optionalText,
  volts: optionalText,
  position: optionalId,
  decision: z.enum(['judge', 'replace', 'test', 'leave']),
  decision_reason: optionalText,
  note: optionalText,
});
export type DemoPartRow = z.output<typeof demoPartRow>;

/** What was read on an old part of an invented job. */
export const demoFoundRow = z.strictObject({
  job: id,
  designators: text.describe('as in the line that it belongs to'),
  reading: z.enum([
    'age',
    'idle',
    'capacitance',
    'loss120hz',
    'loss1khz',
    'esr',
    'leakage',
    'insulation',
  ]),
  text,
});
export type DemoFoundRow = z.output<typeof demoFoundRow>;

/** How a trimmer of an invented job stood, and the new one as supplied. */
export const demoPresetRow = z.strictObject({
  job: id,
  designators: text.describe('as in the line that it belongs to'),
  from: text,
  to: text,
  old: text,
  supplied: text,
  total: text,
  turns: text,
});
export type DemoPresetRow = z.output<typeof demoPresetRow>;

/** A condition of an invented job. */
export const demoConditionRow = z.strictObject({
  job: id,
  designators: optionalText.describe('as in the line that it belongs to; none for the whole board'),
  condition: id,
  text,
});
export type DemoConditionRow = z.output<typeof demoConditionRow>;
