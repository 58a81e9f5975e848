import type { Catalogue, Judgement } from '../../engine/index.ts';
import type { CautionRow } from '../../schemas/cautions.ts';
import type { ClosingCheckRow, FittingOrderRow, Mark } from '../../schemas/job.ts';
import { isBlank } from '../model/is-blank.ts';
import {
  emptyCheck,
  emptyFitted,
  emptyPreset,
  type Adjustment,
  type Check,
  type Fitted,
  type Job,
} from '../model/job.ts';
import type { Plan, PlannedLine } from '../planning/planned.ts';
import { standInWords } from '../planning/stand-in.ts';
import { typeNameIn } from '../planning/type-name.ts';
import { unreadOf } from '../understanding/part-of-line.ts';
import { adjustmentsOf } from './adjustments.ts';
import { type BenchField } from './bench-fields.ts';
import { isGeneral, newLineCautions, type DueCaution } from './due-cautions.ts';
import { isDone } from './is-done.ts';
import { judgedAlone } from './judged-alone.ts';
import { fieldsAt } from './outside.ts';
import { newPlacing, type PlacedCaution } from './placed-cautions.ts';
import { presetFor, presetSteps, type PresetSteps } from './preset.ts';

/** One part at a time: what to do at one designator. */
export interface SheetStep {
  /** Unique on the sheet. */
  id: string;
  planned: PlannedLine;
  designator: string;
  action: PlannedLine['decision'];
  /** What is there, as typed. */
  old: string;
  /** What goes in; nothing for a test. */
  fit: string;
  /** When and how this kind of part is fitted. */
  row: FittingOrderRow | undefined;
  marks: readonly Mark[];
  cautions: readonly PlacedCaution[];
  /** What the readings of this one alone come to; nothing where its line is judged by them anyway. */
  judgement: Judgement | undefined;
  /** What can be written down about it, and what was. */
  fields: readonly BenchField[];
  /** Of a trimmer. */
  preset: PresetSteps | undefined;
  fitted: Fitted;
  isDone: boolean;
}

export interface SheetCheck {
  row: ClosingCheckRow;
  cautions: readonly PlacedCaution[];
  check: Check;
}

/** The work at the bench, in its order. */
export interface Sheet {
  /** Cautions of all work on this board, the gravest first. */
  cautions: readonly PlacedCaution[];
  steps: readonly SheetStep[];
  checks: readonly SheetCheck[];
  /** In the order in which they are made. */
  adjustments: readonly Adjustment[];
}

/** What a sheet is made with. */
export interface SheetTools {
  /** A part of the catalogue, such as that of a position. */
  catalogueAt: (slice: string) => Catalogue | undefined;
  /** With names of types, cautions and the tables of jobs. */
  common: Catalogue;
}

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
const saidInWords = ({ line }: PlannedLine, common: Catalogue): string =>
  [typeNameIn(common, line.type), line.value, line.tolerance, line.volts]
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
  const { standIn, state, part } = planned;
  if (standIn !== undefined) return standInWords(standIn, (id) => typeNameIn(common, id));
  const isOpen = state === 'open' && part.family !== 'capacitor' && unreadOf(part) === undefined;
  const isTyped = state === 'other' || isOpen;
  return isTyped && part.kind !== '' ? saidInWords(planned, common) : '';
};

/**
 * Whether a board makes a check due. Parts that are left alone count too: the mains side beside a
 * repair still has to be tested.
 */
const isDue = ({ kinds, positions }: ClosingCheckRow, worked: readonly PlannedLine[]): boolean =>
  (kinds.length === 0 && positions.length === 0) ||
  worked.some(({ part }) => kinds.includes(part.kind) || positions.includes(part.position ?? ''));

/** Checks that are due for a board with such work, in their order. */
export const dueChecks = (
  worked: readonly PlannedLine[],
  { job: { closingChecks } }: Catalogue,
): ClosingCheckRow[] =>
  closingChecks.filter((row) => isDue(row, worked)).toSorted((a, b) => a.place - b.place);

