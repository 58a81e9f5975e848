import type { BadRow } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { countOf, cutTo, sentence } from '../text/words.ts';

/** Rows that stand on the page; all are kept. */
const MOST_SHOWN = 50;
const LONGEST = 200;

/** Rows of tables that made no line, with the reason and what can be done about it. */
export const badRowsMarkup = (rows: readonly BadRow[]): Element[] =>
  rows.length === 0
    ? []
    : [
        h('h3', {}, `${countOf(rows.length, 'row')} of a table not understood`),
        h(
          'ul',
          { class: 'questions' },
          rows
            .slice(0, MOST_SHOWN)
            .map(({ row, cells, reason }, at) =>
              h(
                'li',
                { class: 'question', 'data-bad': at },
                h('p', {}, `Row ${String(row)}: ${sentence(reason)}`),
                h('p', { class: 'small quiet' }, cutTo(cells.join(' | '), LONGEST)),
                h(
                  'p',
                  { class: 'actions' },
                  h('button', { type: 'button', 'data-bad-row': 'keep' }, 'Add it as a note'),
                  h('button', { type: 'button', 'data-bad-row': 'drop' }, 'Leave it out'),
                ),
              ),
            ),
        ),
        ...(rows.length > MOST_SHOWN
          ? [h('p', { class: 'small' }, `${String(rows.length - MOST_SHOWN)} more are kept.`)]
          : []),
      ];
