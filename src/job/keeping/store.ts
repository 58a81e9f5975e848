import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import type { Job } from '../model/job.ts';
import { openJob, writeJob } from './file.ts';

/** A job as it is kept: its file's text, so that one that is damaged can still be handed out. */
interface Kept {
  id: string;
  text: string;
  /** SHA-256 of the text, in hexadecimal. */
  sum: string;
  /** Rises by one with each save. */
  revision: number;
  saved: string;
  /** When it was last saved as a file; nothing until then. */
  exported: string;
}

interface Tables extends DBSchema {
  jobs: { key: string; value: Kept };
}

/** One job in the list; a damaged one is set aside, with its text to be saved as a file. */
export type Listed =
  | { ok: true; job: Job; revision: number; saved: string; exported: string; needsExport: boolean }
  | { ok: false; id: string; message: string; text: string };

/**
 * What became of a save. On `stale`, another page had saved meanwhile: that version stays, and this
 * one is kept beside it as `copy`. On `refused`, nothing was stored and the job is in memory only.
 */
export type Saved =
  | { state: 'saved'; revision: number }
  | { state: 'stale'; copy: Job; revision: number; message: string }
  | { state: 'refused'; message: string };

export interface JobStore {
  list: () => Promise<Listed[]>;
  /** @param revision the one that this page opened or last saved; 0 for a new job */
  save: (job: Job, revision: number) => Promise<Saved>;
  remove: (id: string) => Promise<void>;
  /** Notes that the job was saved as a file. */
  exported: (id: string) => Promise<void>;
  /** Calls back with the id of a job that another page saved; returns how to stop. */
  watch: (changed: (id: string) => void) => () => void;
  close: () => void;
}

const NAME = 'understudy-jobs';

/** What takes a database of one version to the next; the first makes it. */
export type Upgrade = (old: IDBPDatabase<Tables>, change: Upgrading) => void;
type Upgrading = IDBPTransaction<Tables, 'jobs'[], 'versionchange'>;

/** Steps in their order; their number is the version. What stands in the tables stays. */
const UPGRADES: readonly Upgrade[] = [
  (old) => {
    old.createObjectStore('jobs', { keyPath: 'id' });
  },
];

const NEWER =
  'A newer edition of this page keeps the jobs of this browser. Load the page again; until then the job stays open here, so save it as a file.';
const BLOCKED =
  'Another tab holds the jobs in an older way. Close the other tabs of this site and load the page again; until then save the job as a file.';

const sumOf = async (text: string): Promise<string> => {
  const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('');
};

const listed = async (kept: Kept): Promise<Listed> => {
  const { id, text, sum, revision, saved, exported } = kept;
  if ((await sumOf(text)) !== sum)
    return {
      ok: false,
      id,
      text,
      message:
        'This job was damaged where it is kept. Save it as a file; what is sound in it can be opened from there.',
    };
  const read = openJob(text);
  return read.ok
    ? { ok: true, job: read.job, revision, saved, exported, needsExport: exported < saved }
    : { ok: false, id, text, message: read.message };
};

const refusal = (error: unknown): string => {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError')
    return 'This browser has no room left for jobs. The job stays open here; save it as a file.';
  if (name === 'VersionError') return NEWER;
  return 'This browser does not keep jobs. The job stays open here; save it as a file.';
};

/** Opens the database, brought up to the newest version; an older page that holds it is not waited for. */
const opened = async (
  name: string,
  upgrades: readonly Upgrade[],
  letGo: () => void,
): Promise<IDBPDatabase<Tables> | { message: string }> => {
  let isBlocked: (held: { message: string }) => void = () => undefined;
  const blocked = new Promise<{ message: string }>((resolve) => {
    isBlocked = resolve;
  });
  const database = openDB<Tables>(name, upgrades.length, {
    upgrade: (old, from, _to, change) => {
      for (const step of upgrades.slice(from)) step(old, change);
    },
    blocked: () => {
      isBlocked({ message: BLOCKED });
    },
    blocking: letGo,
  });
  const first = await Promise.race([database, blocked]);
  // One that comes too late may not stand in the way of others.
  if ('message' in first)
    database.then(
      (late) => {
        late.close();
      },
      () => undefined,
    );
  return first;
};

/** Writes unless another page saved since `revision`; one transaction, so that none comes between. */
const put = async (
  database: IDBPDatabase<Tables>,
  kept: Omit<Kept, 'exported'>,
  revision: number,
): Promise<boolean> => {
  const change = database.transaction('jobs', 'readwrite');
  const there = await change.store.get(kept.id);
  const isFresh = (there?.revision ?? 0) === revision;
  if (isFresh) await change.store.put({ ...kept, exported: there?.exported ?? '' });
  await change.done;
  return isFresh;
};

const keptOf = async (job: Job, revision: number): Promise<Omit<Kept, 'exported'>> => {
  const text = writeJob(job);
  return { id: job.id, text, sum: await sumOf(text), revision, saved: new Date().toISOString() };
};

/**
 * Jobs in the browser's own store. Nothing here throws for want of room or leave: a save tells.
 * @param name of the database, for tests
 * @param upgrades of the database, for tests
 */
export const openStore = async (
  name = NAME,
  upgrades = UPGRADES,
): Promise<JobStore | { message: string }> => {
  let database: IDBPDatabase<Tables>;
  let isLetGo = false;
  try {
    const there = await opened(name, upgrades, () => {
      // A page with a newer edition waits for this one to let go.
      isLetGo = true;
      database.close();
    });
    if ('message' in there) return there;
    database = there;
  } catch (error) {
    return { message: refusal(error) };
  }
  const channel = new BroadcastChannel(name);
  let askedToPersist = false;
  const persist = (): void => {
    if (askedToPersist || typeof navigator === 'undefined' || !('storage' in navigator)) return;
    askedToPersist = true;
    // Whatever the answer, saving goes on.
    navigator.storage.persist().catch(() => false);
  };

  const save = async (job: Job, revision: number): Promise<Saved> => {
    try {
      const next = revision + 1;
      persist();
      if (await put(database, await keptOf(job, next), revision)) {
        channel.postMessage(job.id);
        return { state: 'saved', revision: next };
      }
      const title = `${job.title} (copy from another page)`.trim();
      const copy = { ...job, id: crypto.randomUUID(), title };
      await put(database, await keptOf(copy, 1), 0);
      channel.postMessage(copy.id);
      const message =
        'This job was changed on another page meanwhile. Both versions are kept; yours is the copy.';
      return { state: 'stale', copy, revision: 1, message };
    } catch (error) {
      return { state: 'refused', message: isLetGo ? NEWER : refusal(error) };
    }
  };

  return {
    list: async () => Promise.all((await database.getAll('jobs')).map(listed)),
    save,
    remove: (id) => database.delete('jobs', id),
    exported: async (id) => {
      const change = database.transaction('jobs', 'readwrite');
      const there = await change.store.get(id);
      if (there !== undefined)
        await change.store.put({ ...there, exported: new Date().toISOString() });
      await change.done;
    },
    watch: (changed) => {
      const hear = ({ data }: MessageEvent<unknown>): void => {
        if (typeof data === 'string') changed(data);
      };
      channel.addEventListener('message', hear);
      return () => {
        channel.removeEventListener('message', hear);
      };
    },
    close: () => {
      channel.close();
      database.close();
    },
  };
};
