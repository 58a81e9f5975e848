import { h, type Markup } from '../markup/node.ts';
import { likelihoodPercent, likelihoodWord } from './phrases.ts';

const LONG = 96;
const HIGH = 8;

/** A likelihood as a word, a bar and per cent. */
export const likelihoodMark = (likelihood: number): Markup =>
  h(
    'span',
    { class: 'likelihood' },
    h('strong', {}, likelihoodWord(likelihood)),
    ' ',
    h(
      'svg',
      { viewBox: `0 0 ${LONG} ${HIGH}`, width: LONG, height: HIGH, 'aria-hidden': 'true' },
      h('rect', { class: 'all', x: 0.5, y: 0.5, width: LONG - 1, height: HIGH - 1 }),
      h('rect', {
        class: 'part-of-all',
        x: 0,
        y: 0,
        width: Math.max(1, Math.round(likelihood * LONG)),
        height: HIGH,
      }),
    ),
    ' ',
    h('span', { class: 'qty' }, likelihoodPercent(likelihood)),
  );
