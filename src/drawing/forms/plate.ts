import { leadLength, wire } from '../lead.ts';
import { rectangle } from '../path.ts';
import { coloured, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Share of the height that a coloured top takes. */
const TOP = 0.22;
/** The plate is held so far off the board by its leads, mm. */
const OFF = 0.8;

const front = (spec: PartSpec): View => {
  const { length, height, tip } = spec;
  const half = Math.min((spec.pitch ?? 2.5) / 2, length * 0.42);
  const tall = height - OFF;
  const corner = 0.4;
  return {
    name: 'front',
    from: -length / 2,
    shapes: [
      ...[-half, half].map((x) => wire(spec, [x, -OFF], [x, leadLength(height)])),
      solid(rectangle([-length / 2, -height], length, tall, corner), 'body'),
      ...(tip === undefined
        ? []
        : [
            coloured(
              rectangle([-length / 2, -height], length, tall * TOP, [corner, corner, 0, 0]),
              tip,
              'tip',
              'ink',
            ),
          ]),
    ],
    print: {
      at: [0, -OFF - (tall * (tip === undefined ? 1 : 1 - TOP)) / 2],
      width: length * 0.92,
      height: tall * (tip === undefined ? 0.86 : 0.7),
    },
  };
};

const side = (spec: PartSpec): View => {
  const { width, height } = spec;
  return {
    name: 'side',
    from: -width / 2,
    shapes: [
      wire(spec, [0, -OFF], [0, leadLength(height)]),
      solid(rectangle([-width / 2, -height], width, height - OFF, width * 0.4), 'body'),
    ],
  };
};

/** A small ceramic plate under thin lacquer, often with a coloured top edge. */
export const plate: Form = { name: 'plate', views: (spec) => [front(spec), side(spec)] };
