import { verdictWords } from '../../components/verdict-shape.ts';
import { formatQuantity, type Catalogue, decidingFinding } from '../../engine/index.ts';
import { evidenceFields } from '../../substitution/old-part.ts';
import { PART_LIMITS } from '../../substitution/typed-numbers.ts';
import { isBlank } from '../model/is-blank.ts';
import {
  emptyCheck,
  emptyFitted,
  type Adjustment,
  type BadRow,
  type Fitted,
  type Job,
} from '../model/job.ts';
import type { Plan, PlannedLine } from '../planning/planned.ts';
import { whyWords } from '../planning/stand-in.ts';
import { finished, type Steps } from '../planning/steps.ts';
import { whyOf } from '../planning/why.ts';
import { adjustmentsOf } from './adjustments.ts';
import { readInWords } from './bench-fields.ts';
import { isDone } from './is-done.ts';
import { fieldsAt } from './outside.ts';
import { presetFor, presetSteps, turnsInWords } from './preset.ts';
import { dueChecks, fitInWords, oldInWords } from './sheet.ts';

/** What became of one designator, in words that can be printed. */
export interface RecordEntry {
  designator: string;
  /** What was there, as typed. */
  old: string;
  /** Readings and signs that were taken of it, those at the bench among them. */
  found: string;
  decision: PlannedLine['decision'];
  decidedBy: PlannedLine['decidedBy'];
  /** Why: the visitor's words, else the first rule that counts. */
  why: string;
  /** What was to go in; nothing for what was left or only tested. */
  fit: string;
  /** How the fitted part stands in its place, with the finding that decides. */
  verdict: string;
  /** Why this part and not what ranks first. */
  chosenWhy: string;
  /** The setting that was carried over. */
  adjusted: string;
  /** Readings after the work. */
  measured: string;
  /** Whether what was decided was done. */
  isDone: boolean;
  done: Fitted;
  note: string;
}

export interface RecordCheck {
  id: string;
  title: string;
  done: boolean;
  reading: string;
  note: string;
  at: string;
}

/** All that was found, fitted, measured, adjusted and left alone, and why. */
export interface JobRecord {
  title: string;
  equipment: string;
  note: string;
  invented: string;
  entries: readonly RecordEntry[];
  /** Rows of the parts list that never became a line. */
  badRows: readonly BadRow[];
  /** In the order in which they were made. */
  adjustments: readonly Adjustment[];
  checks: readonly RecordCheck[];
}

/** Readings of the old part by what they are called on paper. */
const READINGS = {
  age: 'age',
  idle: 'without power for',
  capacitance: 'capacitance',
  loss120hz: 'loss at 100 or 120 Hz',
  loss1khz: 'loss at 1 kHz',
  esr: 'ESR',
  leakage: 'leakage',
  insulation: 'insulation',
  resistance: 'resistance',
} as const;

/** A number without a unit, which is read in the unit that its field asks in. */
const BARE = /^[\d.,\s–-]+$/u;

const unitAsked = (key: string): string =>
  key === 'age'
    ? PART_LIMITS.age.bare
    : (evidenceFields.find(({ reading }) => reading === key)?.bare ?? '');

/** A reading as typed, with the unit that it was read in where it has none. */
const withUnit = (key: string, text: string): string =>
  BARE.test(text) ? `${text} ${unitAsked(key)}`.trim() : text;

const foundInWords = ({ line }: PlannedLine, catalogue: Catalogue | undefined): string => {
  const { found } = line;
  const readings = Object.entries(READINGS).flatMap(([key, name]) => {
    const text = found[key as keyof typeof READINGS].trim();
    return text === '' ? [] : [`${name} ${withUnit(key, text)}`];
  });
  const signs = found.signs.map((id) => catalogue?.triage.find((row) => row.id === id)?.sign ?? id);
  return [...readings, ...signs].join('; ');
};

const verdictOf = ({ standIn, decision, state, part }: PlannedLine): string => {
  if (decision !== 'replace') return '';
  if (standIn === undefined) return state === 'other' ? 'not assessed' : '';
  const finding = decidingFinding(standIn);
  const word = verdictWords[standIn.verdict];
  return finding === undefined ? word : `${word}: ${whyWords(finding, part.family)}`;
};

