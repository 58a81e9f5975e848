import { h, type Element } from '../../markup/node.ts';
import { circle, outline, strokes, type Point } from './geometry.ts';
import { joints, label, stroke, wire } from './marks.ts';
import { arrow } from './parts.ts';

const plus = ([x, y]: Point): string =>
  strokes([x - 0.4, y], [x + 0.4, y]) + strokes([x, y - 0.4], [x, y + 0.4]);

const minus = ([x, y]: Point): string => strokes([x - 0.4, y], [x + 0.4, y]);

/**
 * An operational amplifier: inputs one step above and one below the given place, output four steps
 * to the right.
 */
export const opAmp = ([x, y]: Point, upper: '+' | '-', name?: string): Element[] => {
  const [top, bottom] = upper === '+' ? [plus, minus] : [minus, plus];
  return [
    stroke(
      outline([x, y - 2.3], [x + 4, y], [x, y + 2.3]) +
        top([x + 0.8, y - 1]) +
        bottom([x + 0.8, y + 1]),
    ),
    ...(name === undefined ? [] : [label(name, [x + 2.1, y + 0.4])]),
  ];
};

/** A follower: its input at the given place, its output six steps right and one down. */
export const follower = ([x, y]: Point): Element[] => [
  ...opAmp([x, y + 1], '+'),
  ...wire([x + 4, y + 1], [x + 6, y + 1]),
  ...wire([x + 5, y + 1], [x + 5, y + 4.4], [x - 1.4, y + 4.4], [x - 1.4, y + 2], [x, y + 2]),
  ...joints([x + 5, y + 1]),
];

/** An amplifier of any kind, three steps long; with a ring at its output where it inverts. */
export const amplifier = ([x, y]: Point, inverts = false): Element[] => [
  stroke(
    outline([x, y - 1.7], [x + (inverts ? 2.6 : 3), y], [x, y + 1.7]) +
      (inverts ? circle([x + 2.8, y], 0.2) : ''),
  ),
];

/**
 * A transistor: base at the given place, collector two steps right and two up, emitter two down;
 * the other way up for pnp.
 */
export const transistor = ([x, y]: Point, kind: 'npn' | 'pnp' = 'npn'): Element[] => {
  const bar = x + 0.9;
  const middle: Point = [bar, y + 0.5];
  const leg = [x + 2, y + 1.5] as const;
  const legs =
    strokes([x, y], [bar, y]) +
    strokes([bar, y - 1.2], [bar, y + 1.2]) +
    strokes([bar, y - 0.5], [x + 2, y - 1.5], [x + 2, y - 2]) +
    strokes([x + 2, y + 1.5], [x + 2, y + 2]);
  if (kind === 'npn') return [stroke(legs), ...arrow(middle, leg)];
  return [stroke(legs + strokes(middle, leg)), ...arrow([x + 2, y - 1.5], [bar + 0.1, y - 0.6])];
};

/** A grid: dashes across a valve. */
const grid = ([x, y]: Point, width: number): Element =>
  h('path', { d: strokes([x, y], [x + width, y]), 'stroke-dasharray': '5 3.5' });

/**
 * A triode: grid at the given place, anode two and a half steps right and three up, cathode three
 * down.
 */
export const triode = ([x, y]: Point): Element[] => {
  const middle = x + 2.5;
  return [
    stroke(
      circle([middle, y], 2) +
        strokes([middle, y - 3], [middle, y - 1]) +
        strokes([middle - 1, y - 1], [middle + 1, y - 1]) +
        strokes([x, y], [middle - 1.3, y]) +
        strokes([middle - 0.9, y + 1.2], [middle - 0.9, y + 0.9], [middle + 0.9, y + 0.9]) +
        strokes([middle + 0.9, y + 0.9], [middle + 0.9, y + 1.2]) +
        strokes([middle, y + 0.9], [middle, y + 3]),
    ),
    grid([middle - 1.3, y], 2.6),
  ];
};

/**
 * A valve with a screen grid, which leaves to the right: five steps right and 0.8 up of the first
 * grid, the given place; anode two and a half steps right and 3.4 up, cathode 2.6 down.
 */
export const tetrode = ([x, y]: Point): Element[] => {
  const middle = x + 2.5;
  return [
    stroke(
      circle([middle, y - 0.4], 2.2) +
        strokes([middle, y - 3.4], [middle, y - 1.6]) +
        strokes([middle - 1, y - 1.6], [middle + 1, y - 1.6]) +
        strokes([x, y], [middle - 1.3, y]) +
        strokes([middle + 1.3, y - 0.8], [x + 5, y - 0.8]) +
        strokes([middle - 0.9, y + 1.1], [middle - 0.9, y + 0.8], [middle + 0.9, y + 0.8]) +
        strokes([middle + 0.9, y + 0.8], [middle + 0.9, y + 1.1]) +
        strokes([middle, y + 0.8], [middle, y + 2.6]),
    ),
    grid([middle - 1.3, y], 2.6),
    grid([middle - 1.3, y - 0.8], 2.6),
  ];
};
