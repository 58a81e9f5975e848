import type { Range } from '../engine/quantities/range.ts';
import { h, type Element } from '../markup/node.ts';
import { toHtml } from '../markup/to-html.ts';
import { hatch, px, stroke, upright, word } from './range-bar-marks.ts';
import { axisOver, placeOn, type Axis } from './range-axis.ts';

export interface RangeBarRow {
  label: string;
  /** In the unit that `print` expects; both ends finite. */
  range: Range;
  /** Whether it is the part that others stand in for; the first of several is, unless said. */
  old?: boolean | undefined;
}

/** What a limit allows: up to `high`, from `low` on, or what lies between the two. */
export interface RangeBarLimit {
  low?: number | undefined;
  high?: number | undefined;
}

export interface RangeBar {
  /** The quantity, for the accessible name. */
  title: string;
  /** The original first, stand-ins below it; a single row stands for a type. */
  rows: readonly RangeBarRow[];
  limit?: RangeBarLimit | undefined;
  scale: 'log' | 'linear';
  /** A value as people read it, with its unit. */
  print: (value: number) => string;
  /** A value on the axis; with its unit unless given. */
  printTick?: ((value: number) => string) | undefined;
  /** Where several bars must compare: the axis that they share. */
  axis?: Axis | undefined;
  /** Typical values of the others, as small strokes on the axis. */
  others?: readonly number[] | undefined;
  /** Whether all that it draws stands in words in the same row, so that it need not be read out. */
  toldBeside?: boolean | undefined;
}

/** Where things stand in a drawing, in its own units. */
interface Frame {
  left: number;
  top: number;
  bottom: number;
  at: (value: number) => number;
}

const WIDTH = 320;
const RIGHT = 308;
const ROW = 20;
/** Width of a character, about: enough to keep words from running into each other. */
const CHARACTER = 6.2;

/** The scale that shows all of it: a limit of nothing has no place on a logarithmic one. */
export const scaleThatShows = (
  rows: readonly Pick<RangeBarRow, 'range'>[],
  { low, high }: RangeBarLimit = {},
): RangeBar['scale'] =>
  [...rows.map(({ range }) => range.min), low, high].every((end) => end === undefined || end > 0)
    ? 'log'
    : 'linear';

/** The numbers that a bar draws, as one phrase. */
const rangePhrase = (range: Range, print: (value: number) => string): string =>
  range.min === range.max
    ? print(range.typ)
    : `${print(range.min)} to ${print(range.max)}, typically ${print(range.typ)}`;

const limitPhrase = ({ low, high }: RangeBarLimit, print: (value: number) => string): string => {
  if (low !== undefined && high !== undefined) return `allowed ${print(low)} to ${print(high)}`;
  if (high !== undefined) return `allowed up to ${print(high)}`;
  return low === undefined ? '' : `allowed from ${print(low)}`;
};

/** Everything that a range bar shows, in words. */
const rangeBarName = ({ title, rows, limit, print }: RangeBar): string => {
  const parts = rows.map(({ label, range }) => `${label} ${rangePhrase(range, print)}`.trim());
  const allowed = limit ? limitPhrase(limit, print) : '';
  return `${title}: ${[...parts, allowed].filter(Boolean).join('; ')}`;
};

/** A bar from min to max with a tick at typical; a lozenge where there is no width to draw. */
const bar = (range: Range, cls: string, y: number, { at }: Frame): Element[] => {
  const [left, middle, right] = [at(range.min), at(range.typ), at(range.max)];
  if (right - left < 3) {
    return [h('path', { class: cls, d: `M${px(middle)} ${px(y - 6)}l4.5 6l-4.5 6l-4.5-6z` })];
  }
  return [
    h('rect', { class: cls, x: px(left), y: px(y - 3.5), width: px(right - left), height: 7 }),
    upright('rb-typical', middle, y - 7.5, y + 7.5, 2),
  ];
};

/** A word at a place on the axis, kept inside the drawing: where it starts, and how it is set. */
const placed = (text: string, x: number): { start: number; anchor: string } => {
  const width = text.length * CHARACTER;
  if (x + width / 2 > WIDTH) return { start: x - width, anchor: 'end' };
  if (x - width / 2 < 0) return { start: x, anchor: 'start' };
  return { start: x - width / 2, anchor: 'middle' };
};

/** Upright strokes at every tick, and words at those that have room. */
const axisMarks = (axis: Axis, frame: Frame, print: (value: number) => string): Element[] => {
  let free = -Infinity;
  const words = axis.ticks.flatMap((tick) => {
    const text = print(tick);
    const x = frame.at(tick);
    const { start, anchor } = placed(text, x);
    if (start < free) return [];
    free = start + text.length * CHARACTER + 8;
    return [word(text, x, frame.bottom + 15, anchor)];
  });
  const strokes = axis.ticks.map((tick) => `M${px(frame.at(tick))} ${frame.top}V${frame.bottom}`);
  const rule = `M${frame.left} ${frame.bottom}H${RIGHT}`;
  return [stroke('rb-axis', rule + strokes.join('')), ...words];
};

