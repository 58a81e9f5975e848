import { h, type Element } from '../markup/node.ts';
import { plotScale } from './plot-scale.ts';

/** How many of many fall into equal steps. */
export interface Histogram {
  title: string;
  from: number;
  to: number;
  counts: readonly number[];
  /** A value as people read it, with its unit. */
  print: (value: number) => string;
}

const WIDTH = 640;
const HEIGHT = 150;
const BOTTOM = 122;
const SIDE = 40;

/** The same numbers as a table that opens beside it. */
const histogramTable = ({
  from,
  counts,
  print,
  step,
}: Pick<Histogram, 'from' | 'counts' | 'print'> & { step: number }): Element =>
  h(
    'details',
    { class: 'plot-table' },
    h('summary', {}, 'The same as a table'),
    h(
      'div',
      { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': 'The bars as a table' },
      h(
        'table',
        {},
        h(
          'thead',
          {},
          h('tr', {}, h('th', { scope: 'col' }, 'From'), h('th', { scope: 'col' }, 'How many')),
        ),
        h(
          'tbody',
          {},
          ...counts.map((count, index) =>
            h(
              'tr',
              {},
              h('th', { scope: 'row' }, print(from + index * step)),
              h('td', {}, String(count)),
            ),
          ),
        ),
      ),
    ),
  );

/** Bars of how often each step of a range came up. */
export const histogramMarkup = ({ title, from, to, counts, print }: Histogram): Element => {
  const x = plotScale('linear', [from, to], [SIDE, WIDTH - SIDE], { count: 5 });
  const most = Math.max(...counts, 1);
  const step = (to - from) / counts.length;
  const bars = counts.map((count, index) => {
    const left = x.at(from + index * step);
    const right = x.at(from + (index + 1) * step);
    const height = (count / most) * (BOTTOM - 8);
    return `M${left.toFixed(1)} ${BOTTOM}v${(-height).toFixed(1)}H${right.toFixed(1)}V${BOTTOM}z`;
  });
  return h(
    'figure',
    { class: 'plot' },
    h('figcaption', {}, title),
    h(
      'svg',
      {
        viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
        role: 'img',
        'aria-label': `${title}: from ${print(from)} to ${print(to)}`,
      },
      h('path', { class: 'plot-bars', d: bars.join('') }),
      h('path', { class: 'plot-frame', d: `M${SIDE} ${BOTTOM}H${WIDTH - SIDE}` }),
      ...x.ticks.map((tick) =>
        h(
          'text',
          { x: x.at(tick).toFixed(1), y: BOTTOM + 18, 'text-anchor': 'middle' },
          print(tick),
        ),
      ),
    ),
    histogramTable({ from, counts, print, step }),
  );
};
