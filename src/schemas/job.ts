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
  list,
  nonNegative,
  optionalId,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
  yesNo,
} from './cells.ts';
import { drawingColumns } from './drawings.ts';

/** Marks that a part may carry on the sheet. */
const mark = z.enum(['polarity', 'pin-1', 'static', 'heat']);
export type Mark = z.output<typeof mark>;

/** When a part is read at the bench. */
const TIMES = ['before', 'after'] as const;

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
  lists: z
    .enum(['', 'adjustments'])
    .describe('what is gone through one by one: the adjustments of the board; none for most'),
  cautions: idList.describe('cautions that it brings up'),
  ...provenance,
});
export type ClosingCheckRow = z.output<typeof closingCheckRow>;

/** Something that is written down about a part at the bench, before the work on it or after. */
export const benchFieldRow = z.strictObject({
  id: id.describe('also the reading that judges the old part, where that has the same name'),
  place: count.describe('the lower, the higher up'),
  kinds: idList.describe('kinds of part that it is for'),
  families: idList.describe('families of capacitor that it is for; none for all'),
  label: text,
  unit: optionalText.describe('unit of the reading; none for words'),
  bare: optionalText.describe('unit of a number without one, where that is another'),
  lowest: optionalNumber.describe('what is read is no less, SI; none for words'),
  highest: optionalNumber.describe('what no meter or part goes beyond, SI; none for words'),
  times: idList
    .refine((items) => items.every((item) => TIMES.some((one) => one === item)), {
      error: 'expected before or after',
    })
    .describe('when it is read: before, after'),
  choices: list.describe('words to choose from; none for what is typed'),
  hint: optionalText,
  ...provenance,
});
export type BenchFieldRow = z.output<typeof benchFieldRow>;

/** The usual outline of parts with two rows of pins, by their number. */
export const packageLookRow = z.strictObject({
  id,
  kinds: idList.describe('kinds of part that it is for'),
  pins_from: count.describe('pins in all, from'),
  pins_to: count.describe('pins in all, to'),
  form: id.describe('form of its drawing'),
  step_mm: positive.describe('from pin to pin, mm'),
  width_mm: positive.describe('across the body, mm'),
  height_mm: positive.describe('above the board, mm'),
  pitch_mm: positive.describe('between the rows, mm'),
  ...provenance,
});
export type PackageLookRow = z.output<typeof packageLookRow>;

/** How parts besides capacitors and chips usually look: by type, or by the body of their order of pins. */
export const partOutlineRow = z.strictObject({
  id,
  kinds: idList.describe('kinds of part that it is for'),
  types: idList.describe('types that look so; any where none is named'),
  bodies: list.describe('bodies as in devices/pinouts.csv; any where none is named'),
  banded: yesNo.describe('yes: its value is told by bands of colour'),
  ...drawingColumns,
  ...provenance,
});
export type PartOutlineRow = z.output<typeof partOutlineRow>;

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
  made_of: yesNo.describe(
    'yes for what parts are made of, which gives way to the name of a part beside it: a wirewound trimmer is a trimmer',
  ),
  ...provenance,
});
export type KindWordRow = z.output<typeof kindWordRow>;

/** A word beside the name of a kind, by which a text may speak of another part than it describes. */
export const besideKindWordRow = z.strictObject({
  word: z
    .string()
    .regex(/^\p{Ll}+$/u, 'expected one word in lower case')
    .describe('one word in lower case'),
  tells: z
    .enum(['place', 'surroundings'])
    .describe(
      'place: what follows it tells where the part sits, as in “output of the regulator”; surroundings: behind the name of a kind it makes of it what is around the part, as in “relay driver”',
    ),
  ...provenance,
});
export type BesideKindWordRow = z.output<typeof besideKindWordRow>;

/** A kind that a type number or a mark of other parts tells, whatever words are beside it. */
export const toldKindRow = z.strictObject({
  by: z
    .enum(['list', 'mark'])
    .describe(
      'list: a list of the numbers without a page; mark: what a row of the marks of other parts says it is',
    ),
  told: text.describe('the list, or what the part is, as those tables name it'),
  kind: id.describe('kind of part that parts lists call it'),
  rather: idList.describe('kinds that count in its place where the words about a number name one'),
  unlettered: yesNo.describe(
    'yes where it counts only beside letters of designators that stand for no kind',
  ),
  ...provenance,
});
export type ToldKindRow = z.output<typeof toldKindRow>;

/** What a capacitor rather is, where only its value and its volts are known. */
export const usualPartRow = z.strictObject({
  id,
  value_min: optionalNumber.describe('F; nothing for none'),
  value_max: optionalNumber.describe('F; nothing for none'),
  volts_min: optionalNumber.describe(
    'V; nothing where none need be known, 0 where any has to be marked',
  ),
  volts_max: optionalNumber.describe('V; nothing for none'),
  old_values: yesNo.describe(
    'yes where the value has to be one that went out with the preferred numbers, as 0.05 uF',
  ),
  polarity: z.enum(['', 'polar']).describe('polar: whatever is; nothing: the types alone'),
  types: idList.describe('types that it then is, besides those of the polarity'),
  ...provenance,
});
export type UsualPartRow = z.output<typeof usualPartRow>;

/** Where a part rather sits, where only its value and its rating are known. */
export const usualPlaceRow = z.strictObject({
  id,
  kind: id.describe('kind of part'),
  polarity: z.enum(['', 'polar']).describe('polar: only for types that are'),
  value_min: optionalNumber.describe('F or ohm; nothing for none'),
  value_max: optionalNumber.describe('F or ohm; nothing for none'),
  rating_min: optionalNumber.describe('V or W, which has to be known; nothing for none'),
  rating_max: optionalNumber.describe('V or W, where it is known; nothing for none'),
  groups: list.describe('groups of positions that are offered before all'),
  positions: idList.describe('positions that are'),
  ...provenance,
});
export type UsualPlaceRow = z.output<typeof usualPlaceRow>;

/** Letters that begin the designators of a kind of part. */
export const designatorLetterRow = z.strictObject({
  letters: text.describe('in capitals, such as RV'),
  kind: optionalId.describe(
    'kind of part that is usually meant; nothing where none of those of lists is',
  ),
  numbers_too: yesNo.describe(
    'yes where the letters with three figures or more are rather a type number, as LA4440',
  ),
  ...provenance,
});
export type DesignatorLetterRow = z.output<typeof designatorLetterRow>;

/** What a job is planned, fitted and closed by. */
export interface JobTables {
  fittingOrder: FittingOrderRow[];
  closingChecks: ClosingCheckRow[];
  benchFields: BenchFieldRow[];
  packageLooks: PackageLookRow[];
  partOutlines: PartOutlineRow[];
  leadForming: LeadFormingRow[];
  columnWords: ColumnWordRow[];
  kindWords: KindWordRow[];
  besideKindWords: BesideKindWordRow[];
  toldKinds: ToldKindRow[];
  /** The first that holds counts. */
  usualParts: UsualPartRow[];
  /** The first that holds counts. */
  usualPlaces: UsualPlaceRow[];
  designatorLetters: DesignatorLetterRow[];
  demoJobs: DemoJobRow[];
  demoParts: DemoPartRow[];
  demoFound: DemoFoundRow[];
  demoPresets: DemoPresetRow[];
  demoConditions: DemoConditionRow[];
}
