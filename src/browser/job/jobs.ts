import * as z from 'zod/mini';
import { emptyJob, emptyLine, jobSchema, type Job } from '../../job/model.ts';
import { byId } from '../by-id.ts';
import { download, fileName } from './download.ts';
import { forgetJob, keptJob, keptTitles } from './kept.ts';
import { change, current, keepNow, listenForChange, listenForKeeping, openJob } from './state.ts';

/** Which job is open: new, another, a copy, deleted, from a file. */

// Schemas are not compiled: the page's policy lets no text become code.
z.config({ jitless: true });

const chooser = byId('jobs', HTMLSelectElement);
const said = byId('job-said', HTMLElement);
const LAST = 'job';

const freshJob = (): Job => ({
  ...emptyJob(crypto.randomUUID(), new Date()),
  lines: [emptyLine(crypto.randomUUID())],
});

const showTitles = async (): Promise<void> => {
  const { id, title } = current();
  const titles = await keptTitles().catch(() => []);
  const all = titles.some((one) => one.id === id) ? titles : [{ id, title }, ...titles];
  chooser.replaceChildren(
    ...all.map(
      (one) =>
        new Option(
          (one.id === id ? title : one.title) || 'Job without a title',
          one.id,
          false,
          one.id === id,
        ),
    ),
  );
};

const open = async (job: Job, isKept: boolean): Promise<void> => {
  await openJob(job, isKept);
  try {
    localStorage.setItem(LAST, job.id);
  } catch {
    // The job that was changed last is opened then.
  }
  await showTitles();
};

/** A job as a new one of its own. */
const copyOf = (job: Job, title: string): Job => {
  const now = new Date().toISOString();
  return { ...job, id: crypto.randomUUID(), title, created: now, changed: now };
};

const read = async (text: string): Promise<string> => {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    return 'This file is not JSON; nothing was changed.';
  }
  const result = jobSchema.safeParse(given);
  if (!result.success) {
    const [issue] = result.error.issues;
    return `This file is not a job of this tool (at ${issue?.path.join('.') || 'its start'}); nothing was changed.`;
  }
  await open(copyOf(result.data, result.data.title), false);
  return 'Opened as a job of its own.';
};

const openFile = async (input: HTMLInputElement): Promise<void> => {
  const [file] = input.files ?? [];
  input.value = '';
  if (file !== undefined) said.textContent = await read(await file.text());
};

const remove = async (): Promise<void> => {
  const gone = current();
  await keepNow();
  await forgetJob(gone.id);
  const [next] = await keptTitles();
  const job = next === undefined ? undefined : await keptJob(next.id);
  await open(job ?? freshJob(), job !== undefined);
  const back = document.createElement('button');
  back.type = 'button';
  back.textContent = 'Bring it back';
  back.addEventListener('click', () => {
    said.textContent = '';
    void open(gone, false);
  });
  said.replaceChildren(`Deleted “${gone.title || 'Job without a title'}”. `, back);
};

const onClick = (id: string, act: () => Promise<void> | void): void => {
  byId(id, HTMLButtonElement).addEventListener('click', () => void act());
};

/** Opens the job of the last visit, or an empty one, and makes the choice of jobs work. */
export const startJobs = async (): Promise<void> => {
  const texts = [
    ['job-title', 'title'],
    ['job-equipment', 'equipment'],
    ['job-note', 'note'],
  ] as const;
  for (const [id, key] of texts) {
    const input = byId(id, HTMLInputElement);
    input.addEventListener('input', () => {
      change({ ...current(), [key]: input.value }, key);
    });
    listenForChange(() => {
      if (input !== document.activeElement) input.value = current()[key];
    });
  }
  byId('job-title', HTMLInputElement).addEventListener('change', () => void showTitles());
  chooser.addEventListener('change', () => {
    void keptJob(chooser.value).then((job) => job && open(job, true));
  });
  onClick('new-job', () => open(freshJob(), false));
  onClick('copy-job', () => open(copyOf(current(), `${current().title || 'Job'}, copy`), false));
  onClick('delete-job', remove);
  onClick('save-job', () => {
    download(
      fileName(current().title, 'job', 'json'),
      JSON.stringify(current(), null, 1),
      'application/json',
    );
  });
  const file = byId('job-file', HTMLInputElement);
  file.addEventListener('change', () => void openFile(file));
  const elsewhere = byId('elsewhere', HTMLElement);
  onClick('take-theirs', async () => {
    const job = await keptJob(current().id);
    if (job !== undefined) await open(job, true);
  });
  onClick('keep-mine', () =>
    open(copyOf(current(), `${current().title || 'Job'}, from another tab`), false),
  );
  const keeping = byId('keeping', HTMLElement);
  listenForKeeping((how) => {
    elsewhere.hidden = how !== 'elsewhere';
    keeping.textContent = {
      kept: 'Kept in this browser.',
      keeping: 'Keeping …',
      elsewhere: 'Not kept.',
      refused: 'This browser keeps nothing: save the job as a file before you leave.',
    }[how];
  });
  const titles = await keptTitles().catch(() => []);
  let last: string | null = null;
  try {
    last = localStorage.getItem(LAST);
  } catch {
    // Without storage the newest is opened.
  }
  const id = titles.find((one) => one.id === last)?.id ?? titles[0]?.id;
  const job = id === undefined ? undefined : await keptJob(id);
  await open(job ?? freshJob(), job !== undefined);
};
