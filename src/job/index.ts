/** The public face of the jobs. Pages and scripts take what they need from here. */

export { planJob, planSteps, newPlanCache } from './plan.ts';
export type { Plan, PlannedLine } from './planned.ts';
export { choiceOf } from './choice.ts';
export { isCapacitor, isDevice, isKind, standInWords, whyWords } from './stand-in.ts';
export { typeNameIn } from './type-name.ts';
export { orderOf, orderText, type Order } from './order.ts';
export { turnsInWords, type PresetSteps } from './preset.ts';
export { sheetOf, type Sheet, type SheetCheck, type SheetStep } from './sheet.ts';
export { moved } from './adjustments.ts';
export { readInWords, type BenchField, type Time } from './bench-fields.ts';
export { foundOf } from './found-at.ts';
export { pageQuery } from './page-query.ts';
export { lowerPowerOfLine } from './lower-power.ts';
export { lowerRatingOfLine } from './lower-rating.ts';
export { lineName } from './line-name.ts';
export { isBlank, isNoteAlone } from './is-blank.ts';
export type { Assumed } from './assumed.ts';
export type { PlacedCaution } from './placed-cautions.ts';
export { splitLine } from './split-line.ts';
export { whyOf } from './why.ts';
export { finished, type Steps } from './steps.ts';
export { recordOf, recordSteps, type JobRecord, type RecordEntry } from './record.ts';
export { demoJob } from './demo.ts';
export {
  emptyCheck,
  emptyFitted,
  emptyJob,
  emptyLine,
  emptyPreset,
  LONGEST_TEXT,
  MOST_LINES,
  type Adjustment,
  type BadRow,
  type Fitted,
  type Job,
  type Line,
  type Preset,
} from './model.ts';
export { shortenDesignators } from './designators.ts';
export { LARGEST_FILE, openJob, writeJob, type Opened } from './file.ts';
export { changed, historyOf, redone, undone, type History } from './history.ts';
export { textOfBytes } from './bytes.ts';
export { readDelimited, type Delimited, type Row } from './delimited.ts';
export { openStore, type Listed } from './store.ts';
export { kindName } from './kinds.ts';
export { tableOfList } from './plain-list.ts';
export { guessColumns, type ColumnField, type Mapping } from './columns.ts';
export { guessDecimal, isDecimalAsked, type DecimalSign } from './decimal-sign.ts';
export { linesFromRows, type LinesIn } from './lines-in.ts';
export { understandWith } from './understood.ts';
export { haveColours, type ReadColourRow } from './colours-of-line.ts';
export type { Ask, AskChoice } from './ask.ts';
export {
  commonFields,
  fieldsOfLine,
  withField,
  withSign,
  type LineField,
  type LineFields,
} from './line-fields.ts';
export { firstAsk, questionsOf, type Question } from './questions.ts';
