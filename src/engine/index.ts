/** The public face of the engine. Everything else under src/engine is internal. */

export type { Basis, Catalogue, PositionId, SourceId, TypeId } from './catalogue.ts';

export { exactly, type Range } from './quantities/range.ts';
export {
  formatCode,
  formatQuantity,
  formatValue,
  inMicrofarads,
  parseQuantity,
  writeQuantity,
  type Habit,
  type Unit,
} from './quantities/index.ts';

export type { SeriesName } from './values/index.ts';

export { readMarking, type Hints, type Reading, type Taper } from './markings/index.ts';
export {
  bandsOf,
  type Banded,
  coloursPainted,
  readColours,
  type ApartHint,
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
export { DEFAULT_GUIDELINE } from './equations/derating.ts';
export { familyBears } from './markings/family-bears.ts';
export { readTolerance } from './candidates/generate.ts';
export { mountedOtherwise, type MountedOtherwise } from './candidates/mounted-otherwise.ts';
export { magnitude } from './equations/drift.ts';
export { peakOfSine } from './equations/sine.ts';
export { voltageKindOf } from './candidates/voltage-kind.ts';
export { bodyOf, type Sized } from './sizes/body-of.ts';
export { bodyOfRow, volumeOf, type Body, type Shape } from './sizes/body.ts';
export { isAtLeast } from './quantities/within.ts';
export { sidesInWords } from './sizes/body-words.ts';
export { resolveSituation, type ResolvedCondition } from './assessment/conditions.ts';
export { decidingFinding, type Finding } from './assessment/finding.ts';
export type { Candidate, Made, Original, Part, Request, Tolerance } from './assessment/parts.ts';
export { isChip, type WithMountings } from './assessment/mounting.ts';
export { ruleOf, type RuleOfThumb, type WithRules } from './rule-of-thumb.ts';
export { assessKind, findKindStandIns, type KindAssessment } from './kinds/assess.ts';
export { askedOfEach, borneByEach, kindChain, type Borne, type KindChain } from './kinds/chain.ts';
export { filledKindSum } from './kinds/filled-sum.ts';
export type { KindCandidate, KindCircumstances, KindPart, KindRequest } from './kinds/part.ts';
export { allKindPairings, kindPairing } from './kinds/pairs.ts';
export { carriedSetting, useOf, type CarriedSetting, type NewTrimmer } from './kinds/setting.ts';
export { isTaper } from './kinds/tapers.ts';
export { kindCircumstances, resolveKindSituation } from './kinds/situation.ts';
export { compareVerdicts, verdictOrder, type Verdict } from './assessment/verdict.ts';
export { allPairings, pairing, type Pairing } from './positions/pairs.ts';
export type { ReformingPlan } from './reforming/plan.ts';
export { reformingInWords } from './reforming/words.ts';
export {
  judgeFirst,
  signsOf,
  type Advice,
  type Judgement,
  type Sign,
  type TriageReason,
} from './triage/judge-first.ts';
export { judgeDevice, judgeOfKind } from './triage/judge-by-kind.ts';
export type { KindEvidence } from './triage/kind-readings.ts';
export type { Evidence } from './triage/readings.ts';
export { lookKey, type LikelyStyle, type LookResult } from './look/look-key.ts';
export type { Apart, Expected } from './look/apart.ts';
export type { Ground } from './look/grounds.ts';
export type { KindId, LookAnswers, QuestionId, StyleId } from './look/model.ts';

export {
  assessDevice,
  deviceCircumstances,
  deviceStandIns,
  isMetIn,
  usesOf,
  type DeviceAssessment,
} from './devices/assess.ts';
export { usualNumbers } from './devices/usual.ts';
export { filledDeviceSum } from './devices/filled-sum.ts';
export { deviceKnowledge } from './devices/known.ts';
export type { DeviceCircumstances } from './devices/model.ts';
export { comparePins } from './devices/pins.ts';
