import type { Adjustment } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { benchInput, benchTick } from './bench-input.ts';

const button = (move: string, word: string, what: string): Element =>
  h(
    'button',
    {
      type: 'button',
      class: 'screen-only',
      'data-adjust': move,
      'aria-label': `${word}: ${what || 'adjustment'}`,
    },
    word,
  );

/** The adjustments of a board in their order, each with its readings. */
export const adjustmentsMarkup = (all: readonly Adjustment[]): Element =>
  h(
    'div',
    { class: 'bench-adjustments' },
    h(
      'ol',
      {},
      all.map(({ id, what, before, after, done }) =>
        h(
          'li',
          { 'data-adjustment': id },
          h(
            'div',
            { class: 'bench-fields' },
            benchInput('What', what, { 'data-bench': 'what' }),
            benchInput('Before', before, { 'data-bench': 'before' }),
            benchInput('After', after, { 'data-bench': 'after' }),
            benchTick(done),
          ),
          h(
            'p',
            { class: 'actions screen-only' },
            button('earlier', 'Earlier', what),
            button('later', 'Later', what),
          ),
        ),
      ),
    ),
    h(
      'p',
      { class: 'screen-only' },
      h('button', { type: 'button', 'data-adjust': 'add' }, 'Add an adjustment'),
    ),
  );
