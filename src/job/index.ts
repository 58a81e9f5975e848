/** The public face of the jobs. Pages and scripts take what they need from here. */

export { planJob, planSteps, newPlanCache, type PlanCache, type PlanTools } from './plan.ts';
export type { Missing, Plan, PlannedLine, PlanState, Worked } from './planned.ts';
export { choiceOf } from './choice.ts';
export {
  decidingOf,
  isCapacitor,
  isDevice,
  isKind,
  standInWords,
  whyWords,
  type StandIn,
} from './stand-in.ts';
export { typeNameIn } from './type-name.ts';
export { partAsTyped, type PartOfLine, type Understand } from './part-of-line.ts';
export { orderCsv, orderTabbed } from './order-csv.ts';
export { orderOf, orderText, type Order, type OrderGroup } from './order.ts';
export { sparesFor, spareRuleOf, type SpareRule } from './spares.ts';
export { presetSteps, turnsInWords, type PresetSteps } from './preset.ts';
export {
  fitInWords,
  oldInWords,
  sheetOf,
  type Sheet,
  type SheetCheck,
  type SheetStep,
} from './sheet.ts';
export { adjustmentsOf, moved } from './adjustments.ts';
export { readInWords, type BenchField, type Time } from './bench-fields.ts';
export { foundOf } from './found-at.ts';
export { pageQuery } from './page-query.ts';
export { lowerRatingOfLine } from './lower-rating.ts';
export { lineName } from './line-name.ts';
export { isBlank, isNoteAlone } from './is-blank.ts';
export { isDone } from './is-done.ts';
export type { Assumed } from './assumed.ts';
export type { PlacedCaution } from './placed-cautions.ts';
export { splitLine } from './split-line.ts';
export { recordCsv } from './record-csv.ts';
export { whyOf } from './why.ts';
export { recordOf, type JobRecord, type RecordEntry } from './record.ts';
export { safeCell, safeTable } from './safe-cell.ts';
export { demoIds, demoJob } from './demo.ts';
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
  type Check,
  type Fitted,
  type Job,
  type Line,
  type Preset,
} from './model.ts';
export { expandDesignators, shortenDesignators, type Designators } from './designators.ts';
export { LARGEST_FILE, openJob, writeJob, type Opened } from './file.ts';
export { openShared, shareJob, type Shared } from './share.ts';
export { changed, historyOf, MOST_STEPS, redone, undone, type History } from './history.ts';
export { textOfBytes, type TextOfBytes } from './bytes.ts';
export {
  DELIMITERS,
  readDelimited,
  type Delimited,
  type Delimiter,
  type Row,
} from './delimited.ts';
export { openStore, type JobStore, type Listed, type Saved } from './store.ts';
export { kindName } from './kinds.ts';
export { tableOfList } from './plain-list.ts';
export { guessColumns, type ColumnField, type Mapping } from './columns.ts';
export { guessDecimal, isDecimalAsked, type DecimalSign } from './decimal-sign.ts';
export { linesFromRows, type LinesIn } from './lines-in.ts';
export { tableOut } from './table-out.ts';
export { understandWith, understoodLine, type Understood } from './understood.ts';
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
