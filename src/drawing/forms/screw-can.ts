import { ellipse, line, rectangle } from '../path.ts';
import { inner, paint, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Height of a terminal above its deck, mm. */
const POST = 6;

const pitchOf = (spec: PartSpec): number => spec.pitch ?? spec.length * 0.36;

const terminal = (x: number, deck: number): Shape[] => [
  solid(rectangle([x - 4, deck - POST], 8, POST, 0.5), 'metal'),
  solid(rectangle([x - 2.4, deck - POST - 3], 4.8, 3, [1.2, 1.2, 0, 0]), 'metal'),
];

const front = (spec: PartSpec): View => {
  const { length: width, height } = spec;
  const half = pitchOf(spec) / 2;
  const deck = POST + 3 - height;
  return {
    name: 'front',
    from: -width / 2,
    shapes: [
      ...[-half, half].flatMap((x) => terminal(x, deck)),
      solid(rectangle([-width / 2, deck], width, -deck, [0.8, 0.8, 2.5, 2.5]), 'body'),
      inner(line([-width / 2, deck + 2.6], [width / 2, deck + 2.6])),
    ],
    print: { at: [0, deck / 2], width: width * 0.84, height: -deck * 0.7 },
    notes:
      spec.polarity === undefined
        ? []
        : [
            { text: '+', at: [-half, -height], side: 'above' },
            { text: '−', at: [half, -height], side: 'above' },
          ],
  };
};

const screw = (x: number, y: number): Shape[] => [
  solid(ellipse([x, y], 4), 'metal'),
  solid(ellipse([x, y], 2.4), 'metal'),
  { path: line([x - 1.5, y], [x + 1.5, y]), line: 'ink' },
];

const above = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const half = pitchOf(spec) / 2;
  return {
    name: 'above',
    from: -radius,
    shapes: [
      solid(ellipse([0, -radius], radius), 'body'),
      solid(ellipse([0, -radius], radius - 1.8), 'dark'),
      ...[-half, half].flatMap((x) => screw(x, -radius)),
      // The plug that gives way when the can boils.
      paint(ellipse([0, -radius * 0.45], 1.6), 'metal'),
    ],
  };
};

/** A large can with two screws on its deck. */
export const screwCan: Form = {
  name: 'can with screw terminals',
  round: 'upright',
  views: (spec) => [front(spec), above(spec)],
};
