import type { Range } from '../engine/quantities/range.ts';
import { axisOver, placeOn } from './range-axis.ts';
import type { Axis } from './range-axis.ts';

export interface RangeBarRow {
  label: string;
  /** In the unit that `print` expects; both ends finite. */
  range: Range;
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
  /** Where several bars must compare: the axis that they share. */
  axis?: Axis | undefined;
}

const WIDTH = 320;
const RIGHT = 308;
const ROW = 20;
const TEXT = 11;

const escape = (text: string): string =>
  text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

const px = (value: number): string => String(Math.round(value * 10) / 10);

const line = (cls: string, x1: number, y1: number, x2: number, y2: number, width = 1): string =>
  `<path class="${cls}" stroke-width="${width}" fill="none" d="M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}"/>`;

const word = (text: string, x: number, y: number, anchor: string, cls = ''): string =>
  `<text${cls && ` class="${cls}"`} x="${px(x)}" y="${px(y)}" font-size="${TEXT}" text-anchor="${anchor}">${escape(text)}</text>`;

/** Strokes at 45 degrees over a rectangle, cut off at its sides. */
const hatch = (left: number, right: number, top: number, bottom: number): string => {
  const height = bottom - top;
  const strokes: string[] = [];
  for (let start = left - height + 3; start < right; start += 6) {
    const from = Math.max(start, left);
    const to = Math.min(start + height, right);
    if (to > from) {
      strokes.push(
        `M${px(from)} ${px(bottom - from + start)}L${px(to)} ${px(bottom - to + start)}`,
      );
    }
  }
  return `<path class="rb-hatch" stroke-width=".75" fill="none" d="${strokes.join('')}"/>`;
};

/** The numbers that a bar draws, as one phrase. */
export const rangePhrase = (range: Range, print: (value: number) => string): string =>
  range.min === range.max
    ? print(range.typ)
    : `${print(range.min)} to ${print(range.max)}, typically ${print(range.typ)}`;

const limitPhrase = ({ low, high }: RangeBarLimit, print: (value: number) => string): string => {
  if (low !== undefined && high !== undefined) return `allowed ${print(low)} to ${print(high)}`;
  if (high !== undefined) return `allowed up to ${print(high)}`;
  return low === undefined ? '' : `allowed from ${print(low)}`;
};

/** Everything that a range bar shows, in words. */
export const rangeBarName = ({ title, rows, limit, print }: RangeBar): string => {
  const parts = rows.map(({ label, range }) => `${label} ${rangePhrase(range, print)}`.trim());
  const allowed = limit ? limitPhrase(limit, print) : '';
  return `${title}: ${[...parts, allowed].filter(Boolean).join('; ')}`;
};

/** A bar from min to max with a tick at typical; open for an original, filled for what stands in. */
const bar = (range: Range, cls: string, y: number, at: (value: number) => number): string => {
  const left = at(range.min);
  const width = Math.max(at(range.max) - left, 2);
  return (
    `<rect class="${cls}" x="${px(left)}" y="${px(y - 3.5)}" width="${px(width)}" height="7"/>` +
    line('rb-typical', at(range.typ), y - 7.5, at(range.typ), y + 7.5, 2)
  );
};

const limitMarks = (
  limit: RangeBarLimit,
  left: number,
  top: number,
  bottom: number,
  at: (value: number) => number,
  print: (value: number) => string,
): string => {
  const mark = (value: number): string =>
    line('rb-limit', at(value), top - 3, at(value), bottom, 1.5) +
    word(
      print(value),
      at(value),
      top - 6,
      at(value) > RIGHT - 30 ? 'end' : at(value) < left + 30 ? 'start' : 'middle',
      'rb-limit-word',
    );
  const { low, high } = limit;
  return (
    (low === undefined ? '' : hatch(left, at(low), top, bottom) + mark(low)) +
    (high === undefined ? '' : hatch(at(high), RIGHT, top, bottom) + mark(high))
  );
};

/**
 * The site's own mark, as the text of an SVG: every row a bar from min to max with a tick at
 * typical, on one axis; the limit as an upright line, its unfavourable side hatched.
 * Presentation attributes and classes only, so that it passes a policy without inline styles.
 */
export const rangeBarSvg = (drawing: RangeBar): string => {
  const { rows, limit, scale, print } = drawing;
  const limits = [limit?.low, limit?.high].filter((value) => value !== undefined);
  const axis =
    drawing.axis ??
    axisOver([...rows.flatMap(({ range }) => [range.min, range.typ, range.max]), ...limits], scale);
  const labelled = rows.some(({ label }) => label !== '');
  const left = labelled ? 84 : 12;
  const at = (value: number): number => left + placeOn(axis, value) * (RIGHT - left);
  const top = limits.length > 0 ? 20 : 2;
  const bottom = top + rows.length * ROW;
  const height = bottom + 18;
  const ticks = axis.ticks.map(
    (tick, i) =>
      line('rb-axis', at(tick), top, at(tick), bottom + 3) +
      word(
        print(tick),
        at(tick),
        bottom + 14,
        at(tick) > RIGHT - 16 ? 'end' : i === 0 && at(tick) < left + 16 ? 'start' : 'middle',
      ),
  );
  const bars = rows.map(({ label, range }, i) => {
    const y = top + i * ROW + ROW / 2;
    const cls = i === 0 && rows.length > 1 ? 'rb-old' : 'rb-new';
    return (label && word(label, 0, y + 4, 'start')) + bar(range, cls, y, at);
  });
  return (
    `<svg class="range-bar" role="img" aria-label="${escape(rangeBarName(drawing))}" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}">` +
    line('rb-axis', left, bottom, RIGHT, bottom) +
    ticks.join('') +
    (limit ? limitMarks(limit, left, top, bottom, at, print) : '') +
    bars.join('') +
    '</svg>'
  );
};

/** The bar alone, for a table cell that says the numbers beside it. */
export const rangeBarCell = (range: Range, axis: Axis): string => {
  const at = (value: number): number => 1 + placeOn(axis, value) * 94;
  return (
    '<svg class="range-bar" aria-hidden="true" width="96" height="14" viewBox="0 0 96 14">' +
    '<path class="rb-axis" d="M1 7H95"/>' +
    `<path class="rb-new" stroke-width="5" d="M${px(at(range.min))} 7H${px(Math.max(at(range.max), at(range.min) + 1))}"/>` +
    `<path class="rb-typical" stroke-width="2" d="M${px(at(range.typ))} 1V13"/></svg>`
  );
};
