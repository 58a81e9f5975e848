import type { Job } from './job.ts';

/** A job, and the way there and back. Jobs are never altered, so that steps share what stayed. */
export interface History {
  readonly past: readonly Job[];
  readonly now: Job;
  readonly future: readonly Job[];
  /** What the last step was about; further steps about the same join it. */
  readonly about: string;
}

/** Steps that can be taken back. */
export const MOST_STEPS = 200;

/** Opens a job with nothing to take back. */
export const historyOf = (job: Job): History => ({ past: [], now: job, future: [], about: '' });

/**
 * The job after one more step. Steps in a row `about` the same thing, such as letters typed into
 * one field, are taken back together; nothing joins a step about `''`. The oldest are forgotten.
 */
export const changed = (history: History, job: Job, about = ''): History => {
  if (job === history.now) return history;
  const joins = about !== '' && about === history.about;
  const past = joins ? history.past : [...history.past, history.now].slice(-MOST_STEPS);
  return { past, now: job, future: [], about };
};

/** One step back; the same history where there is none. */
export const undone = (history: History): History => {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    now: before,
    future: [history.now, ...history.future],
    about: '',
  };
};

/** One step forward again; the same history where nothing was taken back. */
export const redone = (history: History): History => {
  const [after, ...future] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.now], now: after, future, about: '' };
};
