import { h, type Element } from '../markup/node.ts';
import type { VerdictRuleRow } from '../schemas/positions.ts';

export type VerdictId = VerdictRuleRow['verdict'];

/** The words of the four verdicts. */
export const verdictWords: Record<VerdictId, string> = {
  fits: 'fits',
  'fits-if': 'fits if …',
  stopgap: 'stopgap',
  'keep-out': 'keep out',
};

const outline = { fill: 'none', stroke: 'currentColor', 'stroke-width': 1.5 };

const shapes: Record<VerdictId, Element[]> = {
  fits: [h('circle', { cx: 8, cy: 8, r: 6.5, fill: 'currentColor' })],
  'fits-if': [
    h('circle', { cx: 8, cy: 8, r: 6.25, ...outline }),
    h('path', { d: 'M8 1.5a6.5 6.5 0 0 0 0 13z', fill: 'currentColor' }),
  ],
  stopgap: [h('path', { d: 'M8 2L14.5 13.75H1.5z', ...outline, 'stroke-linejoin': 'round' })],
  'keep-out': [h('path', { d: 'M2 2H14V14H2zM2.5 13.5L13.5 2.5', ...outline })],
};

/** A verdict: its shape, and its word or the words given in its place. */
export const verdictMark = (verdict: VerdictId, words = verdictWords[verdict]): Element =>
  h(
    'span',
    { class: `verdict verdict-${verdict}` },
    h('svg', { viewBox: '0 0 16 16', 'aria-hidden': 'true' }, shapes[verdict]),
    words,
  );
