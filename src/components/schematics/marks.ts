import { h, type Element } from '../../markup/node.ts';
import { circle, outline, scaled, strokes, type Point } from './geometry.ts';

export type Anchor = 'start' | 'middle' | 'end';

/** Strokes of one weight in the ink of the page. */
export const stroke = (d: string): Element => h('path', { d });

/** The same, filled: arrow heads and joints. */
export const filled = (d: string): Element => h('path', { d, fill: 'currentColor' });

/** Words at a place; what follows `_` stands lower, as in an equation. */
export const label = (text: string, [x, y]: Point, anchor: Anchor = 'middle'): Element => {
  const [word = '', sub] = text.split('_');
  return h(
    'text',
    {
      x: scaled(x),
      y: scaled(y),
      'text-anchor': anchor === 'start' ? undefined : anchor,
      fill: 'currentColor',
      stroke: 'none',
    },
    word,
    sub !== undefined && h('tspan', { dy: 3, 'font-size': 8.5 }, sub),
  );
};

/** Words where there are any. */
const named = (name: string, place: Point, anchor?: Anchor): Element[] =>
  name === '' ? [] : [label(name, place, anchor)];

/** A wire from place to place. */
export const wire = (...points: Point[]): Element[] => [stroke(strokes(...points))];

/** What moves with something else, without a current. */
export const linked = (...points: Point[]): Element[] => [
  h('path', { d: strokes(...points), 'stroke-dasharray': '3 3' }),
];

/** Joints of wires. */
export const joints = (...points: Point[]): Element[] => [
  filled(points.map((point) => circle(point, 0.24)).join('')),
];

/** The common return. */
export const ground = (...points: Point[]): Element[] =>
  points.map(([x, y]) =>
    stroke(
      strokes([x, y], [x, y + 0.7]) +
        strokes([x - 1, y + 0.7], [x + 1, y + 0.7]) +
        strokes([x - 0.6, y + 1.1], [x + 0.6, y + 1.1]) +
        strokes([x - 0.2, y + 1.5], [x + 0.2, y + 1.5]),
    ),
  );

/** A metal case. */
export const chassis = ([x, y]: Point): Element[] => [
  stroke(
    strokes([x, y], [x, y + 0.7]) +
      strokes([x - 1, y + 0.7], [x + 1, y + 0.7]) +
      [-1, 0, 1].map((to) => strokes([x + to, y + 0.7], [x + to - 0.5, y + 1.5])).join(''),
  ),
];

const TERMINAL = 0.3;

/** A connection to the left of what is drawn, with its name on its left. */
export const input = (name: string, [x, y]: Point, to: Point): Element[] => [
  stroke(circle([x, y], TERMINAL) + strokes([x + TERMINAL, y], to)),
  ...named(name, [x, y - 0.8]),
];

/** A connection to the right of what is drawn. */
export const output = (name: string, from: Point, [x, y]: Point): Element[] => [
  stroke(strokes(from, [x - TERMINAL, y]) + circle([x, y], TERMINAL)),
  ...named(name, [x, y - 0.8]),
];

/** A supply above what is drawn. */
export const supply = (name: string, [x, y]: Point): Element[] => [
  stroke(circle([x, y - TERMINAL], TERMINAL)),
  label(name, [x + 0.8, y + 0.1], 'start'),
];

/** A connection below or within, its name beside it. */
export const tap = (name: string, [x, y]: Point, anchor: Anchor): Element[] => [
  stroke(circle([x, y], TERMINAL)),
  ...named(name, [x + (anchor === 'end' ? -0.7 : 0.7), y + 0.4], anchor),
];

/** Something that is not drawn in full, by its name; lines are parted by `/`. */
export const box = (name: string, [x, y]: Point, width: number, height: number): Element[] => {
  const lines = name.split('/');
  const first = y + height / 2 + 0.4 - (lines.length - 1) * 0.65;
  return [
    stroke(outline([x, y], [x + width, y], [x + width, y + height], [x, y + height])),
    ...lines.map((line, i) => label(line, [x + width / 2, first + i * 1.3])),
  ];
};