/** The work that one line asks for at each of its designators, cautions apart. */
const stepsOf = (
  planned: PlannedLine,
  whole: Job['whole'],
  { catalogueAt, common }: SheetTools,
): Omit<SheetStep, 'cautions'>[] => {
  const { decision, line, part } = planned;
  const row = rowFor(common.job.fittingOrder, planned);
  const step = {
    planned,
    action: decision,
    old: oldInWords(planned, common),
    fit: decision === 'replace' ? fitInWords(planned, common) : '',
    row,
    marks: marksOf(row, typeOf(planned), common),
  };
  const catalogue = catalogueAt(part.slice ?? '');
  const designators = part.designators.length === 0 ? [''] : part.designators;
  // What is left alone stays on the sheet where something was written down about it.
  const worked = designators.filter((key) => decision !== 'leave' || key in line.fitted);
  return worked.map((designator) => {
    const fitted = line.fitted[designator] ?? emptyFitted();
    const preset =
      common.kinds[part.kind]?.wiper === 'preset'
        ? presetSteps(common, presetFor(planned, fitted.preset ?? emptyPreset(), catalogue))
        : undefined;
    return {
      ...step,
      id: `${line.id} ${designator}`.trim(),
      designator,
      isDone: isDone(fitted, decision),
      fitted,
      fields: fieldsAt(planned, fitted, common, preset),
      judgement: catalogue && judgedAlone(planned, designator, { catalogue, whole }),
      preset,
    };
  });
};

const isGrave = ({ severity }: CautionRow): boolean => severity === 'danger';

/** A caution with the parts whose number it rests on. */
const named = (due: DueCaution, designators: readonly string[]): DueCaution =>
  due.assumed === undefined ? due : { ...due, assumed: { ...due.assumed, designators } };

const TURNS: readonly SheetStep['action'][] = ['test', 'replace', 'leave'];

/**
 * The sheet for the bench: tests first, since their readings may decide, then the parts to fit in a
 * sensible order, one designator at a time, then the checks that close the work. A caution stands in
 * full where it first counts.
 */
export const sheetOf = (job: Job, plan: Plan, tools: SheetTools): Sheet => {
  const { catalogueAt, common } = tools;
  const lineCautions = newLineCautions();
  const steps = plan.lines
    .filter(({ line }) => !isBlank(line))
    .flatMap((planned) => {
      const ordered = stepsOf(planned, job.whole, tools);
      if (ordered.length === 0) return [];
      const due = lineCautions(planned, catalogueAt(planned.part.slice ?? ''), common.cautions);
      const own = due.map((one) => named(one, planned.part.designators));
      return ordered.map((step) => ({ ...step, due: own }));
    })
    .toSorted(
      (a, b) =>
        TURNS.indexOf(a.action) - TURNS.indexOf(b.action) ||
        (a.row?.place ?? 0) - (b.row?.place ?? 0),
    );
  const checks = dueChecks(plan.lines, common);
  const atChecks = new Set(checks.flatMap(({ cautions }) => cautions));
  const place = newPlacing();
  // What a whole place does to people comes before all; what spoils parts only, where it does.
  const grave = [...new Set(steps.flatMap(({ due }) => due))].filter(
    ({ row }) => isGrave(row) && row.types.length === 0,
  );
  const general = common.cautions.filter(isGeneral).map((row) => ({ row }));
  return {
    cautions: steps.length === 0 ? [] : place([...general, ...grave]),
    steps: steps.map(({ due, ...step }) => ({
      ...step,
      cautions: place(
        due.filter(({ row }) => isGrave(row) || row.types.length > 0 || !atChecks.has(row.id)),
      ),
    })),
    checks: checks.map((row) => ({
      row,
      cautions: place(
        common.cautions
          .filter(({ id }) => row.cautions.includes(id))
          .map((caution) => ({ row: caution })),
      ),
      check: job.checks[row.id] ?? emptyCheck(),
    })),
    adjustments: adjustmentsOf(job, plan.lines, common.kinds),
  };
};
