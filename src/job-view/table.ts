import { h, type Element, type Markup } from '../markup/node.ts';

/**
 * From so many rows on their columns are alike in width, whatever stands in them: then a row that is
 * out of sight need not be laid out.
 */
const MANY_ROWS = 200;

/** A table that scrolls sideways by itself and becomes cards where it is narrow. */
export const cardTable = (
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly Markup[])[],
): Element =>
  h(
    'div',
    { class: 'table-scroll', role: 'region', 'aria-label': caption, tabindex: 0 },
    h(
      'table',
      { class: rows.length < MANY_ROWS ? 'cards' : 'cards many-rows' },
      h('caption', { class: 'hidden-text' }, caption),
      h(
        'thead',
        {},
        h(
          'tr',
          {},
          heads.map((head) => h('th', { scope: 'col' }, head)),
        ),
      ),
      h(
        'tbody',
        {},
        rows.map((cells) =>
          h(
            'tr',
            {},
            cells.map((cell, index) => h('td', { 'data-label': heads[index] }, cell)),
          ),
        ),
      ),
    ),
  );
