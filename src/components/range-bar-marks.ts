import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';

const TEXT = 11;

/** A length in a drawing, to a tenth: finer than a screen shows. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);

/** Strokes along a path of SVG. */
export const stroke = (cls: string, d: string, width?: number): Element =>
  h('path', { class: cls, fill: 'none', 'stroke-width': width, d });

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
  h('text', { class: cls, x: px(x), y: px(y), 'font-size': TEXT, 'text-anchor': anchor }, text);

/** Strokes at 45 degrees over a rectangle, cut off at its sides. */
export const hatch = (left: number, right: number, top: number, bottom: number): Element => {
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
  return stroke('rb-hatch', strokes.join(''), 0.75);
};
