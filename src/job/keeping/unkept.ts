import * as z from 'zod/mini';
import type { Job } from '../model/job.ts';
import { openJob, writeJob } from './file.ts';

/**
 * A job whose page was left before the database had it. The database answers later than a page that
 * goes away can wait, so that such a job is set aside as a text and handed over by the next page.
 */
export interface Unkept {
  job: Job;
  /** The one that the page opened or last saved; 0 for a new job. */
  revision: number;
}

const schema = z.object({ revision: z.int().check(z.nonnegative()), text: z.string() });

/** The text of a job to be set aside, which `readUnkept` reads back exactly. */
export const writeUnkept = ({ job, revision }: Unkept): string =>
  JSON.stringify({ revision, text: writeJob(job) });

/** The job of a text that anybody may have written; nothing where it holds none. Never throws. */
export const readUnkept = (text: string): Unkept | undefined => {
  try {
    const { revision, text: written } = schema.parse(JSON.parse(text));
    const read = openJob(written);
    return read.ok ? { job: read.job, revision } : undefined;
  } catch {
    return undefined;
  }
};
