import type { Catalogue, PositionId } from '../engine/index.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { ClosingCheckRow, FittingOrderRow, Mark } from '../schemas/job.ts';
import { partPhrase } from '../substitution/phrases.ts';
import { lineCautions } from './due-cautions.ts';
import type { Check, Fitted, Job } from './model.ts';
import type { Plan, PlannedLine } from './planned.ts';
import { presetSteps, type PresetSteps } from './preset.ts';

/** One part at a time: what to do at one designator. */
export interface SheetStep {
  /** Unique on the sheet. */
  id: string;
  planned: PlannedLine;
  designator: string;
  action: 'test' | 'replace';
  /** What is there, as typed. */
  old: string;
  /** What goes in; nothing for a test. */
  fit: string;
  /** When and how this kind of part is fitted. */
  row: FittingOrderRow | undefined;
  marks: readonly Mark[];
  cautions: readonly CautionRow[];
  preset: PresetSteps | undefined;
  fitted: Fitted;
}

export interface SheetCheck {
  row: ClosingCheckRow;
  cautions: readonly CautionRow[];
  check: Check;
}

/** The work at the bench, in its order. */
export interface Sheet {
  /** Cautions of all work on this board, the gravest first. */
  cautions: readonly CautionRow[];
  steps: readonly SheetStep[];
  checks: readonly SheetCheck[];
}

/** What a sheet is made with. */
export interface SheetTools {
  catalogueAt: (position: PositionId) => Catalogue | undefined;
  /** With names of types, cautions and the tables of jobs. */
  common: Catalogue;
}

const UNTOUCHED: Fitted = { done: false, before: '', after: '', note: '', at: '' };
const UNCHECKED: Check = { done: false, reading: '', note: '', at: '' };

/** The type that is worked with: that of the stand-in, or of the old part where it is tested. */
const typeOf = ({ decision, standIn, part }: PlannedLine): string =>
  (decision === 'replace' ? standIn?.candidate.type : undefined) ?? part.type ?? '';

/** The row for a part: one that names its type before one for all of its kind, else that for others. */
const rowFor = (
  rows: readonly FittingOrderRow[],
  planned: PlannedLine,
): FittingOrderRow | undefined => {
  const kind = planned.part.kind === '' ? 'other' : planned.part.kind;
  const type = typeOf(planned);
  const ofKind = rows.filter(({ kinds }) => kinds.includes(kind));
  return (
    ofKind.find(({ types }) => types.includes(type)) ??
    ofKind.find(({ types }) => types.length === 0) ??
    rows.find(({ kinds }) => kinds.includes('other'))
  );
};

const marksOf = (row: FittingOrderRow | undefined, type: string, { types }: Catalogue): Mark[] => {
  const polarity = types[type]?.polarity;
  // A table of kinds cannot know that some types of a family take either polarity.
  const marks = (row?.marks ?? []) as Mark[];
  const own = marks.filter((mark) => mark !== 'polarity' || polarity !== 'non-polar');
  const isPolar = polarity === 'polar' || polarity === 'unknown';
  return [...new Set<Mark>([...own, ...(isPolar ? (['polarity'] as const) : [])])];
};

/** What a line says of its part, its marking apart: `Polystyrene 1 nF 1 % 160 V`. */
const saidInWords = ({ line }: PlannedLine, { types }: Catalogue): string =>
  [types[line.type]?.name ?? line.type, line.value, line.tolerance, line.volts]
    .filter((text) => text.trim() !== '')
    .join(' ');

/** A line as it stands in the list of parts: `10 µF 25 V, marked KM 10/25`. */
export const oldInWords = (planned: PlannedLine, common: Catalogue): string => {
  const { line } = planned;
  const marking = line.marking.trim() === '' ? [] : [`marked ${line.marking}`];
  return [saidInWords(planned, common), ...marking].filter((text) => text !== '').join(', ');
};

/** What a line gets, in words: the stand-in, or like for like what is typed. */
export const fitInWords = (planned: PlannedLine, common: Catalogue): string => {
  const { standIn, state } = planned;
  if (standIn !== undefined) {
    const { candidate } = standIn;
    return `${common.types[candidate.type]?.name ?? candidate.type}, ${partPhrase(candidate)}`;
  }
  return state === 'other' ? saidInWords(planned, common) : '';
};

const GRAVITY: readonly CautionRow['severity'][] = ['danger', 'care'];

const gravestFirst = (cautions: Iterable<CautionRow>): CautionRow[] =>
  [...new Map([...cautions].map((row) => [row.id, row])).values()].toSorted(
    (a, b) => GRAVITY.indexOf(a.severity) - GRAVITY.indexOf(b.severity),
  );

/**
 * Whether a board makes a check due. Parts that are left alone count too: the mains side beside a
 * repair still has to be tested.
 */
const isDue = ({ kinds, positions }: ClosingCheckRow, worked: readonly PlannedLine[]): boolean =>
  (kinds.length === 0 && positions.length === 0) ||
  worked.some(({ part }) => kinds.includes(part.kind) || positions.includes(part.position ?? ''));

/** Checks that a board with such work needs, in their order. */
export const checksOf = (
  job: Job,
  worked: readonly PlannedLine[],
  { job: tables, cautions }: Catalogue,
): SheetCheck[] =>
  tables.closingChecks
    .filter((row) => isDue(row, worked))
    .toSorted((a, b) => a.place - b.place)
    .map((row) => ({
      row,
      cautions: cautions.filter(({ id }) => row.cautions.includes(id)),
      check: job.checks[row.id] ?? UNCHECKED,
    }));

/**
 * The sheet for the bench: tests first, since their readings may decide, then the parts to fit in a
 * sensible order, one designator at a time, then the checks that close the work.
 */
export const sheetOf = (job: Job, plan: Plan, { catalogueAt, common }: SheetTools): Sheet => {
  const general: CautionRow[] = [];
  const steps = plan.lines.flatMap((planned): SheetStep[] => {
    const { decision, line, part } = planned;
    if (decision === 'leave') return [];
    const at = part.position === undefined ? undefined : catalogueAt(part.position);
    const cautions = lineCautions(planned, at, common.cautions);
    general.push(...cautions.general, ...cautions.own.filter((row) => row.severity === 'danger'));
    const row = rowFor(common.job.fittingOrder, planned);
    const step = {
      planned,
      action: decision,
      old: oldInWords(planned, common),
      fit: decision === 'replace' ? fitInWords(planned, common) : '',
      row,
      marks: marksOf(row, typeOf(planned), common),
      cautions: gravestFirst(cautions.own),
      preset: line.preset === null ? undefined : presetSteps(common, line.preset),
    };
    const designators = part.designators.length === 0 ? [''] : part.designators;
    return designators.map((designator) => ({
      ...step,
      id: `${line.id} ${designator}`.trim(),
      designator,
      fitted: line.fitted[designator] ?? UNTOUCHED,
    }));
  });
  const isFitting = ({ action }: SheetStep): number => (action === 'test' ? 0 : 1);
  return {
    cautions: gravestFirst(general),
    steps: steps.toSorted(
      (a, b) => isFitting(a) - isFitting(b) || (a.row?.place ?? 0) - (b.row?.place ?? 0),
    ),
    checks: checksOf(job, plan.lines, common),
  };
};
