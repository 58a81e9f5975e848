import { z } from 'zod';
import {
  id,
  idList,
  list,
  number,
  optionalId,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
  yesNo,
} from './cells.ts';

/** How far a meaning is to be expected where nothing speaks for another. */
const use = z
  .enum(['usual', 'other', 'rare'])
  .describe('usual: the meaning to expect; other: met, and a rival of it; rare: seldom met');

/** Bodies and origins that a meaning is tied to; nothing for all. */
const context = {
  bodies: idList.describe('bodies in bodies.csv that it is met on; none for all'),
  origins: idList.describe('where such marks were used, such as british or soviet; none for all'),
};

/** What a technician holds in the hand; decides which meaning of a mark comes first. */
export const bodyRow = z.strictObject({
  id,
  name: text,
  c_min: positive.describe('smallest capacitance met in such a body, F'),
  c_max: positive.describe('largest capacitance met in such a body, F'),
  v_max: positive.describe('highest rated voltage met, V'),
  types: idList.describe('types that an otherwise unmarked part of this body may be'),
  ...provenance,
});

/** A way of writing a value in figures without a unit. */
export const valueFormRow = z.strictObject({
  id,
  shape: z
    .enum(['multiplier', 'plain', 'decimal'])
    .describe('multiplier: the last figure counts zeros; plain: as written; decimal: with a point'),
  figures_min: positive.describe('fewest figures, counting all of them'),
  figures_max: positive.describe('most figures'),
  unit_f: positive.describe('what the figures count in, F'),
  value_min: positive.describe('smallest value that is written so, F'),
  value_max: positive.describe('largest value that is written so, F'),
  example: text,
  means: text.describe('what the example means'),
  settle: optionalText.describe('how to tell it from its rivals'),
  use,
  ...context,
  ...provenance,
});

/** What the last figure of a value code multiplies by. */
export const multiplierRow = z.strictObject({
  scheme: z.enum(['figures', 'letter-figure']),
  figure: z.string().regex(/^\d$/, 'expected one figure'),
  factor: positive,
  use,
  ...context,
  ...provenance,
});

/** A letter that stands for the decimal point and names the unit. */
export const pointLetterRow = z.strictObject({
  letter: text,
  quantity: z.enum(['capacitance', 'resistance']),
  factor: positive.describe('F or ohm'),
  places: list.describe('start, middle, end: where it stands among the figures'),
  settle: optionalText.describe('how to tell it from its rivals'),
  use,
  ...context,
  ...provenance,
});

/** A letter that stands for the two figures of a preferred value, before a multiplier figure. */
export const mantissaLetterRow = z.strictObject({
  letter: z.string().regex(/^[A-Za-z]$/, 'expected one letter; capital and small ones differ'),
  value: positive.describe('pF before the multiplier'),
  use,
  ...context,
  ...provenance,
});

/** A unit as it was written over the years. */
export const unitWordRow = z.strictObject({
  word: text,
  quantity: z.enum(['capacitance', 'resistance', 'fraction']),
  factor: positive.describe('one of it in F, ohm or as a fraction'),
  exact_case: yesNo.describe('whether capital and small letters differ'),
  name: text,
  settle: optionalText.describe('how to tell it from its rivals'),
  use,
  ...context,
  ...provenance,
});

/** A mantissa that was usual before preferred values were. */
export const oldMantissaRow = z.strictObject({
  value: number.refine((value) => value >= 1 && value < 10, 'expected a value from 1 up to 10'),
  ...provenance,
});

/** A letter that says how far a part may be off its value. */
export const toleranceLetterRow = z.strictObject({
  letter: text,
  script: z.enum(['latin', 'cyrillic']),
  from_f: optionalNumber.describe('for capacitances from this on, F'),
  below_f: optionalNumber.describe('for capacitances below this, F'),
  minus: number.refine((value) => value >= 0, 'expected how far below, as a positive number'),
  plus: number.refine((value) => value >= 0, 'expected how far above, as a positive number'),
  unit: z.enum(['percent', 'pF']),
  use,
  ...context,
  ...provenance,
});

/** What a system of temperature codes takes as read. */
export const temperatureSystemRow = z.strictObject({
  id,
  name: text,
  class: z.enum(['1', '2']).transform(Number),
  t_ref: number.describe('degC at which the value is stated'),
  t_min: number.describe('degC, where the code itself gives none'),
  t_max: number.describe('degC, where the code itself gives none'),
  origins: idList.describe(
    'where its single letters were used; none where it has no single letters',
  ),
  ...provenance,
});

/** One sign of a class 1 ceramic code that is put together by rule. */
export const class1SignRow = z.strictObject({
  system: id.describe('id in temperature-systems.csv'),
  place: z
    .enum(['figure', 'multiplier', 'spread', 'slope'])
    .describe('figure times multiplier, or slope by itself; spread: how far it may be off'),
  symbol: text,
  value: number.describe('ppm/K, or the factor of a multiplier'),
  types: idList,
  use,
  ...provenance,
});

