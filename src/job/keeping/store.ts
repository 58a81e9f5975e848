import type { Job } from '../model/job.ts';
import {
  openDatabase,
  put,
  refusal,
  UPGRADES,
  type Database,
  type Kept,
  type Opened,
  type Upgrade,
} from './database.ts';
import { openJob, writeJob } from './file.ts';

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

const keptOf = async (job: Job, revision: number): Promise<Omit<Kept, 'exported'>> => {
  const text = writeJob(job);
  return { id: job.id, text, sum: await sumOf(text), revision, saved: new Date().toISOString() };
};

/** Asks the browser, with the first save, to throw nothing away for want of room. */
const askingToPersist = (): (() => void) => {
  let isAsked = false;
  return () => {
    if (isAsked || typeof navigator === 'undefined' || !('storage' in navigator)) return;
    isAsked = true;
    // Whatever the answer, saving goes on.
    navigator.storage.persist().catch(() => false);
  };
};

/** The open database, and what tells other pages of a change. */
interface Held extends Opened {
  channel: BroadcastChannel;
  persist: () => void;
}

const save = async (
  { database, letGo, channel, persist }: Held,
  job: Job,
  revision: number,
): Promise<Saved> => {
  try {
    persist();
    const stands = await put(database, await keptOf(job, revision + 1), revision);
    if (stands !== undefined) {
      channel.postMessage(job.id);
      return { state: 'saved', revision: stands };
    }
    const title = `${job.title} (copy from another page)`.trim();
    const copy = { ...job, id: crypto.randomUUID(), title };
    await put(database, await keptOf(copy, 1), 0);
    channel.postMessage(copy.id);
    const message =
      'This job was changed on another page meanwhile. Both versions are kept; yours is the copy.';
    return { state: 'stale', copy, revision: 1, message };
  } catch (error) {
    return { state: 'refused', message: letGo() ?? refusal(error) };
  }
};

/** Notes that a job was saved as a file now. */
const noteExported = async (database: Database, id: string): Promise<void> => {
  const change = database.transaction('jobs', 'readwrite');
  const there = await change.store.get(id);
  if (there !== undefined) await change.store.put({ ...there, exported: new Date().toISOString() });
  await change.done;
};

const watch = (channel: BroadcastChannel, changed: (id: string) => void): (() => void) => {
  const hear = ({ data }: MessageEvent<unknown>): void => {
    if (typeof data === 'string') changed(data);
  };
  channel.addEventListener('message', hear);
  return () => {
    channel.removeEventListener('message', hear);
  };
};

/**
 * Jobs in the browser's own store. Nothing here throws for want of room or leave: a save tells.
 * @param name of the database, for tests
 * @param upgrades of the database, for tests
 */
export const openStore = async (
  name = NAME,
  upgrades: readonly Upgrade[] = UPGRADES,
): Promise<JobStore | { message: string }> => {
  const opened = await openDatabase(name, upgrades);
  if ('message' in opened) return opened;
  const { database } = opened;
  const channel = new BroadcastChannel(name);
  const held: Held = { ...opened, channel, persist: askingToPersist() };
  return {
    list: async () => Promise.all((await database.getAll('jobs')).map(listed)),
    save: (job, revision) => save(held, job, revision),
    remove: (id) => database.delete('jobs', id),
    exported: (id) => noteExported(database, id),
    watch: (changed) => watch(channel, changed),
    close: () => {
      channel.close();
      database.close();
    },
  };
};
