import { readUnkept, writeUnkept, type Job, type JobStore, type Unkept } from '../../job/index.ts';
import { keepText, keptKeys, keptText } from '../kept/kept-text.ts';

/** Jobs that were set aside when their page was left, one under each key. */

const PREFIX = 'unkept-job ';

/** Sets a job aside at once, without waiting for anything. */
export const setAside = (unkept: Unkept): void => {
  keepText(PREFIX + unkept.job.id, writeUnkept(unkept));
};

/** Forgets what was set aside of a job, which is kept now. */
export const forgetAside = ({ id }: Job): void => {
  keepText(PREFIX + id, '');
};

/** All that was set aside; what turns out to be no job is forgotten. */
const allAside = (): Unkept[] =>
  keptKeys()
    .filter((key) => key.startsWith(PREFIX))
    .flatMap((key) => {
      const unkept = readUnkept(keptText(key));
      if (unkept === undefined) keepText(key, '');
      return unkept ?? [];
    });

/**
 * Keeps what pages were left with before they could keep it.
 * @returns what is to be said of it, in sentences
 */
export const keepAside = async (store: JobStore): Promise<string[]> => {
  const said: string[] = [];
  for (const unkept of allAside()) {
    const saved = await store.save(unkept.job, unkept.revision);
    // Only what is kept is forgotten: this page may be left as well.
    if (saved.state !== 'refused') forgetAside(unkept.job);
    if (saved.state !== 'saved') said.push(saved.message);
  }
  return said;
};
