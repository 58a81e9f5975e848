import {
  emptyCheck,
  emptyFitted,
  emptyPreset,
  moved,
  splitLine,
  type Adjustment,
  type Fitted,
  type Preset,
} from '../../job/index.ts';
import { change, changeLines, current } from './state.ts';

/** What is typed, ticked and pressed on the bench sheet, written into the job. */

type Field = HTMLInputElement | HTMLSelectElement;

/** Whether an event is about something to write in or to choose from. */
export const isField = (target: EventTarget | null): target is Field =>
  target instanceof HTMLInputElement || target instanceof HTMLSelectElement;

const isTicked = (field: Field): boolean => field instanceof HTMLInputElement && field.checked;
const isTick = ({ dataset }: Field): boolean => dataset['bench'] === 'done';
const now = (field: Field): string => (isTicked(field) ? new Date().toISOString() : '');

const isPresetKey = (key: string): key is keyof Preset => Object.hasOwn(emptyPreset(), key);

const presetWith = (preset: Preset | null, key: string, value: string): Preset => {
  const before = preset ?? emptyPreset();
  if (key === 'use') return { ...before, use: value === 'divider' ? 'divider' : 'rheostat' };
  return isPresetKey(key) ? { ...before, [key]: value } : before;
};

const withReading = (fitted: Fitted, { dataset, value }: Field): Fitted => {
  const { id = '', time } = dataset;
  const key = time === 'before' ? 'found' : 'measured';
  const others = Object.fromEntries(Object.entries(fitted[key]).filter(([name]) => name !== id));
  return { ...fitted, [key]: value.trim() === '' ? others : { ...others, [id]: value } };
};

const fittedWith = (fitted: Fitted, field: Field, action: string): Fitted => {
  const { bench, preset } = field.dataset;
  if (preset !== undefined) {
    return { ...fitted, preset: presetWith(fitted.preset, preset, field.value) };
  }
  if (isTick(field)) {
    const done = isTicked(field);
    return { ...fitted, done, did: done ? action : '', at: now(field) };
  }
  if (bench === 'reading') return withReading(fitted, field);
  return bench === 'before' || bench === 'after' || bench === 'note'
    ? { ...fitted, [bench]: field.value }
    : fitted;
};

const writeCheck = (field: Field, id: string): void => {
  const job = current();
  const before = job.checks[id] ?? emptyCheck();
  const { bench } = field.dataset;
  const after = isTick(field)
    ? { ...before, done: isTicked(field), at: now(field) }
    : bench === 'reading' || bench === 'note'
      ? { ...before, [bench]: field.value }
      : before;
  const cell = isTick(field) ? '' : `check ${id} ${bench ?? ''}`;
  change({ ...job, checks: { ...job.checks, [id]: after } }, cell);
};

/** All adjustments as they are now: the job's, then those that only the sheet offers so far. */
const allAdjustments = (offered: readonly Adjustment[]): Adjustment[] => {
  const { adjustments } = current();
  const known = new Set(adjustments.map(({ id }) => id));
  return [...adjustments, ...offered.filter(({ id }) => !known.has(id))];
};

const writeAdjustment = (field: Field, id: string, offered: readonly Adjustment[]): void => {
  const { bench } = field.dataset;
  const edited = (one: Adjustment): Adjustment => {
    if (isTick(field)) return { ...one, done: isTicked(field), at: now(field) };
    return bench === 'what' || bench === 'before' || bench === 'after'
      ? { ...one, [bench]: field.value }
      : one;
  };
  const adjustments = allAdjustments(offered).map((one) => (one.id === id ? edited(one) : one));
  const cell = isTick(field) ? '' : `adjustment ${id} ${bench ?? ''}`;
  change({ ...current(), adjustments }, cell);
};

/** Writes one field into the job. */
export const writeField = (field: Field, offered: readonly Adjustment[]): void => {
  const { adjustment } = field.closest<HTMLElement>('[data-adjustment]')?.dataset ?? {};
  const place = field.closest<HTMLElement>('.bench-step')?.dataset ?? {};
  const { line, designator = '', check, action = '' } = place;
  if (adjustment !== undefined) writeAdjustment(field, adjustment, offered);
  else if (check !== undefined) writeCheck(field, check);
  else if (line !== undefined) {
    const { bench = '', preset = '', id = '', time = '' } = field.dataset;
    changeLines(
      new Set([line]),
      (one) => ({
        ...one,
        fitted: {
          ...one.fitted,
          [designator]: fittedWith(one.fitted[designator] ?? emptyFitted(), field, action),
        },
      }),
      isTick(field) ? '' : [line, designator, bench, preset, id, time].join(' '),
    );
  }
};

/** Moves an adjustment, or adds one; the rest of the order stays. */
export const arrange = (how: string, id: string, offered: readonly Adjustment[]): void => {
  const all = allAdjustments(offered);
  const added = { id: crypto.randomUUID(), what: '', before: '', after: '', done: false, at: '' };
  const adjustments = how === 'add' ? [...all, added] : moved(all, id, how === 'earlier' ? -1 : 1);
  change({ ...current(), adjustments });
};

/** Makes a designator a line of its own, to be judged by its own readings. */
export const splitOff = (line: string, designator: string): void => {
  const job = current();
  change({ ...job, lines: splitLine(job.lines, line, designator, crypto.randomUUID()) });
};
