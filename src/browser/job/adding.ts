import {
  choiceOf,
  emptyLine,
  lineOfPage,
  openStore,
  withLine,
  type Job,
  type Line,
  type StandIn,
} from '../../job/index.ts';
import type { Catalogue } from '../../engine/index.ts';
import { freshJob, jobName, lastOpened, noteOpened, soundOf } from './last-job.ts';
import { keepAside } from './set-aside.ts';

/** Adds the part that a substitution page is about to a job, without the page of the jobs. */

const store = openStore();

/** A job to choose from; one that is to be begun has an empty id. */
export interface JobChoice {
  id: string;
  name: string;
}

const NEW: JobChoice = { id: '', name: 'A new job' };

/** The jobs that a part may go to, the one that was open last first. */
export const jobsToChoose = async (): Promise<JobChoice[]> => {
  const there = await store;
  if ('message' in there) return [];
  await keepAside(there);
  const jobs = soundOf(await there.list());
  const last = lastOpened(jobs);
  const inOrder = last === undefined ? [] : [last, ...jobs.filter((one) => one !== last)];
  return [...inOrder.map(({ job }) => ({ id: job.id, name: jobName(job) })), NEW];
};

/** What goes into a job. */
export interface Added {
  catalogue: Catalogue;
  type: string;
  position: string;
  query: URLSearchParams;
  typed: Pick<Line, 'designators' | 'marking'>;
  /** What was chosen to go in; nothing where the plan is to say. */
  standIn: StandIn | undefined;
  /** The guideline of the page, and those that may be chosen there. */
  guideline: { chosen: string; offered: Iterable<HTMLOptionElement> };
}

/** What came of it: where the line went, or why it went nowhere. */
export type AddedTo =
  { ok: true; job: Job; name: string; said: readonly string[] } | { ok: false; message: string };

const lineOf = ({ catalogue, type, position, query, typed, standIn }: Added): Line => ({
  ...lineOfPage(
    catalogue,
    { ...emptyLine(crypto.randomUUID()), ...typed },
    { type, position, query },
  ),
  choice: standIn === undefined ? null : choiceOf(standIn, '', false),
});

/**
 * Keeps a job with the part as one more line.
 * @param id of the job; an empty one begins a job
 */
export const addToJob = async (id: string, added: Added): Promise<AddedTo> => {
  const there = await store;
  if ('message' in there) return { ok: false, message: there.message };
  const aside = await keepAside(there);
  const kept = soundOf(await there.list()).find(({ job }) => job.id === id);
  if (kept === undefined && id !== '')
    return { ok: false, message: 'This job is no longer kept here; choose another.' };
  const { chosen, offered } = added.guideline;
  const fresh = freshJob(offered);
  const job = kept?.job ?? { ...fresh, whole: { ...fresh.whole, guideline: chosen } };
  const line = lineOf(added);
  const now = new Date().toISOString();
  const more = withLine({ ...job, changed: now }, line);
  if (more === undefined)
    return { ok: false, message: 'This job has as many rows as a job can hold; choose another.' };
  const saved = await there.save(more, kept?.revision ?? 0);
  if (saved.state === 'refused')
    return { ok: false, message: `Nothing was added. ${saved.message}` };
  const into = saved.state === 'stale' ? saved.copy : more;
  noteOpened(into);
  return {
    ok: true,
    job: into,
    name: jobName(into),
    said: [...aside, ...(saved.state === 'stale' ? [saved.message] : [])],
  };
};
