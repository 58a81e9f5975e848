import { ellipse, line, rectangle } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** A push-on tab, mm. */
const TAB = { wide: 6.3, high: 8 } as const;

const pitchOf = (spec: PartSpec): number => spec.pitch ?? spec.length * 0.42;

const tab = (x: number, deck: number): Shape[] => [
  solid(
    rectangle([x - TAB.wide / 2, deck - TAB.high], TAB.wide, TAB.high + 0.2, [1.2, 1.2, 0, 0]),
    'metal',
  ),
  solid(ellipse([x, deck - TAB.high + 3], 0.8), 'paper'),
];

const front = (spec: PartSpec): View => {
  const { length: width, height } = spec;
  const deck = TAB.high - height;
  const half = pitchOf(spec) / 2;
  return {
    name: 'front',
    from: -width / 2,
    shapes: [
      ...[-half, half].flatMap((x) => tab(x, deck)),
      solid(rectangle([-width / 2, deck], width, -deck, [0.8, 0.8, 1.2, 1.2]), 'body'),
      inner(line([-width / 2, deck + 2], [width / 2, deck + 2])),
      solid(rectangle([-3, 0], 6, Math.min(8, height * 0.16), 0.3), 'metal'),
    ],
    print: { at: [0, deck / 2], width: width * 0.86, height: -deck * 0.76 },
  };
};

/** A cylinder with push-on tabs above and a stud below, as motor capacitors come. */
export const tabbedCan: Form = {
  name: 'can with tabs',
  round: 'upright',
  views: (spec) => [front(spec)],
};
