import { z } from 'zod';
import type {
  DemoConditionRow,
  DemoFoundRow,
  DemoJobRow,
  DemoPartRow,
  DemoPresetRow,
} from './demo.ts';
import {
  count,
  id,
  idList,
  nonNegative,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
} from './cells.ts';

/** Marks that a part may carry on the sheet. */
const mark = z.enum(['polarity', 'pin-1', 'static', 'heat']);
export type Mark = z.output<typeof mark>;

/** When parts of a kind are best fitted. */
export const fittingOrderRow = z.strictObject({
  id,
  place: count.describe('the lower, the sooner'),
  title: text,
  kinds: idList.describe('kinds of part that it is for'),
  types: idList.describe(
    'types of capacitor that it is for; none for those that no other row names',
  ),
  marks: idList
    .refine((items) => items.every((item) => mark.safeParse(item).success), 'expected known marks')
    .describe('polarity, pin-1, static, heat'),
  how: text,
  why: text,
  ...provenance,
});
export type FittingOrderRow = z.output<typeof fittingOrderRow>;

/** A check of the whole board once its parts are in. */
export const closingCheckRow = z.strictObject({
  id,
  place: count.describe('the lower, the sooner'),
  title: text,
  how: text,
  why: text,
  kinds: idList.describe('only for boards with work on one of these kinds of part; none for all'),
  positions: idList.describe('only for boards with work in one of these positions; none for all'),
  write: optionalText.describe('what to write down'),
  cautions: idList.describe('cautions that it brings up'),
  ...provenance,
});
export type ClosingCheckRow = z.output<typeof closingCheckRow>;

/** How leads are bent to another pitch, by their thickness. */
export const leadFormingRow = z.strictObject({
  id,
  lead_from: nonNegative.describe('thickness of the lead from which it holds, mm'),
  lead_to: optionalNumber.describe('thickness below which it holds, mm; nothing for all above'),
  straight_mm: positive.describe('straight part before the bend, at least, mm'),
  straight_leads: positive.describe('straight part before the bend, at least, lead diameters'),
  radius_leads: positive.describe('inner radius of the bend, lead diameters'),
  ...provenance,
});
export type LeadFormingRow = z.output<typeof leadFormingRow>;

/** What a column of a parts list may hold. */
const columnField = z.enum([
  'designators',
  'quantity',
  'kind',
  'marking',
  'type',
  'value',
  'tolerance',
  'volts',
  'position',
  'note',
]);
export type ColumnField = z.output<typeof columnField>;

/** A word that heads a column of a parts list. */
export const columnWordRow = z.strictObject({
  field: columnField,
  word: text.describe('in lower case, with single spaces'),
  ...provenance,
});
export type ColumnWordRow = z.output<typeof columnWordRow>;

/** A word that people write for a kind of part, as in `elko`. */
export const kindWordRow = z.strictObject({
  word: text.describe('in lower case, with single spaces'),
  kind: id.describe('kind of part that it stands for'),
  types: idList.describe(
    'types of capacitor that it may mean, the likeliest first; never taken unasked',
  ),
  ...provenance,
});
export type KindWordRow = z.output<typeof kindWordRow>;

/** Letters that begin the designators of a kind of part. */
export const designatorLetterRow = z.strictObject({
  letters: text.describe('in capitals, such as RV'),
  kind: id.describe('kind of part that is usually meant'),
  ...provenance,
});
export type DesignatorLetterRow = z.output<typeof designatorLetterRow>;

/** What a job is planned, fitted and closed by. */
export interface JobTables {
  fittingOrder: FittingOrderRow[];
  closingChecks: ClosingCheckRow[];
  leadForming: LeadFormingRow[];
  columnWords: ColumnWordRow[];
  kindWords: KindWordRow[];
  designatorLetters: DesignatorLetterRow[];
  demoJobs: DemoJobRow[];
  demoParts: DemoPartRow[];
  demoFound: DemoFoundRow[];
  demoPresets: DemoPresetRow[];
  demoConditions: DemoConditionRow[];
}