/** A temperature coefficient that has a name of its own. */
export const class1CodeRow = z.strictObject({
  code: text,
  system: id.describe('id in temperature-systems.csv'),
  min_ppm: number.describe('lowest coefficient, ppm/K'),
  typ_ppm: optionalNumber.describe('nominal coefficient, ppm/K'),
  max_ppm: number.describe('highest coefficient, ppm/K'),
  spread_known: yesNo.describe('no: the mark gives the nominal coefficient alone'),
  types: idList,
  use,
  ...context,
  ...provenance,
});

/** One sign of a class 2 ceramic code that is put together by rule. */
export const class2SignRow = z.strictObject({
  system: id.describe('id in temperature-systems.csv'),
  place: z.enum(['low', 'high', 'span', 'change']),
  symbol: text,
  low: optionalNumber.describe('degC, or the largest fall in percent as a negative number'),
  high: optionalNumber.describe('degC, or the largest rise in percent'),
  types: idList,
  use,
  ...provenance,
});

/** A class 2 characteristic that has a name of its own. */
export const class2CodeRow = z.strictObject({
  code: text,
  system: id.describe('id in temperature-systems.csv'),
  t_min: number.describe('degC'),
  t_max: number.describe('degC'),
  low: number.describe('largest fall, percent, negative'),
  high: number.describe('largest rise, percent'),
  types: idList,
  alone: yesNo.describe('no: a single letter, read so only beside a value'),
  use,
  ...context,
  ...provenance,
});

/** A code for a rated voltage. */
export const voltageCodeRow = z.strictObject({
  scheme: z
    .enum(['figure-letter', 'chip-letter', 'small-letter', 'figures', 'words', 'soviet-letter'])
    .describe('how it is written, and so where on the part it may stand'),
  code: text,
  volts_min: positive,
  volts_max: positive,
  kind: z.union([z.literal(''), z.enum(['dc', 'ac'])]),
  use,
  ...context,
  ...provenance,
});

/** A word or sign beside the figures of a voltage. */
export const voltageWordRow = z.strictObject({
  word: text,
  place: z.enum(['after', 'before']).describe('where it stands, seen from the figures'),
  factor: positive.describe('one of it in V'),
  kind: z.union([z.literal(''), z.enum(['dc', 'ac'])]),
  role: z
    .enum(['rated', 'test', 'surge', 'peak'])
    .describe('rated: to be worked at; the others are never to be taken for it'),
  ends_word: yesNo.describe('yes: only where nothing follows without a gap'),
  meaning: text,
  use,
  ...context,
  ...provenance,
});

/** Letters or a word that say what a part is made of. */
export const dielectricCodeRow = z.strictObject({
  code: text,
  form: z
    .enum(['word', 'prefix'])
    .describe('word: stands alone; prefix: figures of a style or series follow'),
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

/** Words on a body that tell something, though no figure. */
export const bodyMarkRow = z.strictObject({
  mark: text,
  group: z.enum(['polarity', 'approval', 'foil', 'duty', 'material']),
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
  place: z.enum(['year', 'month', 'week']),
  symbol: text,
  value: number.describe('year, month 1 to 12, or a figure of a week'),
  ...provenance,
});

/** A way of writing the date of making. */
export const dateSchemeRow = z.strictObject({
  id,
  name: text,
  order: list.describe(
    'signs in their order: year, year-figure, year-figures, month, week-figures, week, maker-figures',
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

type Rows<Row extends z.ZodType> = z.output<Row>[];

/** The tables that markings are read with. */
export interface MarkingTables {
  bodies: Rows<typeof bodyRow>;
  valueForms: Rows<typeof valueFormRow>;
  multipliers: Rows<typeof multiplierRow>;
  pointLetters: Rows<typeof pointLetterRow>;
  mantissaLetters: Rows<typeof mantissaLetterRow>;
  unitWords: Rows<typeof unitWordRow>;
  oldMantissas: Rows<typeof oldMantissaRow>;
  toleranceLetters: Rows<typeof toleranceLetterRow>;
  temperatureSystems: Rows<typeof temperatureSystemRow>;
  class1Signs: Rows<typeof class1SignRow>;
  class1Codes: Rows<typeof class1CodeRow>;
  class2Signs: Rows<typeof class2SignRow>;
  class2Codes: Rows<typeof class2CodeRow>;
  voltageCodes: Rows<typeof voltageCodeRow>;
  voltageWords: Rows<typeof voltageWordRow>;
  dielectricCodes: Rows<typeof dielectricCodeRow>;
  safetyClasses: Rows<typeof safetyClassRow>;
  bodyMarks: Rows<typeof bodyMarkRow>;
  climateLetters: Rows<typeof climateLetterRow>;
  dateSchemes: Rows<typeof dateSchemeRow>;
  dateSigns: Rows<typeof dateSignRow>;
  ambiguities: Rows<typeof ambiguityRow>;
}
