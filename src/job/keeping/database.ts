import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';

/** The browser's database of jobs: what stands in it, its versions, and opening it beside other pages. */

/** A job as it is kept: its file's text, so that one that is damaged can still be handed out. */
export interface Kept {
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

export type Database = IDBPDatabase<Tables>;

/** What takes a database of one version to the next; the first makes it. */
export type Upgrade = (old: Database, change: Upgrading) => void;
type Upgrading = IDBPTransaction<Tables, 'jobs'[], 'versionchange'>;

/** Steps in their order; their number is the version. What stands in the tables stays. */
export const UPGRADES: readonly Upgrade[] = [
  (old) => {
    old.createObjectStore('jobs', { keyPath: 'id' });
  },
];

const NEWER =
  'A newer edition of this page keeps the jobs of this browser. Load the page again; until then the job stays open here, so save it as a file.';
const BLOCKED =
  'Another tab holds the jobs in an older way. Close the other tabs of this site and load the page again; until then save the job as a file.';

/** Why jobs cannot be kept here, in words, from what the browser throws. */
export const refusal = (error: unknown): string => {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError')
    return 'This browser has no room left for jobs. The job stays open here; save it as a file.';
  if (name === 'VersionError') return NEWER;
  return 'This browser does not keep jobs. The job stays open here; save it as a file.';
};

/** A database that is open for this page. */
export interface Opened {
  database: Database;
  /** Why it can no longer be written to: a page with a newer edition took it over; nothing until then. */
  letGo: () => string | undefined;
}

/** Opens the database, brought up to the newest version; an older page that holds it is not waited for. */
const openedOrBlocked = async (
  name: string,
  upgrades: readonly Upgrade[],
  letGo: () => void,
): Promise<Database | { message: string }> => {
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

/**
 * Opens the database of a name, or says in words why this browser keeps no jobs. A page with a newer
 * edition waits for this one to let go of it, and it does at once. Never throws.
 */
export const openDatabase = async (
  name: string,
  upgrades: readonly Upgrade[],
): Promise<Opened | { message: string }> => {
  let taken: string | undefined;
  let database: Database | undefined;
  try {
    const there = await openedOrBlocked(name, upgrades, () => {
      taken = NEWER;
      database?.close();
    });
    if ('message' in there) return there;
    database = there;
    return { database: there, letGo: () => taken };
  } catch (error) {
    return { message: refusal(error) };
  }
};

/**
 * Writes unless another page saved something else since `revision`; one transaction, so that none
 * comes between.
 * @returns the revision that now stands there; nothing where another page's stays
 */
export const put = async (
  database: Database,
  kept: Omit<Kept, 'exported'>,
  revision: number,
): Promise<number | undefined> => {
  const change = database.transaction('jobs', 'readwrite');
  const there = await change.store.get(kept.id);
  const isFresh = (there?.revision ?? 0) === revision;
  if (isFresh) await change.store.put({ ...kept, exported: there?.exported ?? '' });
  await change.done;
  if (isFresh) return kept.revision;
  // The same may stand there, from a page that was left before it heard that it was written.
  return there?.text === kept.text ? there.revision : undefined;
};
