/** The public face of the jobs. Pages and scripts take what they need from here. */

export { demoIds, demoJob } from './model/demo.ts';
export { shortenDesignators } from './model/designators.ts';
export { foundOf } from './model/found-at.ts';
export { changed, historyOf, redone, undone, type History } from './model/history.ts';
export { isBlank, isNoteAlone } from './model/is-blank.ts';
export {
  emptyCheck,
  emptyFitted,
  emptyJob,
  emptyLine,
  emptyPreset,
  LARGEST_FILE,
  LONGEST_TEXT,
  MOST_LINES,
  type Adjustment,
  type BadRow,
  type Decision,
  type Fitted,
  type Job,
  type Line,
  type Preset,
} from './model/job.ts';
export { lineName } from './model/line-name.ts';
export { splitLine } from './model/split-line.ts';
export { withLine } from './model/with-line.ts';

export { openJob, writeJob, type Opened } from './keeping/file.ts';
export { openStore, type JobStore, type Listed } from './keeping/store.ts';
export { readUnkept, writeUnkept, type Unkept } from './keeping/unkept.ts';

export { textOfBytes } from './list/bytes.ts';
export { guessColumns, type ColumnField, type Mapping } from './list/columns.ts';
export { guessDecimal, isDecimalAsked, type DecimalSign } from './list/decimal-sign.ts';
export { readDelimited, type Delimited, type Row } from './list/delimited.ts';
export { linesFromRows, type LinesIn } from './list/lines-in.ts';
export { tableOfList } from './list/plain-list.ts';

export type { Ask, AskChoice } from './understanding/ask.ts';
export { haveColours, type ReadColourRow } from './understanding/colours-of-line.ts';
export { kindName } from './understanding/kinds.ts';
export { understandWith } from './understanding/understood.ts';

export { choiceOf } from './planning/choice.ts';
export {
  commonFields,
  fieldsOfLine,
  withField,
  withSign,
  type LineField,
  type LineFields,
} from './planning/line-fields.ts';
export { lineOfPage } from './planning/line-of-page.ts';
export { lowerPowerOfLine } from './planning/lower-power.ts';
export { lowerRatingOfLine } from './planning/lower-rating.ts';
export { pageQuery } from './planning/page-query.ts';
export { planJob, planSteps, newPlanCache } from './planning/plan.ts';
export type { Plan, PlannedLine } from './planning/planned.ts';
export { firstAsk, questionsOf, type Question } from './planning/questions.ts';
export { presetOf } from './planning/setting-of-line.ts';
export {
  isCapacitor,
  isDevice,
  isKind,
  standInWords,
  whyWords,
  type StandIn,
} from './planning/stand-in.ts';
export { finished, type Steps } from './planning/steps.ts';
export { typeNameIn } from './planning/type-name.ts';
export { whyOf } from './planning/why.ts';

export { orderOf, orderText, type Order } from './ordering/order.ts';

export { moved } from './bench/adjustments.ts';
export type { Assumed } from './bench/assumed.ts';
export { readInWords, type BenchField, type Time } from './bench/bench-fields.ts';
export type { PlacedCaution } from './bench/placed-cautions.ts';
export { turnsInWords, type PresetSteps } from './bench/preset.ts';
export { recordOf, recordSteps, type JobRecord, type RecordEntry } from './bench/record.ts';
export { sheetOf, type Sheet, type SheetCheck, type SheetStep } from './bench/sheet.ts';
