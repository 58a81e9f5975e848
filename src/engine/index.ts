/** The public face of the engine. Everything else under src/engine is internal. */

export type { Fault, Result } from './result.ts';
export type {
  Basis,
  Catalogue,
  ConditionId,
  FindingId,
  GuidelineId,
  Knowledge,
  PositionId,
  PropertyId,
  SourceId,
  TypeId,
} from './catalogue.ts';

export { exactly, type Range } from './quantities/range.ts';
export {
  formatCode,
  formatQuantity,
  formatValue,
  parseQuantity,
  writeQuantity,
  type Habit,
  type Unit,
} from './quantities/index.ts';

export {
  nearestPreferred,
  nearestVoltage,
  type Preferred,
  type SeriesName,
  type ValuePolicy,
} from './values/index.ts';

export { readMarking, type Hints, type Reading, type Taper } from './markings/index.ts';
export {
  bandsOf,
  type Banded,
  coloursPainted,
  readColours,
  type ApartHint,
  type ColourCatalogue,
  type ColourId,
  type ColourRequest,
  type Painted,
} from './colours/index.ts';

export { waysPrinted, type PartToPrint, type Way } from './printed/index.ts';

export {
  assess,
  findStandIns,
  rankStandIns,
  type Assessment,
  type Leaning,
  type RankedStandIn,
} from './assessment/assess.ts';
export { circumstancesOf } from './assessment/circumstances.ts';
export { filledSum } from './assessment/filled-sum.ts';
export type { FilledSum } from './assessment/sum-fields.ts';
export type { Circumstances } from './findings/model.ts';
export { DEFAULT_GUIDELINE } from './equations/derating.ts';
export { readTolerance } from './candidates/generate.ts';
export { mountedOtherwise, type MountedOtherwise } from './candidates/mounted-otherwise.ts';
export { crestOf } from './equations/crest.ts';
export { voltageKindOf } from './candidates/voltage-kind.ts';
export { bodyOf, type Sized } from './sizes/body-of.ts';
export { bodyOfRow, volumeOf, type Body, type Shape } from './sizes/body.ts';
export { sidesInWords } from './sizes/body-words.ts';
export {
  plainDefault,
  resolveSituation,
  type ResolvedCondition,
  type Situation,
} from './assessment/conditions.ts';
export type { Finding } from './assessment/finding.ts';
export type { Candidate, Made, Original, Part, Request, Tolerance } from './assessment/parts.ts';
export { isChip, type WithMountings } from './assessment/mounting.ts';
export { ruleOf, type WithRules } from './rule-of-thumb.ts';
export { assessKind, findKindStandIns, type KindAssessment } from './kinds/assess.ts';
export { filledKindSum } from './kinds/filled-sum.ts';
export type { KindCandidate, KindCircumstances, KindPart, KindRequest } from './kinds/part.ts';
export { allKindPairings, kindPairing } from './kinds/pairs.ts';
export { carriedSetting, useOf, type CarriedSetting, type NewTrimmer } from './kinds/setting.ts';
export { isTaper } from './kinds/tapers.ts';
export { kindCircumstances, resolveKindSituation } from './kinds/situation.ts';
export { verdictOrder, type Verdict } from './assessment/verdict.ts';
export { allPairings, pairing, type Pairing } from './positions/pairs.ts';
export { reformingPlan, type ReformingPlan, type ReformingStep } from './reforming/plan.ts';
export { reformingInWords } from './reforming/words.ts';
export {
  judgeFirst,
  signsOf,
  type Advice,
  type Judgement,
  type Sign,
  type TriageReason,
} from './triage/judge-first.ts';
export type { Evidence, Marked } from './triage/readings.ts';
export { runSum } from './sums/index.ts';
export type { SumResult } from './sums/run-sum.ts';
export { lookKey, type LikelyStyle, type LookResult } from './look/look-key.ts';
export type { Apart, Expected, Telling } from './look/apart.ts';
export type { Ground } from './look/grounds.ts';
export type { KindId, LookAnswers, QuestionId, StyleId } from './look/model.ts';
export type { NextQuestion } from './look/next.ts';
export type { LossSign } from './look/signs.ts';

export {
  assessDevice,
  deviceCircumstances,
  deviceStandIns,
  isMetIn,
  usesOf,
  type DeviceAssessment,
} from './devices/assess.ts';
export { usualNumbers, type UsualNumber } from './devices/usual.ts';
export { filledDeviceSum } from './devices/filled-sum.ts';
export { deviceKnowledge, figuresFor } from './devices/known.ts';
export type { DeviceCircumstances } from './devices/model.ts';
export { comparePins } from './devices/pins.ts';
