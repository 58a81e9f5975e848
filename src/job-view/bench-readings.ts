import type { BenchField, SheetStep, Time } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';

const TIMES: readonly Time[] = ['before', 'after'];

const inputOf = ({ row, time, text }: BenchField, designator: string): Element => {
  const own = {
    'data-bench': 'reading',
    'data-id': row.id,
    'data-time': time,
    'aria-label': [row.label, time, designator].filter((word) => word !== '').join(', '),
  };
  if (row.choices.length === 0) {
    return h('input', { ...own, value: text || undefined, autocomplete: 'off' });
  }
  // What an older list offered stays to be seen.
  const choices = ['', ...row.choices, ...(row.choices.includes(text) ? [] : [text])];
  return h(
    'select',
    own,
    [...new Set(choices)].map((choice) =>
      h('option', { value: choice, selected: choice === text }, choice),
    ),
  );
};

/** What there is to say of what a meter shows instead of a number. */
const ASIDE: Readonly<Record<BenchField['display'], string>> = {
  '': '',
  over: ': more than the meter shows; kept as you typed it',
  more: '',
  none: '; kept as you typed it',
};

/** How a reading is understood, or why it is not; changes while one types. */
const saidOf = ({ row, time, text, read, display, fault, outside }: BenchField): Element => {
  const isPlain = row.unit === '' || read.replaceAll('\u00A0', ' ') === text.trim();
  return h(
    'span',
    {
      class: fault + outside === '' ? 'small quiet bench-read' : 'small bench-read fault',
      'data-live': `${row.id} ${time}`,
    },
    fault !== ''
      ? sentence(fault)
      : outside !== ''
        ? sentence(outside)
        : isPlain || read === ''
          ? ''
          : `= ${read}${ASIDE[display]}`,
  );
};

/** What is read of one part, before and after the work on it, a line for each reading. */
export const readingsMarkup = ({ fields, designator }: SheetStep): Element | undefined => {
  if (fields.length === 0) return undefined;
  const lines = [...Map.groupBy(fields, ({ row }) => row.id).values()];
  const times = TIMES.filter((time) => fields.some((field) => field.time === time));
  return h(
    'table',
    { class: 'bench-readings' },
    h('caption', { class: 'hidden-text' }, `Readings of ${designator || 'this part'}`),
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        h('th', { scope: 'col' }, 'Reading'),
        times.map((time) => h('th', { scope: 'col' }, capital(time))),
      ),
    ),
    h(
      'tbody',
      {},
      lines.map((line) =>
        h(
          'tr',
          {},
          h(
            'th',
            { scope: 'row' },
            line[0]?.row.label ?? '',
            h('span', { class: 'small quiet screen-only' }, ` ${line[0]?.row.hint ?? ''}`),
          ),
          times.map((time) => {
            const field = line.find((one) => one.time === time);
            return h(
              'td',
              {},
              field === undefined ? '' : [inputOf(field, designator), saidOf(field)],
            );
          }),
        ),
      ),
    ),
  );
};
