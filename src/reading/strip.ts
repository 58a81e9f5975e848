import { h, type Markup } from '../markup/node.ts';
import type { Stretch } from './stretches.ts';

/** One character, with what it was taken for where that is another. */
const cell = (stretch: Stretch, index: number): Markup => {
  const character = stretch.text.charAt(index);
  const assumed =
    stretch.kind === 'taken'
      ? stretch.evidence.assumed?.find(({ at }) => at === stretch.at + index)
      : undefined;
  return h(
    'span',
    { class: assumed === undefined ? 'cell' : `cell cell-${assumed.why}` },
    h('span', { class: 'printed' }, character),
    assumed !== undefined && h('span', { class: 'assumed' }, assumed.as),
  );
};

const cells = (stretch: Stretch): Markup[] =>
  Array.from({ length: stretch.text.length }, (_, index) => cell(stretch, index));

const LINE_END = /\n/;

/** A stretch with its number under it; what ends a line in the marking ends one here. */
const piece = (stretch: Stretch): Markup[] => {
  if (stretch.kind === 'between')
    return [
      h('span', { class: 'stretch stretch-between' }, ...cells(stretch)),
      ...(LINE_END.test(stretch.text) ? [h('span', { class: 'line-end' })] : []),
    ];
  if (stretch.text === '') return [];
  return [
    h(
      'span',
      { class: `stretch stretch-${stretch.kind}` },
      h('span', { class: 'cells' }, ...cells(stretch)),
      h('span', { class: 'number' }, String(stretch.number)),
    ),
  ];
};

/**
 * The marking drawn as characters with a numbered mark under each stretch. The table of what each
 * stretch means is its text alternative.
 */
export const stripMarkup = (stretches: readonly Stretch[]): Markup =>
  h('div', { class: 'strip', 'aria-hidden': 'true' }, ...stretches.flatMap(piece));
