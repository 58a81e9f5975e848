import type { JobTables } from '../../schemas/job.ts';
import {
  emptyFitted,
  emptyJob,
  emptyLine,
  emptyPreset,
  type Job,
  type Line,
  type Preset,
} from './job.ts';

/** The texts of the conditions of one line, or of the whole board, by id. */
const conditionsOf = (tables: JobTables, job: string, designators: string): Line['conditions'] =>
  Object.fromEntries(
    tables.demoConditions
      .filter((row) => row.job === job && row.designators === designators)
      .map(({ condition, text }) => [condition, text]),
  );

const presetOf = (row: JobTables['demoPresets'][number] | undefined): Preset | undefined => {
  if (row === undefined) return undefined;
  const { from, to, old, supplied, total, turns } = row;
  return { ...emptyPreset(), from, to, old, supplied, total, turns };
};

const lineOf = (tables: JobTables, row: JobTables['demoParts'][number], id: string): Line => {
  const { job, designators, decision_reason: decisionReason, ...said } = row;
  const isOwn = (other: { job: string; designators: string }): boolean =>
    other.job === job && other.designators === designators;
  const empty = emptyLine(id);
  const preset = presetOf(tables.demoPresets.find(isOwn));
  return {
    ...empty,
    ...said,
    designators,
    decisionReason,
    conditions: conditionsOf(tables, job, designators),
    found: {
      ...empty.found,
      ...Object.fromEntries(
        tables.demoFound.filter(isOwn).map(({ reading, text }) => [reading, text]),
      ),
    },
    fitted: preset === undefined ? {} : { [designators]: { ...emptyFitted(), preset } },
  };
};

/** Ids of the invented jobs, in the order of their table. */
export const demoIds = ({ demoJobs }: JobTables): string[] => demoJobs.map(({ id }) => id);

/**
 * An invented job, as somebody would have typed it.
 * @param now when it is begun
 * @throws RangeError for an id that the data do not have
 */
export const demoJob = (tables: JobTables, id: string, now: Date): Job => {
  const row = tables.demoJobs.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`there is no demonstration ${id}`);
  const empty = emptyJob(`demo-${id}`, now);
  return {
    ...empty,
    title: row.title,
    equipment: row.equipment,
    note: row.note,
    invented: row.invented,
    whole: {
      ...empty.whole,
      conditions: conditionsOf(tables, id, ''),
      spareShare: row.spare_share,
      spareLeast: row.spare_least,
    },
    lines: tables.demoParts
      .filter((part) => part.job === id)
      .map((part, index) => lineOf(tables, part, String(index + 1))),
  };
};
