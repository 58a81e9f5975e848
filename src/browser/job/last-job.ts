import { emptyJob, type Job, type Listed } from '../../job/index.ts';
import { keepText, keptText } from '../kept/kept-text.ts';
import { likedGuideline } from '../kept/liked-guideline.ts';

/** Which job a visitor goes on with, on whatever page. */

const LAST = 'job';

/** What a job is called, one without a title too. */
export const jobName = ({ title }: Pick<Job, 'title'>): string => title || 'Job without a title';

/** A job that can be opened as it is kept. */
export type Sound = Extract<Listed, { ok: true }>;

/** Notes which job was open last. */
export const noteOpened = ({ id }: Job): void => {
  keepText(LAST, id);
};

/** The jobs that can be opened, the one that was saved last first. */
export const soundOf = (all: readonly Listed[]): Sound[] =>
  all.filter((one) => one.ok).toSorted((a, b) => b.saved.localeCompare(a.saved));

/** The job that was open last; where that is not known, the one that was saved last. */
export const lastOpened = (jobs: readonly Sound[]): Sound | undefined => {
  const last = keptText(LAST);
  return jobs.find(({ job }) => job.id === last) ?? jobs[0];
};

/** A job without lines, by the guideline that this reader likes where it is among those on offer. */
export const freshJob = (guidelines: Iterable<HTMLOptionElement>): Job => {
  const empty = emptyJob(crypto.randomUUID(), new Date());
  const liked = likedGuideline();
  const guideline = [...guidelines].some(({ value }) => value === liked) ? liked : '';
  return { ...empty, whole: { ...empty.whole, guideline } };
};
