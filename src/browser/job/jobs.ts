import {
  emptyLine,
  LARGEST_FILE,
  openJob as readJob,
  textOfBytes,
  writeJob,
  type Job,
  type Opened,
} from '../../job/index.ts';
import { siteFile } from '../fetched/site-file.ts';
import { byId } from '../page/by-id.ts';
import { download, fileName } from './download.ts';
import { freshJob, jobName, lastOpened, noteOpened, soundOf } from './last-job.ts';
import { sharedInAddress, startSharing } from './sharing.ts';
import {
  canUndo,
  change,
  current,
  forgetJob,
  keepNow,
  keepSetAside,
  keptJobs,
  listenForChange,
  listenForKeeping,
  noteExported,
  openJob,
  watchOthers,
  type Keeping,
} from './state.ts';

/** Which job is open: new, another, a copy, deleted, a demonstration, from a file. */

const chooser = byId('jobs', HTMLSelectElement);
const said = byId('job-said', HTMLElement);
const reminder = byId('reminder', HTMLElement);

/** An empty job with a row to type in. */
const emptied = (): Job => ({
  ...freshJob(document.querySelectorAll<HTMLOptionElement>('[name="guideline"] option')),
  lines: [emptyLine(crypto.randomUUID())],
});

const showJobs = async (): Promise<void> => {
  const { id, title } = current();
  const all = await keptJobs();
  const options = all.map((one) =>
    one.ok
      ? new Option(jobName(one.job), one.job.id, false, one.job.id === id)
      : new Option('Cannot be opened here: choose it to save its text', one.id),
  );
  if (!options.some(({ value }) => value === id))
    options.unshift(new Option(jobName({ title }), id, false, true));
  chooser.replaceChildren(...options);
  const own = all.find((one) => one.ok && one.job.id === id);
  reminder.hidden = !(own?.ok === true && own.needsExport && own.job.lines.length > 1);
};

const open = async (job: Job, kept: number): Promise<void> => {
  await openJob(job, kept);
  noteOpened(current());
  await showJobs();
};

const openKept = async (id: string): Promise<void> => {
  await keepNow();
  const one = (await keptJobs()).find((each) => (each.ok ? each.job.id : each.id) === id);
  if (one === undefined) return;
  if (one.ok) {
    await open(one.job, one.revision);
    return;
  }
  said.textContent = one.message;
  download('job-as-kept.json', one.text, 'application/json');
  await showJobs();
};

/** A job as a new one of its own. */
const copyOf = (job: Job, title: string): Job => {
  const now = new Date().toISOString();
  return { ...job, id: crypto.randomUUID(), title, created: now, changed: now };
};

/** Opens what was read as a job of its own, and says what is not as it was. */
const openRead = async (read: Opened): Promise<void> => {
  if (read.ok) await open(copyOf(read.job, read.job.title), 0);
  said.textContent = read.ok ? ['Opened.', ...read.said].join(' ') : read.message;
};

const openFile = async (file: File): Promise<void> => {
  // A file that is too large is refused before it is read.
  if (file.size > LARGEST_FILE) {
    said.textContent = 'This file is larger than 50 MB, which no job is; nothing is opened.';
    return;
  }
  const decoded = textOfBytes(new Uint8Array(await file.arrayBuffer()));
  if (!decoded.ok) {
    said.textContent = decoded.message;
    return;
  }
  const read = readJob(decoded.text);
  await openRead(read.ok ? { ...read, said: [...decoded.said, ...read.said] } : read);
};

const openDemo = async (id: string): Promise<void> => {
  try {
    await openRead(readJob(JSON.stringify(await siteFile(`/job/demo/${id}.json`))));
  } catch {
    said.textContent = 'The demonstration could not be fetched.';
  }
};

const remove = async (): Promise<void> => {
  await keepNow();
  const gone = current();
  await forgetJob(gone.id);
  const [next] = soundOf(await keptJobs());
  await open(next?.job ?? emptied(), next?.revision ?? 0);
  const back = document.createElement('button');
  back.type = 'button';
  back.textContent = 'Bring it back';
  back.addEventListener('click', () => {
    said.textContent = '';
    void open(gone, 0);
  });
  said.replaceChildren(`Deleted “${jobName(gone)}”. `, back);
};

const onClick = (id: string, act: () => Promise<void>): void => {
  byId(id, HTMLButtonElement).addEventListener('click', () => void act());
};

const startHead = (): void => {
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
      // What is typed in it is there already; undo changes it under the hand as well.
      if (input.value !== current()[key]) input.value = current()[key];
    });
  }
  byId('job-title', HTMLInputElement).addEventListener('change', () => {
    void keepNow().then(showJobs);
  });
};

const WORDS: Readonly<Record<Keeping['state'], string>> = {
  kept: 'Kept in this browser.',
  keeping: 'Keeping …',
  elsewhere: '',
  copied: '',
  refused: '',
};

/** Where nothing is kept, what was done would be gone with the page. */
const askBeforeLeaving = (event: Event): void => {
  if (canUndo()) event.preventDefault();
};

const startKeeping = (): void => {
  const elsewhere = byId('elsewhere', HTMLElement);
  const keeping = byId('keeping', HTMLElement);
  listenForKeeping(({ state, message }) => {
    if (state !== 'keeping') elsewhere.hidden = state !== 'elsewhere';
    keeping.textContent = WORDS[state];
    if (state === 'refused') addEventListener('beforeunload', askBeforeLeaving);
    if (state === 'kept') removeEventListener('beforeunload', askBeforeLeaving);
    if (message !== '') said.textContent = message;
    if (state === 'copied') void showJobs();
  });
  onClick('take-theirs', () => openKept(current().id));
};

const saveAsFile = async (): Promise<void> => {
  download(fileName(current().title, 'job', 'json'), writeJob(current()), 'application/json');
  await noteExported();
  await showJobs();
};

/** Opens the job of the last visit, or an empty one, and makes the choice of jobs work. */
export const startJobs = async (): Promise<void> => {
  startHead();
  startKeeping();
  chooser.addEventListener('change', () => void openKept(chooser.value));
  onClick('new-job', () => open(emptied(), 0));
  onClick('copy-job', () => open(copyOf(current(), `${current().title || 'Job'}, copy`), 0));
  onClick('delete-job', remove);
  for (const id of ['save-job', 'record-json']) onClick(id, saveAsFile);
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-demo]'))
    button.addEventListener('click', () => void openDemo(button.dataset['demo'] ?? ''));
  const file = byId('job-file', HTMLInputElement);
  file.addEventListener('change', () => {
    const [chosen] = file.files ?? [];
    const sheet = byId('job-files', HTMLElement);
    // Browsers that know none of it have the buttons in the bar.
    if ('togglePopover' in sheet) sheet.togglePopover(false);
    if (chosen !== undefined) void openFile(chosen);
    file.value = '';
  });
  const asides = await keepSetAside();
  const one = lastOpened(soundOf(await keptJobs()));
  await open(one?.job ?? emptied(), one?.revision ?? 0);
  if (asides.length > 0) said.textContent = asides.join(' ');
  await watchOthers();
  startSharing();
  const shared = await sharedInAddress();
  if (shared !== undefined) await openRead(shared);
};
