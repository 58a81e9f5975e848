import { z } from 'zod';
import {
  count,
  id,
  idList,
  list,
  number,
  optionalId,
  optionalNumber,
  optionalText,
  provenance,
  text,
  yesNo,
} from './cells.ts';
import { context, use } from './marking-context.ts';

/** Letters or a word that say what a part is made of. */
export const dielectricCodeRow = z.strictObject({
  code: text,
  form: z
    .enum(['word', 'prefix', 'specification'])
    .describe(
      'word: stands alone; prefix: figures of a style or series follow; specification: the numbers of a sheet and a line follow',
    ),
  counts_zeros: yesNo.describe(
    'whether the last figure of a value beside it may count zeros; no: values are printed as they are',
  ),
  construction: optionalText,
  dielectric: text,
  types: idList,
  use,
  ...context,
  ...provenance,
});

/** A mark of the mains duty that a part is approved for. */
export const safetyClassRow = z.strictObject({
  mark: text,
  class: text.describe('X1, X2, Y1, Y2 …; several joined by a stroke'),
  peak_in_service_v: optionalNumber.describe('V, highest pulse expected in service'),
  impulse_test_v: optionalNumber.describe('V, impulse test'),
  types: idList,
  meaning: text,
  use,
  ...context,
  ...provenance,
});

/**
 * What a group of marks is called on their page, what its marks say and how they stand on a part or in
 * a list; a group is a code table of its own.
 */
export const markGroupRow = z.strictObject({
  id,
  name: text,
  says: z
    .enum(['remark', 'size', 'material', 'designator', 'other-designator', 'gangs'])
    .describe(
      'what a reading goes by: remark: words alone, or which lead is which; size and material: what lists say beside a value; designator: which capacitor or resistor of a board it is, other-designator: which part of another kind; gangs: the figure of the mark, or the word that its meaning begins with, is how many are on one shaft',
    ),
  form: z
    .enum(['word', 'designator', 'gang', 'grade', 'limit', 'pins'])
    .describe(
      'where it counts: word: by itself; designator: first of all, with its number; gang: beside a resistance; grade: behind a tolerance letter; limit: behind a rated voltage; pins: at once before a code',
    ),
  ...provenance,
});

/** Words on a body that tell something, though no figure. */
export const bodyMarkRow = z.strictObject({
  mark: text,
  group: id.describe('id in mark-groups.csv'),
  printed: yesNo.describe(
    'yes: found among printed words; no: a thing to look for, for the reader',
  ),
  meaning: text,
  polarity: optionalText.describe('which lead is which, where it says so'),
  types: idList,
  use,
  ...context,
  ...provenance,
});

/** What is printed on parts of other kinds, which are not read: units, and the forms of their types. */
export const otherMarkRow = z.strictObject({
  form: z
    .enum(['unit', 'shape'])
    .describe(
      'unit: a number stands before it; shape: a whole word, # for a figure, ~ for a number',
    ),
  written: text.describe('as printed; in a shape * is a tolerance letter'),
  is: text.describe('what it is, with its article'),
  meaning: text,
  use,
  ...provenance,
});

/** A sign that tells the sections of one can apart. */
export const sectionSymbolRow = z.strictObject({
  sign: text.describe('as printed, or in words'),
  symbol: z.enum(['half moon', 'square', 'triangle', 'circle', 'plain']),
  bodies: context.bodies,
  ...provenance,
});

/** One letter of a three-letter climatic class. */
export const climateLetterRow = z.strictObject({
  place: z
    .enum(['low', 'high', 'humidity', 'figures'])
    .describe('figures: the three numbers that are written instead of letters'),
  letter: text.describe('the letter, or an example in figures'),
  degc: optionalNumber.describe('degC, for the first two letters'),
  meaning: text,
  ...provenance,
});

/** One sign of a date code. */
export const dateSignRow = z.strictObject({
  scheme: id.describe('id in date-schemes.csv'),
  place: z.enum(['year', 'month', 'month-of-run', 'week']),
  symbol: text,
  value: count.describe('year, month 1 to 12, month 1 to 48 of a run, or a figure of a week'),
  ...provenance,
});

/** A way of writing the date of making. */
export const dateSchemeRow = z.strictObject({
  id,
  name: text,
  order: list.describe(
    'signs in their order: year, year-figure, year-figures, month, month-of-run, week-figures, week, day-figures, maker-figures',
  ),
  years_from: number.describe('first year that it is met in'),
  years_to: number.describe('last year that it is met in'),
  example: text,
  means: text,
  settle: optionalText,
  use,
  ...context,
  ...provenance,
});

/** A mark that can be taken in two ways, and what settles it. */
export const ambiguityRow = z.strictObject({
  mark: text,
  reading_1: text,
  reading_2: text,
  reading_3: optionalText,
  settled_by: text,
  topic: optionalId.describe('code table that it belongs to'),
  ...provenance,
});
