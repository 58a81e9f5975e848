import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Job } from '../../job/model.ts';

/** Jobs as they are kept in this browser. */

interface Kept extends DBSchema {
  jobs: { key: string; value: Job };
}

/** What the list of jobs shows of each. */
export type JobTitle = Pick<Job, 'id' | 'title' | 'changed'>;

let opened: Promise<IDBPDatabase<Kept>> | undefined;
const database = (): Promise<IDBPDatabase<Kept>> =>
  (opened ??= openDB<Kept>('jobs', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('jobs', { keyPath: 'id' });
    },
  }));

/** Titles of all jobs, the one changed last first. */
export const keptTitles = async (): Promise<JobTitle[]> => {
  const all = await (await database()).getAll('jobs');
  return all
    .map(({ id, title, changed }) => ({ id, title, changed }))
    .toSorted((a, b) => b.changed.localeCompare(a.changed));
};

/** A job as it was kept last. */
export const keptJob = async (id: string): Promise<Job | undefined> =>
  (await database()).get('jobs', id);

/**
 * Keeps a job, unless another tab has kept it since.
 * @param since when the version that this one follows was changed; nothing for a new job
 * @returns whether it was kept
 */
export const keepJob = async (job: Job, since: string | undefined): Promise<boolean> => {
  const transaction = (await database()).transaction('jobs', 'readwrite');
  const there = await transaction.store.get(job.id);
  const isFree = there === undefined || there.changed === since;
  if (isFree) await transaction.store.put(job);
  await transaction.done;
  return isFree;
};

/** Forgets a job. */
export const forgetJob = async (id: string): Promise<void> => {
  await (await database()).delete('jobs', id);
};
