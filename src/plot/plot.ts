import { h, type Element, type Markup } from '../markup/node.ts';
import { plotTable } from './plot-table.ts';
import { plotScale, type PlotScale } from './plot-scale.ts';
import { bandBetween, lineThrough, type Place } from './outline.ts';
import type { Plot, PlotCurve, PlotPoint } from './plot-parts.ts';

const WIDTH = 640;
const HEIGHT = 340;
const EDGE = { left: 98, right: 14, top: 16, bottom: 56 };
/** Width of a character on a phone, where words are largest: keeps them from running together. */
const CHARACTER = 11;
/** Room beside the last word, for one of wide letters. */
const BESIDE = 6;

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

/** Ends of the horizontal axis: where curves begin and end, and a little further than any dot. */
const ends = ({ x, curves }: Plot): [number, number] => {
  const places = curves.flatMap(({ points }) => points.map((point) => point.x));
  return curves.every(({ as }) => as === 'dots')
    ? padded(places, x.scale)
    : [Math.min(...places), Math.max(...places)];
};

const axisMarks = (x: PlotScale, y: PlotScale, plot: Plot): Element[] => {
  const bottom = HEIGHT - EDGE.bottom;
  const right = WIDTH - EDGE.right;
  const upright = x.ticks.map((tick) => `M${px(x.at(tick))} ${EDGE.top}V${bottom}`);
  const level = y.ticks.map((tick) => `M${EDGE.left} ${px(y.at(tick))}H${right}`);
  let free = -Infinity;
  const words = x.ticks.flatMap((tick) => {
    const text = plot.x.print(tick);
    const middle = Math.min(x.at(tick), WIDTH - BESIDE - (text.length * CHARACTER) / 2);
    const start = middle - (text.length * CHARACTER) / 2;
    if (start < free) return [];
    free = start + text.length * CHARACTER + 6;
    return [h('text', { x: px(middle), y: bottom + 20, 'text-anchor': 'middle' }, text)];
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

/** Outline of a dot about a place: round, square, three-cornered, so that colour need not tell. */
const DOTS = [
  'm-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0',
  'm-3.5 -3.5h7v7h-7z',
  'm0 -5l4.5 8h-9z',
] as const;

const dotOutline = (index: number): string => DOTS[index % DOTS.length] ?? DOTS[0];

const dotMarks = ({ points }: PlotCurve, index: number, x: PlotScale, y: PlotScale): Element[] => {
  const outlines = points.map(
    (point) => `M${px(x.at(point.x))} ${px(y.at(point.y))}${dotOutline(index)}`,
  );
  return [h('path', { class: 'plot-dots', d: outlines.join('') })];
};

const curveMarks = (curve: PlotCurve, index: number, x: PlotScale, y: PlotScale): Element[] => {
  const { points, as } = curve;
  if (as === 'dots') return dotMarks(curve, index, x, y);
  const wide = points.some(({ low, high }) => low !== high);
  const places = (end: (point: PlotPoint) => number): Place[] =>
    points.map((point) => [x.at(point.x), y.at(end(point))]);
  const band = bandBetween(
    places(({ low }) => low),
    places(({ high }) => high),
  );
  const typical = lineThrough(
    places((point) => point.y),
    as ?? 'line',
  );
  return [
    ...(wide ? [h('path', { class: 'plot-band', d: band })] : []),
    h('path', { class: `plot-curve plot-curve-${index + 1}`, d: typical }),
  ];
};

/** Height of a word at a limit, about: one that is nearer to the next line stands below its own. */
const WORD = 20;

const limitMarks = ({ limits }: Plot, y: PlotScale): Element[] =>
  limits.flatMap(({ label, value }) => {
    const height = y.at(value);
    const isCrowded = limits.some((other) => {
      const above = height - y.at(other.value);
      return above > 0 && above < WORD;
    });
    // Between its own line and the axis there is no room for a word: it goes to the other end.
    const isLow = isCrowded && height + WORD > HEIGHT - EDGE.bottom;
    const below = !isLow && (isCrowded || height < EDGE.top + WORD);
    return [
      h('path', { class: 'plot-limit', d: `M${EDGE.left} ${px(height)}H${WIDTH - EDGE.right}` }),
      h(
        'text',
        {
          class: 'plot-limit-word',
          x: isLow ? EDGE.left + 4 : WIDTH - EDGE.right,
          y: px(below ? height + 17 : height - 5),
          'text-anchor': isLow ? 'start' : 'end',
        },
        label,
      ),
    ];
  });

const pointMarks = ({ points }: Plot, x: PlotScale, y: PlotScale): Element[] =>
  points.map((point) =>
    h('circle', { class: 'plot-point', cx: px(x.at(point.x)), cy: px(y.at(point.y)), r: 5 }),
  );

/** What the drawing says, in a sentence. */
const nameOf = ({ title, x, y, points, limits }: Plot): string => {
  const own = points.map((point) => `${y.print(point.y)} at ${x.print(point.x)}`);
  const held = limits.map(({ label, value }) => `${label} at ${y.print(value)}`);
  const marked = own.length === 0 ? title : `${title}: your point ${own.join(', ')}`;
  return [marked, ...held].join('; ');
};

const keyOf = ({ curves }: Plot): Markup | undefined =>
  curves.length < 2
    ? undefined
    : h(
        'ul',
        { class: 'plot-key' },
        ...curves.map(({ label, as }, index) =>
          h(
            'li',
            {},
            h(
              'svg',
              { viewBox: '0 -2 32 12', width: 32, height: 12, 'aria-hidden': 'true' },
              as === 'dots'
                ? h('path', { class: 'plot-dots', d: `M16 4${dotOutline(index)}` })
                : h('path', { class: `plot-curve plot-curve-${index + 1}`, d: 'M0 4H32' }),
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
  const x = plotScale(plot.x.scale, ends(plot), [EDGE.left, WIDTH - EDGE.right], {
    isTime: plot.x.isTime === true,
  });
  const y = plotScale(
    plot.y.scale,
    padded(heights(plot), plot.y.scale),
    [HEIGHT - EDGE.bottom, EDGE.top],
    { count: 5, isTime: plot.y.isTime === true },
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
    plotTable(plot),
  );
};
