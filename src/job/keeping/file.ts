import {
  emptyJob,
  emptyLine,
  jobSchema,
  LARGEST_FILE,
  lineSchema,
  MOST_LINES,
  type Job,
  type Line,
} from '../model/job.ts';
import { readJson, isObject, type Raw } from './json-text.ts';
import { migrated } from './migrate.ts';

/** A job read from a file, with a sentence for each thing that is not as it was. */
export type Opened = { ok: true; job: Job; said: string[] } | { ok: false; message: string };

/** The text of a job's file, which `openJob` reads back exactly. */
export const writeJob = (job: Job): string => `${JSON.stringify(job, undefined, 1)}\n`;

const lineOf = (raw: unknown, id: string): Line | undefined =>
  isObject(raw) ? lineSchema.safeParse({ ...emptyLine(id), ...raw }).data : undefined;

/** Lines whose id stands for one of them only; a second one gets another. */
const withOwnIds = (lines: readonly Line[]): Line[] => {
  const taken = new Set(lines.map(({ id }) => id));
  const seen = new Set<string>();
  let next = lines.length;
  return lines.map((line) => {
    if (line.id !== '' && !seen.has(line.id)) {
      seen.add(line.id);
      return line;
    }
    while (taken.has(String(next))) next++;
    taken.add(String(next));
    seen.add(String(next));
    return { ...line, id: String(next) };
  });
};

const MOST_SAID = 20;

/** The lines that are whole, and a sentence for each that is not. */
const goodLines = (raw: unknown): { lines: Line[]; said: string[] } => {
  if (!Array.isArray(raw)) return { lines: [], said: ['The file holds no list of lines.'] };
  const read = raw.slice(0, MOST_LINES).map((each: unknown, at) => lineOf(each, String(at)));
  const bad = read.flatMap((line, at) => (line === undefined ? [at + 1] : []));
  const said = bad.slice(0, MOST_SAID).map((at) => `Line ${String(at)} is broken and left out.`);
  if (bad.length > MOST_SAID) said.push(`${String(bad.length)} lines are broken in all.`);
  if (raw.length > MOST_LINES)
    said.push(`A job holds 20,000 lines; ${String(raw.length - MOST_LINES)} more are left out.`);
  return { lines: read.filter((line) => line !== undefined), said };
};

/** Takes every part of a broken job that is sound by itself. */
const salvaged = (raw: Raw): { job: Job; said: string[] } => {
  const { lines, said } = goodLines(raw['lines']);
  let job: Job = { ...emptyJob('', new Date(0)), lines };
  for (const key of Object.keys(job)) {
    if (key === 'lines') continue;
    const trial = jobSchema.safeParse({ ...job, lines: [], [key]: raw[key] });
    if (trial.success) job = { ...trial.data, lines };
    else said.push(`“${key}” of the job is missing or broken and is left empty.`);
  }
  return { job, said };
};

const readRaw = (text: string): { raw: Raw; said: string[] } | { message: string } => {
  if (text.length > LARGEST_FILE)
    return { message: 'This file is larger than 50 MB, which no job is; nothing is opened.' };
  const read = readJson(text.replace(/^\uFEFF/u, ''));
  if ('message' in read) return read;
  if (!isObject(read.value) || read.value['format'] !== 'understudy-job')
    return { message: 'This file holds no job; nothing is opened.' };
  const said = read.isCut ? ['The file breaks off; what stands before that is opened.'] : [];
  const moved = migrated(read.value);
  return 'message' in moved ? moved : { raw: moved.job, said };
};

/**
 * The job that a file's text holds, exactly as `writeJob` wrote it. Of a broken one what is sound
 * is kept, and what is not is said. Never throws.
 */
export const openJob = (text: string): Opened => {
  const read = readRaw(text);
  if ('message' in read) return { ok: false, message: read.message };
  const whole = jobSchema.safeParse(read.raw);
  const { job, said } = whole.success ? { job: whole.data, said: [] } : salvaged(read.raw);
  return { ok: true, job: { ...job, lines: withOwnIds(job.lines) }, said: [...read.said, ...said] };
};
