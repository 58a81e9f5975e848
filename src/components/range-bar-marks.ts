import { h, type Element } from '../markup/node.ts';

/** A length in a drawing as it is written, to a tenth: finer than a screen shows. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);

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

/**
 * Long enough to lie over any bar: twice it covers a width and a height together, of which bars have
 * 300 at most. On paper what is cut off of it must not reach beyond the sheet either.
 */
const ACROSS = 200;

/** Thin strokes, 6 apart along a level, when they stand at 45 degrees. */
const STROKES = '.75 3.49';

/**
 * Strokes at 45 degrees over a rectangle; none where it has no width. They are the dashes of one
 * broad stroke, which a drawing within the drawing cuts off, so that all are told in a few words.
 */
export const hatch = (left: number, right: number, top: number, bottom: number): Element[] =>
  right <= left
    ? []
    : [
        h(
          'svg',
          {
            class: 'rb-hatch',
            x: px(left),
            y: px(top),
            width: px(right - left),
            height: px(bottom - top),
          },
          h('path', {
            'stroke-width': 2 * ACROSS,
            'stroke-dasharray': STROKES,
            d: `M0 0L${ACROSS} ${ACROSS}`,
          }),
        ),
      ];