const limitMarks = (
  { low, high }: RangeBarLimit,
  { left, top, bottom, at }: Frame,
  print: RangeBar['print'],
): Element[] => {
  // Words of two limits that stand close together are set outwards.
  const close = low !== undefined && high !== undefined && at(high) - at(low) < 70;
  const mark = (value: number, outwards: string): Element[] => {
    const text = print(value);
    const x = at(value);
    return [
      upright('rb-limit', x, top - 3, bottom, 1.5),
      word(text, x, top - 6, close ? outwards : placed(text, x).anchor, 'rb-limit-word'),
    ];
  };
  return [
    ...(low === undefined ? [] : [...hatch(left, at(low), top, bottom), ...mark(low, 'end')]),
    ...(high === undefined ? [] : [...hatch(at(high), RIGHT, top, bottom), ...mark(high, 'start')]),
  ];
};

const otherMarks = (others: readonly number[], { at, bottom }: Frame): Element[] => {
  // Whole px, each counted from the one before: a page of a type has some hundreds of them.
  const places = [...new Set(others.map((value) => Math.round(at(value))))].toSorted(
    (a, b) => a - b,
  );
  const [first] = places;
  if (first === undefined) return [];
  const steps = places.slice(1).map((x, i) => `m${x - (places[i] ?? first)}-4v4`);
  return [stroke('rb-others', [`M${first} ${bottom - 4}v4`, ...steps].join(''))];
};

/**
 * The site's own mark: every row a bar from min to max with a tick at typical, on one axis; the
 * limit as an upright line, its unfavourable side hatched. Presentation attributes and classes
 * only, so that it passes a policy without inline styles.
 */
export const rangeBar = (drawing: RangeBar): Element => {
  const { rows, limit, scale, print, printTick = print, others = [] } = drawing;
  const limits = [limit?.low, limit?.high].filter((value) => value !== undefined);
  const axis =
    drawing.axis ??
    axisOver([...rows.flatMap(({ range }) => [range.min, range.typ, range.max]), ...limits], scale);
  const left = rows.some(({ label }) => label !== '') ? 84 : 12;
  const top = limits.length > 0 ? 20 : 2;
  const bottom = top + rows.length * ROW;
  const frame: Frame = {
    left,
    top,
    bottom,
    // Whole steps of the drawing: nobody sees a tenth of one, and a page of many bars weighs less.
    at: (value) => Math.round(left + placeOn(axis, value) * (RIGHT - left)),
  };
  const bars = rows.flatMap(({ label, range, old }, i) => {
    const y = top + i * ROW + ROW / 2;
    const cls = (old ?? (i === 0 && rows.length > 1)) ? 'rb-old' : 'rb-new';
    return [
      ...(label === '' ? [] : [word(label, 0, y + 4, 'start')]),
      ...bar(range, cls, y, frame),
    ];
  });
  const height = bottom + 18;
  return h(
    'svg',
    {
      class: 'range-bar',
      ...(drawing.toldBeside === true
        ? { 'aria-hidden': 'true' }
        : { role: 'img', 'aria-label': rangeBarName(drawing) }),
      width: WIDTH,
      height,
      viewBox: `0 0 ${WIDTH} ${height}`,
    },
    axisMarks(axis, frame, printTick),
    otherMarks(others, frame),
    limit ? limitMarks(limit, frame, print) : [],
    bars,
  );
};

/** A range bar as the text of an SVG. */
export const rangeBarSvg = (drawing: RangeBar): string => toHtml(rangeBar(drawing));

/** The bar alone in whole pixels, for a table cell that says the ends beside it; `name` says what the tick shows. */
export const rangeBarCell = (range: Range, axis: Axis, name: string): string => {
  const at = (value: number): number => Math.round(1 + placeOn(axis, value) * 118);
  const [left, middle, right] = [at(range.min), at(range.typ), at(range.max)];
  const drawn =
    right - left < 2
      ? [h('path', { class: 'rb-new', d: `M${px(middle)} 3l3 4l-3 4l-3-4z` })]
      : [
          stroke('rb-new', `M${px(left)} 7H${px(right)}`, 5),
          upright('rb-typical', middle, 1, 13, 2),
        ];
  return toHtml(
    h(
      'svg',
      {
        class: 'range-bar',
        role: 'img',
        'aria-label': name,
        width: 120,
        height: 14,
        viewBox: '0 0 120 14',
      },
      stroke('rb-axis', 'M1 7H119'),
      drawn,
    ),
  );
};
