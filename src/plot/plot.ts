import { area, line } from 'd3-shape';
import { h, type Element, type Markup } from '../markup/node.ts';
import { plotScale, type PlotScale } from './plot-scale.ts';

/** A value with what it may be instead, in the unit that the axis prints. */
export interface PlotPoint {
  x: number;
  y: number;
  low: number;
  high: number;
}

export interface PlotAxis {
  label: string;
  scale: 'log' | 'linear';
  /** A value as people read it, with its unit. */
  print: (value: number) => string;
}

/** Curves over one axis, all of one unit. */
export interface Plot {
  title: string;
  x: PlotAxis;
  y: PlotAxis;
  curves: readonly { label: string; points: readonly PlotPoint[] }[];
  /** The reader's own point on each curve. */
  points: readonly { x: number; y: number }[];
  limits: readonly { label: string; value: number }[];
}

const WIDTH = 640;
const HEIGHT = 330;
const EDGE = { left: 74, right: 14, top: 16, bottom: 46 };
/** Width of a character, about: enough to keep words from running into each other. */
const CHARACTER = 7;

const px = (value: number): string => value.toFixed(1);

/** Every value that has to be on the vertical axis. */
const heights = ({ curves, points, limits }: Plot): number[] => [
  ...curves.flatMap((curve) => curve.points.flatMap(({ low, y, high }) => [low, y, high])),
  ...points.map(({ y }) => y),
  ...limits.map(({ value }) => value),
];

/** Room above and below, so that a level curve does not run along the frame. */
const padded = (values: readonly number[], scale: 'log' | 'linear'): [number, number] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (scale === 'log') return low === high ? [low / 3, high * 3] : [low / 1.15, high * 1.15];
  if (low === high) return low === 0 ? [0, 1] : [Math.min(0, 2 * low), Math.max(0, 2 * low)];
  const room = (high - low) * 0.04;
  return [
    low >= 0 && low < room * 5 ? 0 : low - room,
    high <= 0 && high > -room * 5 ? 0 : high + room,
  ];
};

const axisMarks = (x: PlotScale, y: PlotScale, plot: Plot): Element[] => {
  const bottom = HEIGHT - EDGE.bottom;
  const right = WIDTH - EDGE.right;
  const upright = x.ticks.map((tick) => `M${px(x.at(tick))} ${EDGE.top}V${bottom}`);
  const level = y.ticks.map((tick) => `M${EDGE.left} ${px(y.at(tick))}H${right}`);
  let free = -Infinity;
  const words = x.ticks.flatMap((tick) => {
    const text = plot.x.print(tick);
    const middle = Math.min(x.at(tick), WIDTH - (text.length * CHARACTER) / 2);
    const start = middle - (text.length * CHARACTER) / 2;
    if (start < free) return [];
    free = start + text.length * CHARACTER + 6;
    return [h('text', { x: px(middle), y: bottom + 18, 'text-anchor': 'middle' }, text)];
  });
  return [
    h('path', { class: 'plot-grid', d: [...upright, ...level].join('') }),
    h('path', { class: 'plot-frame', d: `M${EDGE.left} ${EDGE.top}V${bottom}H${right}` }),
    ...words,
    ...y.ticks.map((tick) =>
      h(
        'text',
        { x: EDGE.left - 8, y: px(y.at(tick) + 4), 'text-anchor': 'end' },
        plot.y.print(tick),
      ),
    ),
    h(
      'text',
      {
        class: 'plot-label',
        x: px((EDGE.left + right) / 2),
        y: HEIGHT - 6,
        'text-anchor': 'middle',
      },
      plot.x.label,
    ),
  ];
};

const curveMarks = (
  { points }: Plot['curves'][number],
  index: number,
  x: PlotScale,
  y: PlotScale,
): Element[] => {
  const wide = points.some(({ low, high }) => low !== high);
  const band = area<PlotPoint>()
    .x((point) => x.at(point.x))
    .y0((point) => y.at(point.low))
    .y1((point) => y.at(point.high))
    .digits(1)(points);
  const typical = line<PlotPoint>()
    .x((point) => x.at(point.x))
    .y((point) => y.at(point.y))
    .digits(1)(points);
  return [
    ...(wide && band !== null ? [h('path', { class: 'plot-band', d: band })] : []),
    h('path', { class: `plot-curve plot-curve-${index + 1}`, d: typical ?? '' }),
  ];
};

