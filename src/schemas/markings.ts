import { z } from 'zod';
import {
  id,
  idList,
  list,
  number,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
  yesNo,
} from './cells.ts';
import type { ColourTables } from './marking-colours.ts';
import { context, met, use } from './marking-context.ts';
import type {
  chipResistorCodeRow,
  chipResistorMultiplierRow,
  failureRateRow,
  militaryChipLetterRow,
  resistorFormRow,
  resistorStyleRow,
  resistorTemperatureLetterRow,
  resistorToleranceRow,
  taperRow,
} from './marking-resistors.ts';
import type { arrangementRow, printedUnitRow } from './marking-print.ts';
import type {
  temperatureSystemRow,
  class1SignRow,
  class1CodeRow,
  class2SignRow,
  class2CodeRow,
  metCodeRow,
} from './marking-temperatures.ts';
import type {
  dielectricCodeRow,
  otherMarkRow,
  safetyClassRow,
  bodyMarkRow,
  markGroupRow,
  climateLetterRow,
  dateSignRow,
  dateSchemeRow,
  ambiguityRow,
  sectionSymbolRow,
} from './marking-words.ts';

/** What a technician holds in the hand; decides which meaning of a mark comes first. */
export const bodyRow = z.strictObject({
  id,
  kind: z.enum(['capacitor', 'resistor']),
  name: text,
  family: id.describe('family of types, or resistor'),
  value_min: positive.describe('smallest value met in such a body, F or ohm'),
  value_max: positive.describe('largest value met in such a body, F or ohm'),
  v_max: positive.describe('highest rated voltage met, V'),
  tightest_percent: positive.describe('closest tolerance met, ± per cent'),
  types: idList.describe('types that an otherwise unmarked part of this body may be'),
  ...provenance,
});