const adjustedOf = (
  planned: PlannedLine,
  { preset }: Fitted,
  common: Catalogue,
  catalogue: Catalogue | undefined,
): string => {
  if (preset === null || preset.old.trim() === '') return '';
  const { from, to, old, oldTotal, supplied, total, turns: ofAll } = preset;
  const { set, turns } = presetSteps(common, presetFor(planned, preset, catalogue));
  return [
    `${from} to ${to}: old ${old}${oldTotal === '' ? '' : ` of ${oldTotal}`}`,
    ...(supplied === '' ? [] : [`new as supplied ${supplied}`]),
    ...(total === '' ? [] : [`${total} in all${ofAll === '' ? '' : ` over ${ofAll} turns`}`]),
    ...(set === undefined ? [] : [`to be set to ${formatQuantity(set, 'ohm', { digits: 4 })}`]),
    ...(turns === undefined ? [] : [turnsInWords(turns)]),
  ].join(', ');
};

const joined = (...texts: string[]): string => texts.filter((text) => text !== '').join('; ');

const entriesOf = (
  planned: PlannedLine,
  common: Catalogue,
  catalogue: Catalogue | undefined,
): RecordEntry[] => {
  const { line, part, decision, decidedBy, chosenBy } = planned;
  const entry = {
    old: oldInWords(planned, common),
    decision,
    decidedBy,
    why: whyOf(planned),
    fit: decision === 'replace' ? fitInWords(planned, common) : '',
    verdict: verdictOf(planned),
    chosenWhy: chosenBy === 'visitor' ? (line.choice?.reason ?? '') : '',
    note: line.note,
  };
  const found = foundInWords(planned, catalogue);
  const known = new Set(part.designators);
  // What was written down under a designator that has since been renamed stays on paper.
  const designators = [...known, ...Object.keys(line.fitted).filter((key) => !known.has(key))];
  return (designators.length === 0 ? [''] : designators).map((designator) => {
    const done = line.fitted[designator] ?? emptyFitted();
    const preset =
      done.preset === null
        ? undefined
        : presetSteps(common, presetFor(planned, done.preset, catalogue));
    const fields = fieldsAt(planned, done, common, preset);
    return {
      ...entry,
      designator,
      found: joined(found, readInWords(fields, 'before'), done.before),
      measured: joined(readInWords(fields, 'after'), done.after),
      adjusted: adjustedOf(planned, done, common, catalogue),
      isDone: isDone(done, decision),
      done,
    };
  });
};

/** Checks that are due, done or not, and those written down before they ceased to be due. */
const recordedChecks = (job: Job, plan: Plan, common: Catalogue): RecordCheck[] => {
  const due = dueChecks(plan.lines, common).map(({ id, title }) => ({
    id,
    title,
    ...(job.checks[id] ?? emptyCheck()),
  }));
  const rest = Object.entries(job.checks)
    .filter(([id]) => due.every((check) => check.id !== id))
    .map(([id, check]) => ({
      id,
      title: common.job.closingChecks.find((row) => row.id === id)?.title ?? id,
      ...check,
    }));
  return [...due, ...rest];
};

/** Lines that are written down in one step. */
const LINES_A_STEP = 100;

/** The record of a job, in the order of its lines, some lines a step; nothing of the plan is left out. */
export function* recordSteps(
  job: Job,
  plan: Plan,
  common: Catalogue,
  catalogueAt: (slice: string) => Catalogue | undefined,
): Steps<JobRecord> {
  const entries: RecordEntry[] = [];
  for (const [index, planned] of plan.lines.entries()) {
    if (isBlank(planned.line)) continue;
    entries.push(...entriesOf(planned, common, catalogueAt(planned.part.slice ?? '')));
    if (index % LINES_A_STEP === LINES_A_STEP - 1) yield;
  }
  const { title, equipment, note, invented, badRows } = job;
  return {
    title,
    equipment,
    note,
    invented,
    entries,
    badRows,
    adjustments: adjustmentsOf(job, plan.lines, common.kinds),
    checks: recordedChecks(job, plan, common),
  };
}

/** The same at once. */
export const recordOf = (...of: Parameters<typeof recordSteps>): JobRecord =>
  finished(recordSteps(...of));
