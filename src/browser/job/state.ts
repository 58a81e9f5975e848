import { emptyJob, type Job, type Line } from '../../job/model.ts';
import { keepJob } from './kept.ts';

/** The job that is open: one value, replaced at every change, kept at once, with its past. */

/** How it stands with keeping: another tab has gone on with the job, or the browser keeps nothing. */
export type Keeping = 'kept' | 'keeping' | 'elsewhere' | 'refused';

/** What a listener is told of: typing redraws nothing that has the focus. */
export interface Change {
  typed: boolean;
}

const MOST_STEPS = 200;
/** Waits this long after a keystroke, so that long jobs are not copied at each of them. */
const PAUSE = 150;

let job: Job = emptyJob(crypto.randomUUID(), new Date());
let past: Job[] = [];
let future: Job[] = [];
/** The cell that was typed in last: one step of undoing for all its letters. */
let lastCell = '';
/** When the version in the database was changed; nothing while it is not there. */
let keptSince: string | undefined;
let keeping: Keeping = 'kept';
let timer = 0;
let queue: Promise<void> = Promise.resolve();

const changeListeners: ((change: Change) => void)[] = [];
const keepListeners: ((keeping: Keeping) => void)[] = [];
const others = new BroadcastChannel('jobs');

export const current = (): Job => job;
export const canUndo = (): boolean => past.length > 0;
export const canRedo = (): boolean => future.length > 0;
export const listenForChange = (listener: (change: Change) => void): void => {
  changeListeners.push(listener);
};
export const listenForKeeping = (listener: (keeping: Keeping) => void): void => {
  keepListeners.push(listener);
};

const tell = (change: Change): void => {
  for (const listener of changeListeners) listener(change);
};
const tellKeeping = (now: Keeping): void => {
  keeping = now;
  for (const listener of keepListeners) listener(now);
};

const keep = async (): Promise<void> => {
  if (keeping === 'elsewhere') return;
  const version = job;
  try {
    if (!(await keepJob(version, keptSince))) {
      tellKeeping('elsewhere');
      return;
    }
    keptSince = version.changed;
    others.postMessage({ id: version.id, changed: version.changed });
    if (version === job) tellKeeping('kept');
  } catch {
    tellKeeping('refused');
  }
};

/** Keeps what is not kept yet, now. */
export const keepNow = (): Promise<void> => {
  clearTimeout(timer);
  timer = 0;
  queue = queue.then(keep);
  return queue;
};

const keepSoon = (): void => {
  if (keeping !== 'elsewhere') tellKeeping('keeping');
  if (timer === 0) timer = window.setTimeout(() => void keepNow(), PAUSE);
};

/** A time that differs from the one before, however fast one types. */
const later = (before: string): string =>
  new Date(Math.max(Date.now(), Date.parse(before) + 1)).toISOString();

const put = (next: Job, change: Change): void => {
  job = { ...next, changed: later(job.changed) };
  tell(change);
  keepSoon();
};

/**
 * Replaces the job.
 * @param cell names what is being typed in; nothing for a change of its own
 */
export const change = (next: Job, cell = ''): void => {
  if (cell === '' || cell !== lastCell) past = [...past.slice(1 - MOST_STEPS), job];
  future = [];
  lastCell = cell;
  put(next, { typed: cell !== '' });
};

/** Changes lines by their ids. */
export const changeLines = (
  ids: ReadonlySet<string>,
  edit: (line: Line) => Line,
  cell = '',
): void => {
  change({ ...job, lines: job.lines.map((line) => (ids.has(line.id) ? edit(line) : line)) }, cell);
};

export const undo = (): void => {
  const before = past.at(-1);
  if (before === undefined) return;
  past = past.slice(0, -1);
  future = [...future, job];
  lastCell = '';
  put(before, { typed: false });
};

export const redo = (): void => {
  const after = future.at(-1);
  if (after === undefined) return;
  future = future.slice(0, -1);
  past = [...past, job];
  lastCell = '';
  put(after, { typed: false });
};

/** Opens a job: one that is kept already, or a new one, which is kept from now on. */
export const openJob = async (next: Job, isKept: boolean): Promise<void> => {
  if (timer !== 0) await keepNow();
  job = next;
  past = [];
  future = [];
  lastCell = '';
  keptSince = isKept ? next.changed : undefined;
  tellKeeping('kept');
  tell({ typed: false });
  if (!isKept) await keepNow();
};

others.addEventListener('message', ({ data }: MessageEvent<{ id: string; changed: string }>) => {
  if (data.id === job.id && data.changed !== keptSince) tellKeeping('elsewhere');
});
addEventListener('pagehide', () => {
  if (timer !== 0) void keepNow();
});
