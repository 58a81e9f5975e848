import type { Catalogue } from '../engine/index.ts';
import { decidingFinding, reasonPhrase } from '../substitution/phrases.ts';
import type { BadRow, Fitted, Job } from './model.ts';
import type { Plan, PlannedLine } from './planned.ts';
import { presetSteps, turnsInWords } from './preset.ts';
import { safeTable } from './safe-cell.ts';
import { checksOf, fitInWords, oldInWords } from './sheet.ts';

/** What became of one designator, in words that can be printed. */
export interface RecordEntry {
  designator: string;
  lineId: string;
  /** What was there, as typed. */
  old: string;
  /** Readings and signs that were taken of it. */
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
  checks: readonly RecordCheck[];
}

const UNTOUCHED: Fitted = { done: false, before: '', after: '', note: '', at: '' };

/** Readings of the old part by what they are called on paper. */
const READINGS = {
  age: 'age',
  idle: 'without power for',
  capacitance: 'capacitance',
  loss120hz: 'loss at 100 or 120 Hz',
  loss1khz: 'loss at 1 kHz',
  esr: 'series resistance',
  leakage: 'leakage',
  insulation: 'insulation',
} as const;

const foundInWords = ({ line }: PlannedLine, catalogue: Catalogue | undefined): string => {
  const { found } = line;
  const readings = Object.entries(READINGS).flatMap(([key, name]) => {
    const text = found[key as keyof typeof READINGS].trim();
    return text === '' ? [] : [`${name} ${text}`];
  });
  const signs = found.signs.map((id) => catalogue?.triage.find((row) => row.id === id)?.sign ?? id);
  return [...readings, ...signs].join('; ');
};

const whyOf = ({ line, decidedBy, worked }: PlannedLine): string => {
  if (decidedBy === 'visitor') return line.decisionReason;
  if (decidedBy === 'place' && worked?.misfit !== undefined) {
    return `such a part does not belong here: ${reasonPhrase(worked.misfit)}`;
  }
  const [reason] = worked?.judgement.reasons ?? [];
  if (reason === undefined) return 'nothing is known of it, so it is tested';
  return reason.working === '' ? reason.why : `${reason.why} (${reason.working})`;
};

const verdictOf = ({ standIn, decision, state }: PlannedLine): string => {
  if (decision !== 'replace') return '';
  if (standIn === undefined) return state === 'other' ? 'not assessed here yet' : '';
  const finding = decidingFinding(standIn);
  return finding === undefined ? standIn.verdict : `${standIn.verdict}: ${reasonPhrase(finding)}`;
};

const adjustedOf = ({ line }: PlannedLine, common: Catalogue): string => {
  if (line.preset === null) return '';
  const { from, to, old, supplied } = line.preset;
  const { set, turns } = presetSteps(common, line.preset);
  return [
    `${from} to ${to}: old ${old}`,
    ...(supplied === '' ? [] : [`new as supplied ${supplied}`]),
    ...(set === undefined ? [] : [`set to ${old}`]),
    ...(turns === undefined ? [] : [turnsInWords(turns)]),
  ].join(', ');
};

const entriesOf = (
  planned: PlannedLine,
  common: Catalogue,
  catalogue: Catalogue | undefined,
): RecordEntry[] => {
  const { line, part, decision, decidedBy, chosenBy } = planned;
  const entry = {
    lineId: line.id,
    old: oldInWords(planned, common),
    found: foundInWords(planned, catalogue),
    decision,
    decidedBy,
    why: whyOf(planned),
    fit: decision === 'replace' ? fitInWords(planned, common) : '',
    verdict: verdictOf(planned),
    chosenWhy: chosenBy === 'visitor' ? (line.choice?.reason ?? '') : '',
    adjusted: adjustedOf(planned, common),
    note: line.note,
  };
  const known = new Set(part.designators);
  // What was written down under a designator that has since been renamed stays on paper.
  const designators = [...known, ...Object.keys(line.fitted).filter((key) => !known.has(key))];
  return (designators.length === 0 ? [''] : designators).map((designator) => ({
    ...entry,
    designator,
    done: line.fitted[designator] ?? UNTOUCHED,
  }));
};

/** Checks that are due, done or not, and those written down before they ceased to be due. */
const recordedChecks = (job: Job, plan: Plan, common: Catalogue): RecordCheck[] => {
  const due = checksOf(job, plan.lines, common).map(({ row, check }) => ({
    id: row.id,
    title: row.title,
    ...check,
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

/** The record of a job, in the order of its lines; nothing of the plan is left out. */
export const recordOf = (
  job: Job,
  plan: Plan,
  common: Catalogue,
  catalogueAt: (position: string) => Catalogue | undefined,
): JobRecord => ({
  title: job.title,
  equipment: job.equipment,
  note: job.note,
  invented: job.invented,
  entries: plan.lines.flatMap((planned) =>
    entriesOf(planned, common, catalogueAt(planned.part.position ?? '')),
  ),
  badRows: job.badRows,
  checks: recordedChecks(job, plan, common),
});

const COLUMNS = [
  'Designator',
  'Old part',
  'Found',
  'Decision',
  'Decided by',
  'Why',
  'Fitted',
  'Verdict',
  'Why this part',
  'Adjusted',
  'Done',
  'Before',
  'After',
  'At',
  'Note',
];

/** The record as comma-separated values that are safe in a spreadsheet; checks follow the parts. */
export const recordCsv = ({ entries, badRows, checks }: JobRecord): string =>
  safeTable([
    COLUMNS,
    ...entries.map(({ done, ...entry }) => [
      entry.designator,
      entry.old,
      entry.found,
      entry.decision,
      entry.decidedBy,
      entry.why,
      done.done ? entry.fit : '',
      entry.verdict,
      entry.chosenWhy,
      entry.adjusted,
      done.done ? 'yes' : 'no',
      done.before,
      done.after,
      done.at,
      [done.note, entry.note].filter((text) => text !== '').join('; '),
    ]),
    ...badRows.map(({ row, cells, reason }) => {
      const said = Array.from({ length: COLUMNS.length }, () => '');
      return said
        .with(0, `row ${String(row)}`)
        .with(1, cells.join(' | '))
        .with(5, reason);
    }),
    ...checks.map(({ title, done, reading, note, at }) => {
      const said = Array.from({ length: COLUMNS.length }, () => '');
      return said
        .with(0, 'check')
        .with(1, title)
        .with(10, done ? 'yes' : 'no')
        .with(12, reading)
        .with(13, at)
        .with(14, note);
    }),
  ]);
