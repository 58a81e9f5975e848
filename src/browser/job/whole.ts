import type { Job } from '../../job/index.ts';
import { byId } from '../page/by-id.ts';
import { change, current, listenForChange } from './state.ts';

/** What holds for the whole board: guideline, spares, conditions. */

const form = byId('whole-board', HTMLFormElement);

type Whole = Job['whole'];
const KEYS = ['guideline', 'spareShare', 'spareLeast'] as const;

const textOf = (whole: Whole, name: string): string => {
  const key = KEYS.find((one) => one === name);
  return key === undefined ? (whole.conditions[name] ?? '') : whole[key];
};

const written = (whole: Whole, name: string, text: string): Whole => {
  const key = KEYS.find((one) => one === name);
  if (key !== undefined) return { ...whole, [key]: text };
  const others = Object.entries(whole.conditions).filter(([id]) => id !== name);
  const said = text.trim() === '' ? [] : [[name, text] as const];
  return { ...whole, conditions: Object.fromEntries([...others, ...said]) };
};

/** Makes the form of the whole board work. */
export const startWhole = (): void => {
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
  form.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    const { name, value } = target;
    const job = current();
    change({ ...job, whole: written(job.whole, name, value) }, `whole ${name}`);
  });
  listenForChange(() => {
    for (const field of form.elements) {
      if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) continue;
      const text = textOf(current().whole, field.name);
      if (field.value !== text) field.value = text;
    }
  });
};
