import { h, type Element } from '../markup/node.ts';
import { printMoment } from '../text/moment.ts';

/** A labelled field of the bench sheet. */
export const benchInput = (
  label: string,
  value: string,
  data: Readonly<Record<string, string>>,
): Element =>
  h(
    'label',
    { class: 'bench-field' },
    label,
    h('input', { ...data, value: value || undefined, autocomplete: 'off' }),
  );

/** The box that is ticked once something is done. */
export const benchTick = (done: boolean, word = 'Done'): Element =>
  h(
    'label',
    { class: 'bench-tick' },
    h('input', { type: 'checkbox', 'data-bench': 'done', checked: done }),
    ` ${word}`,
  );

/** When something was ticked; changes with the tick. */
export const tickedAt = (at: string): Element =>
  h(
    'p',
    { class: 'small quiet bench-time', 'data-live': 'time' },
    at === '' ? '' : `Ticked ${printMoment(at)} UTC`,
  );
