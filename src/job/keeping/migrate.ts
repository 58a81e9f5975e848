import { expandDesignators } from '../model/designators.ts';
import { isObject, type Raw } from './json-text.ts';

/** Takes a job of one version to the next; what it gets is not checked yet. */
export type Step = (job: Readonly<Record<string, unknown>>) => Record<string, unknown>;

const UNREAD = { did: '', found: {}, measured: {}, preset: null };

/**
 * Version 2 reads each designator at the bench by itself; before, one setting of a trimmer stood for
 * a whole line.
 */
const lineOfVersion2 = (line: unknown): unknown => {
  if (!isObject(line)) return line;
  const { preset, ...rest } = line;
  const before = isObject(rest['fitted']) ? rest['fitted'] : {};
  const fitted = Object.fromEntries(
    Object.entries(before).map(([key, one]) => [key, isObject(one) ? { ...UNREAD, ...one } : one]),
  );
  if (!isObject(preset)) return { ...rest, fitted };
  const named = typeof rest['designators'] === 'string' ? rest['designators'] : '';
  const carried = { use: 'rheostat', oldTotal: '', ...preset };
  for (const designator of expandDesignators(named).list) {
    const own = fitted[designator];
    const untouched = { done: false, before: '', after: '', note: '', at: '', ...UNREAD };
    fitted[designator] = { ...untouched, ...(isObject(own) ? own : {}), preset: carried };
  }
  return { ...rest, fitted };
};

/** In version 3 a choice has a value and a rating of any unit; before, it was a capacitor's. */
const lineOfVersion3 = (line: unknown): unknown => {
  if (!isObject(line) || !isObject(line['choice'])) return line;
  const { capacitance, ratedVoltage, ...choice } = line['choice'];
  return { ...line, choice: { ...choice, value: capacitance, rating: ratedVoltage } };
};

/** In version 4 what was found of a part may be a resistance. */
const lineOfVersion4 = (line: unknown): unknown =>
  isObject(line) && isObject(line['found'])
    ? { ...line, found: { resistance: '', ...line['found'] } }
    : line;

const eachLine = (job: Readonly<Raw>, change: (line: unknown) => unknown): Raw => {
  const lines: unknown = job['lines'];
  return { ...job, lines: Array.isArray(lines) ? lines.map(change) : lines };
};

/** How a job of an older version, by its number, becomes one of the next. */
const steps: ReadonlyMap<number, Step> = new Map([
  [1, (job) => ({ ...eachLine(job, lineOfVersion2), adjustments: [] })],
  [2, (job) => eachLine(job, lineOfVersion3)],
  [3, (job) => eachLine(job, lineOfVersion4)],
]);

/** The version that this edition writes. */
export const NEWEST_VERSION = 4;

/**
 * A job brought up to the newest version, or one sentence about why not. What a newer edition wrote
 * is refused, since it may hold what this one would lose.
 */
export const migrated = (
  job: Readonly<Record<string, unknown>>,
  table: ReadonlyMap<number, Step> = steps,
  newest = NEWEST_VERSION,
): { job: Record<string, unknown> } | { message: string } => {
  let now = { ...job };
  const { version } = now;
  if (typeof version !== 'number' || !Number.isSafeInteger(version))
    return { message: 'This file does not say of which version it is, so it is left as it is.' };
  if (version > newest)
    return {
      message: `A newer edition wrote this job (version ${String(version)}; this one reads up to ${String(newest)}). It is left as it is; open it with the newer edition.`,
    };
  for (let at = version; at < newest; at++) {
    const step = table.get(at);
    if (step === undefined)
      return {
        message: `Jobs of version ${String(version)} were never written; nothing is opened.`,
      };
    now = { ...step(now), version: at + 1 };
  }
  return { job: now };
};
