import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';

/** A length in a drawing, to a tenth: finer than a screen shows. */
const tenths = (value: number): number => Math.round(value * 10) / 10;

/** A length in a drawing as it is written, to a tenth. */
export const px = (value: number): string => String(tenths(value));

/** Strokes along a path of SVG. */
export const stroke = (cls: string, d: string, width?: number): Element =>
  h('path', { class: cls, 'stroke-width': width, d });

/** An upright stroke. */
export const upright = (
  cls: string,
  x: number,
  top: number,
  bottom: number,
  width: number,
): Element => stroke(cls, `M${px(x)} ${px(top)}V${px(bottom)}`, width);

/** Words in a drawing; `anchor` is start, middle or end. */
export const word = (text: string, x: number, y: number, anchor: string, cls?: string): Element =>
  h(
    'text',
    { class: cls, x: px(x), y: px(y), 'text-anchor': anchor === 'start' ? undefined : anchor },
    text,
  );

/** Strokes at 45 degrees over a rectangle, cut off at its sides; each begins where the last ended. */
export const hatch = (left: number, right: number, top: number, bottom: number): Element => {
  const height = bottom - top;
  const strokes: string[] = [];
  let [x, y] = [0, 0];
  for (let start = left - height + 3; start < right; start += 6) {
    const from = Math.max(start, left);
    const rise = tenths(Math.min(start + height, right) - from);
    if (rise <= 0) continue;
    // Steps from stroke to stroke are alike, which packs far better than places do.
    const [across, down] = [tenths(from - x), tenths(bottom - from + start - y)];
    strokes.push(`m${across} ${down}l${rise} ${-rise}`);
    [x, y] = [x + across + rise, y + down - rise];
  }
  return stroke('rb-hatch', strokes.join(''), 0.75);
};
