import { link } from '../components/link.ts';
import type { Catalogue, Habit } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { valueText } from '../reading/colours/results.ts';
import { readColourRow, type RowReading } from '../reading/colours/row.ts';
import { emptyState, searchOf } from '../reading/colours/state.ts';

/** Parts with so many colours that are offered. */
const MOST_PARTS = 6;

const partLine = (
  catalogue: Catalogue,
  { layout, readings: [best] }: RowReading,
  colours: readonly string[],
  habit: Habit | undefined,
): { score: number; line: Markup } => {
  const state = { ...emptyState(catalogue.markings, layout.id), marks: colours };
  const marking = best.colours;
  return {
    score: { sure: 2, likely: 1, possible: 0 }[best.sure],
    line: h(
      'li',
      {},
      link(`/read/colours/${searchOf(state)}`, state.form.name),
      ': ',
      valueText(best, habit),
      marking === undefined ? '' : h('small', { class: 'quiet' }, ` ${marking.name}`),
    ),
  };
};

/** What colours in a row say on each kind of part that has as many of them, the surest first. */
export const colourAnswer = (
  catalogue: Catalogue,
  colours: readonly string[],
  habit?: Habit,
): Markup | undefined => {
  const lines = readColourRow(catalogue, colours)
    .map((one) => partLine(catalogue, one, colours, habit))
    .toSorted((a, b) => b.score - a.score)
    .slice(0, MOST_PARTS)
    .map(({ line }) => line);
  return lines.length === 0
    ? undefined
    : h(
        'section',
        { class: 'answer-part' },
        h('h2', {}, 'As colours'),
        h('ul', { class: 'plain-list' }, ...lines),
      );
};
