import type { Sheet, SheetStep } from '../../job/index.ts';
import type { Check, Fitted } from '../../job/model.ts';
import { cautionList } from '../../job-view/caution-list.ts';
import { checkMarkup, stepMarkup } from '../../job-view/sheet-view.ts';
import { toDom } from '../../markup/to-dom.ts';
import { countOf } from '../../text/words.ts';
import { byId } from '../by-id.ts';
import { change, changeLines, current } from './state.ts';

/** The bench sheet: one part at a time on a tablet, all of them on paper. */

const steps = byId('bench-steps', HTMLElement);
const checks = byId('bench-checks', HTMLElement);
const whole = byId('bench-whole', HTMLInputElement);
let sheet: Sheet | undefined;
let at = 0;

const UNTOUCHED: Fitted = { done: false, before: '', after: '', note: '', at: '' };
const UNCHECKED: Check = { done: false, reading: '', note: '', at: '' };

const drawSteps = (all: boolean): void => {
  const every: readonly SheetStep[] = sheet?.steps ?? [];
  at = Math.max(0, Math.min(at, every.length - 1));
  const wanted = all ? every : every.slice(at, at + 1);
  steps.replaceChildren(...wanted.map((step) => toDom(stepMarkup(step))));
  const done = every.filter(({ fitted }) => fitted.done).length;
  byId('bench-said', HTMLElement).textContent =
    every.length === 0
      ? 'Nothing to do at the bench yet.'
      : `${all ? countOf(every.length, 'part') : `Part ${String(at + 1)} of ${String(every.length)}`}, ${String(done)} done.`;
  byId('bench-before', HTMLButtonElement).disabled = all || at === 0;
  byId('bench-after', HTMLButtonElement).disabled = all || at >= every.length - 1;
};

const typesIn = (place: HTMLElement): boolean =>
  document.activeElement instanceof HTMLInputElement &&
  document.activeElement.type !== 'checkbox' &&
  place.contains(document.activeElement);

/** Shows a sheet; what is being typed in stays as it is. */
export const showSheet = (made: Sheet): void => {
  sheet = made;
  if (!typesIn(steps)) drawSteps(whole.checked);
  if (!typesIn(checks))
    checks.replaceChildren(...made.checks.map((one) => toDom(checkMarkup(one))));
  byId('bench-cautions', HTMLElement).replaceChildren(
    ...cautionList(made.cautions).map((one) => toDom(one)),
  );
};

const written = <T extends Fitted | Check>(
  before: T,
  { dataset, type, value, checked }: HTMLInputElement,
): T => {
  const key = dataset.bench ?? '';
  if (type !== 'checkbox') return key in before ? { ...before, [key]: value } : before;
  return { ...before, done: checked, at: checked ? new Date().toISOString() : '' };
};

const write = ({ target }: Event): void => {
  if (!(target instanceof HTMLInputElement) || target.dataset.bench === undefined) return;
  const place = target.closest<HTMLElement>('.bench-step');
  const { line = '', designator = '', check } = place?.dataset ?? {};
  const cell =
    target.type === 'checkbox'
      ? ''
      : `${line} ${designator} ${check ?? ''} ${target.dataset.bench}`;
  if (check !== undefined) {
    const job = current();
    const before = job.checks[check] ?? UNCHECKED;
    change({ ...job, checks: { ...job.checks, [check]: written(before, target) } }, cell);
    return;
  }
  changeLines(
    new Set([line]),
    (one) => ({
      ...one,
      fitted: { ...one.fitted, [designator]: written(one.fitted[designator] ?? UNTOUCHED, target) },
    }),
    cell,
  );
};

/** Makes the bench sheet work. */
export const startSheet = (): void => {
  steps.addEventListener('input', write);
  checks.addEventListener('input', write);
  const go = (by: number) => (): void => {
    at += by;
    drawSteps(false);
  };
  byId('bench-before', HTMLButtonElement).addEventListener('click', go(-1));
  byId('bench-after', HTMLButtonElement).addEventListener('click', go(1));
  whole.addEventListener('change', () => {
    drawSteps(whole.checked);
  });
  addEventListener('beforeprint', () => {
    drawSteps(true);
  });
  addEventListener('afterprint', () => {
    drawSteps(whole.checked);
  });
};
