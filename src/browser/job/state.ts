import {
  changed,
  emptyJob,
  historyOf,
  openStore,
  redone,
  undone,
  type History,
  type Job,
  type Line,
  type Listed,
} from '../../job/index.ts';
import { forgetAside, keepAside, setAside } from './set-aside.ts';

/** The job that is open: one value, replaced at every change, kept at once, with its past. */

/** How it stands with keeping, in words where there is more to say. */
export interface Keeping {
  state: 'kept' | 'keeping' | 'elsewhere' | 'copied' | 'refused';
  message: string;
}

/** What a listener is told of: typing redraws nothing that has the focus. */
export interface Change {
  typed: boolean;
}

/** A change is written at once, but not sooner than this after the last, ms: long jobs take their time. */
const PAUSE = 150;

const store = openStore();
let history: History = historyOf(emptyJob(crypto.randomUUID(), new Date()));
/** The version that was opened or saved last; 0 for a job that was never saved. */
let revision = 0;
/** The job as it was opened or saved last; nothing for one that was never saved. Before one is opened there is nothing to keep. */
let kept: Job | undefined = history.now;
let timer = 0;
let lastKept = -Infinity;
let queue: Promise<void> = Promise.resolve();

const changeListeners: ((change: Change) => void)[] = [];
const keepListeners: ((keeping: Keeping) => void)[] = [];

/** The open job as it is now. */
export const current = (): Job => history.now;
/** Whether there is a change to take back. */
export const canUndo = (): boolean => history.past.length > 0;
/** Whether there is one to make again that was taken back. */
export const canRedo = (): boolean => history.future.length > 0;
/** Calls after every change of the open job, and when another one is opened. */
export const listenForChange = (listener: (change: Change) => void): void => {
  changeListeners.push(listener);
};
/** Calls whenever it stands otherwise with keeping the job. */
export const listenForKeeping = (listener: (keeping: Keeping) => void): void => {
  keepListeners.push(listener);
};

const tell = (change: Change): void => {
  for (const listener of changeListeners) listener(change);
};
const tellKeeping = (state: Keeping['state'], message = ''): void => {
  for (const listener of keepListeners) listener({ state, message });
};

const keep = async (): Promise<void> => {
  const version = history.now;
  if (version === kept) return;
  const there = await store;
  if ('message' in there) {
    tellKeeping('refused', there.message);
    return;
  }
  const saved = await there.save(version, revision);
  if (saved.state === 'refused') {
    tellKeeping('refused', saved.message);
    return;
  }
  revision = saved.revision;
  kept = version;
  forgetAside(version);
  if (saved.state === 'stale') {
    const { id, title } = saved.copy;
    const isNow = version === history.now;
    const renamed = (job: Job): Job => ({ ...job, id, title });
    // What can be taken back belongs to the copy from now on.
    history = {
      ...history,
      past: history.past.map(renamed),
      now: renamed(history.now),
      future: history.future.map(renamed),
    };
    if (isNow) kept = history.now;
    tell({ typed: true });
    tellKeeping('copied', saved.message);
  } else if (version === history.now) tellKeeping('kept');
};

/** Keeps what is not kept yet, now. */
export const keepNow = (): Promise<void> => {
  clearTimeout(timer);
  timer = 0;
  lastKept = performance.now();
  queue = queue.then(keep);
  return queue;
};

const put = (next: History, change: Change): void => {
  if (next === history) return;
  history = { ...next, now: { ...next.now, changed: new Date().toISOString() } };
  tell(change);
  tellKeeping('keeping');
  if (timer !== 0) return;
  const wait = lastKept + PAUSE - performance.now();
  if (wait <= 0) void keepNow();
  else timer = window.setTimeout(() => void keepNow(), wait);
};

/**
 * Replaces the job.
 * @param cell names what is being typed in; nothing for a change of its own
 */
export const change = (next: Job, cell = ''): void => {
  put(changed(history, next, cell), { typed: cell !== '' });
};

/** Changes lines by their ids. */
export const changeLines = (
  ids: ReadonlySet<string>,
  edit: (line: Line) => Line,
  cell = '',
): void => {
  const job = history.now;
  change({ ...job, lines: job.lines.map((line) => (ids.has(line.id) ? edit(line) : line)) }, cell);
};

/** Takes the last change back. */
export const undo = (): void => {
  put(undone(history), { typed: false });
};

/** Makes the change again that was taken back last. */
export const redo = (): void => {
  put(redone(history), { typed: false });
};

/**
 * Opens a job.
 * @param from the version that is kept already; 0 for a new one, which is kept from now on
 */
export const openJob = async (next: Job, from: number): Promise<void> => {
  if (timer !== 0) keepNow().catch(() => undefined);
  await queue;
  history = historyOf(next);
  revision = from;
  kept = from === 0 ? undefined : next;
  tellKeeping('kept');
  tell({ typed: false });
  if (from === 0) await keepNow();
};

/**
 * Keeps what pages were left with before they could keep it.
 * @returns what is to be said of it, in sentences
 */
export const keepSetAside = async (): Promise<string[]> => {
  const there = await store;
  return 'message' in there ? [] : keepAside(there);
};

/** All jobs that are kept, the damaged ones too. */
export const keptJobs = async (): Promise<Listed[]> => {
  const there = await store;
  return 'message' in there ? [] : there.list();
};

/** Deletes a job from this browser. */
export const forgetJob = async (id: string): Promise<void> => {
  const there = await store;
  if (!('message' in there)) await there.remove(id);
};

/** Notes that the open job was saved as a file. */
export const noteExported = async (): Promise<void> => {
  await keepNow();
  const there = await store;
  if (!('message' in there)) await there.exported(history.now.id);
};

/** Tells when another tab saves the open job, from now on. */
export const watchOthers = async (): Promise<void> => {
  const there = await store;
  if ('message' in there) return;
  there.watch((id) => {
    if (id === history.now.id) tellKeeping('elsewhere');
  });
};

addEventListener('pagehide', () => {
  if (history.now === kept) return;
  setAside({ job: history.now, revision });
  void keepNow();
});
document.addEventListener('visibilitychange', () => {
  if (document.hidden && timer !== 0) void keepNow();
});
