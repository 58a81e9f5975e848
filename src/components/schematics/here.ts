import { h, type Element } from '../../markup/node.ts';
import type { Point } from './geometry.ts';
import { joints, wire } from './marks.ts';
import { potentiometer, resistor } from './parts.ts';

/** Resistors and trimmers in question: in the accent of the page, and heavier than all else. */

/** Weight of the body of the part in question: what sees no colour sees this. */
const HEAVY = 2.6;

interface Named {
  name?: string;
  other?: boolean;
}

const asked = (marks: readonly Element[]): Element[] => {
  const [body, ...rest] = marks;
  if (body === undefined) return [];
  const heavy = h('path', { ...body.attributes, 'stroke-width': HEAVY });
  return [h('g', { class: 'here', stroke: 'currentColor' }, [heavy, ...rest])];
};

/** The resistor in question. */
export const theResistor = (a: Point, b: Point, named: Named = {}): Element[] =>
  asked(resistor(a, b, { name: 'R', ...named }));

/** The trimmer in question, its slider from a place beside its middle. */
export const theTrimmer = (a: Point, b: Point, slider: Point, named: Named = {}): Element[] =>
  asked(potentiometer(a, b, slider, named));

/** The trimmer in question as a rheostat that stands: its slider to the right, joined to its lower end. */
export const theRheostat = ([x, y]: Point, [, end]: Point, named: Named = {}): Element[] => {
  const middle = (y + end) / 2;
  return [
    ...theTrimmer([x, y], [x, end], [x + 2.2, middle], { other: true, ...named }),
    ...wire([x + 2.2, middle], [x + 2.2, end], [x, end]),
    ...joints([x, end]),
  ];
};