/** A way of writing a value in figures without a unit. */
export const valueFormRow = z.strictObject({
  id,
  shape: z
    .enum(['multiplier', 'behind-style', 'plain', 'decimal', 'sections', 'range', 'span', 'filter'])
    .describe(
      'multiplier: the last figure counts zeros; behind-style: so does it, at once behind a style of the types; plain: as written; decimal: with a point; sections: several numbers; range: the ends of what can be set; span: the ends of what a part may have, with its unit; filter: one across the mains and two to earth',
    ),
  figures_min: positive.describe('fewest figures, counting all of them'),
  figures_max: positive.describe('most figures'),
  unit_f: positive.describe('what the figures count in, F'),
  value_min: positive.describe('smallest value that is written so, F'),
  value_max: positive.describe('largest value that is written so, F'),
  volts_min: positive.describe('lowest rated voltage of parts that are marked so, V'),
  volts_beside: yesNo.describe('whether it is likely only with a voltage beside it'),
  stroke_volts_max: optionalNumber.describe(
    'highest rated voltage behind a stroke, as in 10/63, that makes this the likelier reading, V',
  ),
  percent_min: optionalNumber.describe(
    'closest usual tolerance of parts that are marked so, ± per cent',
  ),
  ratio_min: optionalNumber.describe('how many times the lower end the upper is at least'),
  ratio_max: optionalNumber.describe('how many times the lower end the upper is at the most'),
  years_from: optionalNumber.describe('first year that parts are marked so, about'),
  years_to: optionalNumber.describe('last year that parts are marked so, about'),
  example: text,
  means: text.describe('what the example means'),
  settle: optionalText.describe('how to tell it from its rivals'),
  use,
  types: idList.describe('types that are marked so whatever their age'),
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
  precise: yesNo.describe('whether values of one per cent parts are written so'),
  places: list.describe('start, middle, end: where it stands among the figures'),
  number_min: positive.describe('smallest number that is written with it'),
  number_max: positive.describe('largest number that is written with it'),
  volts_min: optionalNumber.describe('lowest rated voltage of parts that are marked so, V'),
  tells_kind: yesNo.describe('whether it says by itself that the part is a resistor'),
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

/** A single character on a ceramic chip, whose ink says the multiplier. */
export const singleCharacterRow = z.strictObject({
  character: z.string().regex(/^[A-Z0-9]$/, 'expected one capital letter or figure'),
  value: positive.describe('pF before the multiplier'),
  bodies: context.bodies,
  ...provenance,
});

/** What the ink of a single character multiplies it by. */
export const inkMultiplierRow = z.strictObject({
  colour: id.describe('id in colours.csv'),
  factor: positive,
  ...provenance,
});

/** A unit as it was written over the years. */
export const unitWordRow = z.strictObject({
  word: text,
  quantity: z.enum(['capacitance', 'resistance', 'power', 'fraction']),
  factor: positive.describe('one of it in F, ohm or W, or as a fraction'),
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

/** A character that is easily taken for another, by eye or by a camera. */
export const lookAlikeRow = z.strictObject({
  written: z.string().length(1, 'expected one character'),
  taken_as: z.string().length(1, 'expected one character'),
  cost: positive.describe(
    'how unlikely it is, on the scale of the reader: about one for a factor of three',
  ),
  origins: context.origins,
  ...provenance,
});

/** The series that values of a tolerance are made in. */
export const seriesToleranceRow = z.strictObject({
  series: z.enum(['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192']),
  percent: positive.describe('per cent each way of parts that are made in it'),
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
  met,
  use,
  ...context,
  ...provenance,
});

/** A way of writing the rated voltage in a code. */
export const voltageSchemeRow = z.strictObject({
  id,
  name: text,
  stands: z
    .enum([
      'beside',
      'before-figures',
      'behind-figures',
      'behind-tolerance',
      'behind-temperature',
      'behind-value',
      'behind-style',
      'by-itself',
    ])
    .describe(
      'beside: before or behind a value, in capital or small letters; before-figures, behind-figures: next to three figures; behind-tolerance, behind-temperature: next to that letter; behind-value: figures that follow it; behind-style: the letter between a style and three figures; by-itself: words',
    ),
  where: optionalText.describe('where it is printed, in words; nothing where it is no code'),
  ...provenance,
});

/** A code for a rated voltage. */
export const voltageCodeRow = z.strictObject({
  scheme: id.describe('how it is written, and so where on the part it may stand'),
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

type Rows<Row extends z.ZodType> = z.output<Row>[];

/** The tables that markings are read with. */
export interface MarkingTables extends ColourTables {
  bodies: Rows<typeof bodyRow>;
  valueForms: Rows<typeof valueFormRow>;
  multipliers: Rows<typeof multiplierRow>;
  pointLetters: Rows<typeof pointLetterRow>;
  mantissaLetters: Rows<typeof mantissaLetterRow>;
  singleCharacters: Rows<typeof singleCharacterRow>;
  inkMultipliers: Rows<typeof inkMultiplierRow>;
  unitWords: Rows<typeof unitWordRow>;
  oldMantissas: Rows<typeof oldMantissaRow>;
  lookAlikes: Rows<typeof lookAlikeRow>;
  seriesTolerances: Rows<typeof seriesToleranceRow>;
  toleranceLetters: Rows<typeof toleranceLetterRow>;
  temperatureSystems: Rows<typeof temperatureSystemRow>;
  class1Signs: Rows<typeof class1SignRow>;
  class1Codes: Rows<typeof class1CodeRow>;
  class2Signs: Rows<typeof class2SignRow>;
  class2Codes: Rows<typeof class2CodeRow>;
  metCodes: Rows<typeof metCodeRow>;
  voltageSchemes: Rows<typeof voltageSchemeRow>;
  voltageCodes: Rows<typeof voltageCodeRow>;
  voltageWords: Rows<typeof voltageWordRow>;
  dielectricCodes: Rows<typeof dielectricCodeRow>;
  safetyClasses: Rows<typeof safetyClassRow>;
  bodyMarks: Rows<typeof bodyMarkRow>;
  markGroups: Rows<typeof markGroupRow>;
  otherMarks: Rows<typeof otherMarkRow>;
  climateLetters: Rows<typeof climateLetterRow>;
  dateSchemes: Rows<typeof dateSchemeRow>;
  dateSigns: Rows<typeof dateSignRow>;
  sectionSymbols: Rows<typeof sectionSymbolRow>;
  ambiguities: Rows<typeof ambiguityRow>;
  resistorForms: Rows<typeof resistorFormRow>;
  resistorTolerances: Rows<typeof resistorToleranceRow>;
  resistorTemperatureLetters: Rows<typeof resistorTemperatureLetterRow>;
  eia96Codes: Rows<typeof chipResistorCodeRow>;
  eia96Multipliers: Rows<typeof chipResistorMultiplierRow>;
  letterFirstCodes: Rows<typeof chipResistorCodeRow>;
  resistorStyles: Rows<typeof resistorStyleRow>;
  failureRates: Rows<typeof failureRateRow>;
  militaryChipLetters: Rows<typeof militaryChipLetterRow>;
  tapers: Rows<typeof taperRow>;
  printedUnits: Rows<typeof printedUnitRow>;
  arrangements: Rows<typeof arrangementRow>;
}
