import { stripeOf } from '../cut.ts';
import { leadLength, runDown, wire } from '../lead.ts';
import { ellipse, rectangle, type Point } from '../path.ts';
import { coloured, paint, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** How far from the middle a lead may leave the disc, as a share of its radius. */
const FARTHEST = 0.66;
/** Share of the height that a coloured top takes. */
const TOP = 0.24;

/** A lead that leaves the body at a place and is bent out to its hole, where it is wider. */
const bentLead = (spec: PartSpec, [x, y]: Point, hole: number, end: number): Shape =>
  x === hole
    ? wire(spec, [x, y], [x, end])
    : wire(spec, [x, y], [x, -Math.abs(hole - x) - 0.2], [hole, 0], [hole, end]);

const front = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const middle = -Math.max(spec.height, spec.length + 1) + radius;
  const half = (spec.pitch ?? Math.min(5, spec.length * 0.7)) / 2;
  const leaves = half <= radius * FARTHEST ? half : radius * FARTHEST;
  const edge = (x: number): number => middle + Math.sqrt(Math.max(0, radius ** 2 - x ** 2)) - 0.12;
  const end = leadLength(spec.length);
  const coats = [-leaves, leaves].map((x) => runDown(spec, x, edge, Math.min(0.9, radius / 3)));
  const body = ellipse([0, middle], radius);
  return {
    name: 'front',
    from: -radius,
    shapes: [
      ...[-1, 1].map((side) => bentLead(spec, [side * leaves, edge(leaves)], side * half, end)),
      ...coats.map((coat) => solid(coat, 'body')),
      solid(body, 'body'),
      ...coats.map((coat) => paint(coat, 'body')),
      ...(spec.tip === undefined
        ? []
        : [
            coloured(
              stripeOf(body, middle - radius, middle - radius + spec.length * TOP),
              spec.tip,
              'tip',
              'ink',
            ),
          ]),
    ],
    print: {
      at: [0, middle + (spec.tip === undefined ? 0 : radius * 0.12)],
      width: spec.length * 0.82,
      height: spec.length * (spec.tip === undefined ? 0.56 : 0.5),
    },
  };
};

const side = (spec: PartSpec): View => {
  const { length, width } = spec;
  const top = -Math.max(spec.height, length + 1);
  const off = Math.max(0, width * 0.22);
  const end = leadLength(length);
  return {
    name: 'side',
    from: -width / 2,
    shapes: [
      ...[-off, off].map((x) => wire(spec, [x, top + length - 1], [x, end])),
      solid(rectangle([-width / 2, top], width, length, width * 0.48), 'body'),
    ],
  };
};

/** A round flat disc, its leads side by side. */
export const disc: Form = {
  name: 'disc',
  round: 'facing',
  views: (spec) => [front(spec), side(spec)],
};