const limitMarks = ({ limits }: Plot, y: PlotScale): Element[] =>
  limits.flatMap(({ label, value }) => [
    h('path', { class: 'plot-limit', d: `M${EDGE.left} ${px(y.at(value))}H${WIDTH - EDGE.right}` }),
    h(
      'text',
      {
        class: 'plot-limit-word',
        x: WIDTH - EDGE.right,
        y: px(y.at(value) - 5),
        'text-anchor': 'end',
      },
      label,
    ),
  ]);

const pointMarks = ({ points }: Plot, x: PlotScale, y: PlotScale): Element[] =>
  points.map((point) =>
    h('circle', { class: 'plot-point', cx: px(x.at(point.x)), cy: px(y.at(point.y)), r: 5 }),
  );

/** What the drawing says, in a sentence. */
const nameOf = ({ title, x, y, points, limits }: Plot): string => {
  const own = points.map((point) => `${y.print(point.y)} at ${x.print(point.x)}`);
  const held = limits.map(({ label, value }) => `${label} at ${y.print(value)}`);
  return [`${title}: your point ${own.join(', ')}`, ...held].join('; ');
};

/** Rows of the table that stands beside a plot: one curve point in so many. */
const TABLE_STEP = 5;

const spanText = ({ low, y, high }: PlotPoint, print: (value: number) => string): string =>
  low === high ? print(y) : `${print(low)} to ${print(high)}`;

const tableOf = ({ x, y, curves }: Plot): Element => {
  const [first] = curves;
  const rows = (first?.points ?? []).filter((_, index) => index % TABLE_STEP === 0);
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
          ...rows.map((row) =>
            h(
              'tr',
              {},
              h('th', { scope: 'row' }, x.print(row.x)),
              ...curves.map(({ points }) => {
                const point = points.find((one) => one.x === row.x);
                return h('td', {}, point === undefined ? 'not defined' : spanText(point, y.print));
              }),
            ),
          ),
        ),
      ),
    ),
  );
};

const keyOf = ({ curves }: Plot): Markup | undefined =>
  curves.length < 2
    ? undefined
    : h(
        'ul',
        { class: 'plot-key' },
        ...curves.map(({ label }, index) =>
          h(
            'li',
            {},
            h(
              'svg',
              { viewBox: '0 0 32 8', width: 32, height: 8, 'aria-hidden': 'true' },
              h('path', { class: `plot-curve plot-curve-${index + 1}`, d: 'M0 4H32' }),
            ),
            label,
          ),
        ),
      );

/**
 * Curves on a grid, each with a band for its spread, the reader's point on it and the limits that
 * it is held against; a table of the same numbers goes with it. Classes and attributes only.
 */
export const plotMarkup = (plot: Plot): Element => {
  const places = plot.curves.flatMap(({ points }) => points.map(({ x }) => x));
  const x = plotScale(
    plot.x.scale,
    [Math.min(...places), Math.max(...places)],
    [EDGE.left, WIDTH - EDGE.right],
  );
  const y = plotScale(
    plot.y.scale,
    padded(heights(plot), plot.y.scale),
    [HEIGHT - EDGE.bottom, EDGE.top],
    5,
  );
  return h(
    'figure',
    { class: 'plot' },
    h('figcaption', {}, plot.title),
    keyOf(plot),
    h(
      'svg',
      { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', 'aria-label': nameOf(plot) },
      ...axisMarks(x, y, plot),
      ...plot.curves.flatMap((curve, index) => curveMarks(curve, index, x, y)),
      ...limitMarks(plot, y),
      ...pointMarks(plot, x, y),
    ),
    tableOf(plot),
  );
};
