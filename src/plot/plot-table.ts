import { h, type Element } from '../markup/node.ts';
import type { Plot, PlotCurve, PlotPoint } from './plot-parts.ts';

/** A table of more rows than this leaves some of them out. */
const MOST_ROWS = 30;
/** Of smooth curves the table has one point in so many. */
const TABLE_STEP = 5;

const spanText = ({ low, y, high }: PlotPoint, print: (value: number) => string): string =>
  low === high ? print(y) : `${print(low)} to ${print(high)}`;

/** Where the rows of the table stand along the horizontal axis. */
const rowPlaces = (curves: readonly PlotCurve[]): number[] => {
  const places = [...new Set(curves.flatMap(({ points }) => points.map(({ x }) => x)))];
  const all = places.toSorted((a, b) => a - b);
  return all.length <= MOST_ROWS || curves.some(({ as }) => as === 'dots')
    ? all
    : all.filter((_, index) => index % TABLE_STEP === 0);
};

const cellText = (
  { points, as }: PlotCurve,
  place: number,
  print: (value: number) => string,
): string => {
  const here = points.filter(({ x }) => x === place).map((point) => spanText(point, print));
  const none = as === 'dots' ? '' : 'not defined';
  return here.length === 0 ? none : here.join(', ');
};

/** The numbers of a plot as a table that opens beside it. */
export const plotTable = ({ x, y, curves }: Plot): Element => {
  return h(
    'details',
    { class: 'plot-table' },
    h('summary', {}, 'The same as a table'),
    h(
      'div',
      { class: 'table-scroll', tabindex: 0, role: 'region', 'aria-label': 'The plot as a table' },
      h(
        'table',
        {},
        h(
          'thead',
          {},
          h(
            'tr',
            {},
            h('th', { scope: 'col' }, x.label),
            ...curves.map(({ label }) => h('th', { scope: 'col' }, label)),
          ),
        ),
        h(
          'tbody',
          {},
          ...rowPlaces(curves).map((place) =>
            h(
              'tr',
              {},
              h('th', { scope: 'row' }, x.print(place)),
              ...curves.map((curve) => h('td', {}, cellText(curve, place, y.print))),
            ),
          ),
        ),
      ),
    ),
  );
};
