import { ellipse, line, polygon, rectangle } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Height of a terminal on its insulator, mm. */
const TERMINAL = 9;

/** A solder eye on an insulator. */
const terminal = (x: number, top: number): Shape[] => [
  solid(rectangle([x - 0.9, top - TERMINAL], 1.8, 4.5, [0.9, 0.9, 0, 0]), 'metal'),
  solid(ellipse([x, top - TERMINAL + 1.3], 0.5), 'paper'),
  solid(polygon([x - 1.4, top - 5], [x + 1.4, top - 5], [x + 2.6, top], [x - 2.6, top]), 'paper'),
  inner(line([x - 2, top - 2.5], [x + 2, top - 2.5])),
];

const face = (spec: PartSpec, name: 'front' | 'side', width: number, terminals: number[]): View => {
  const edge = width / 2;
  const top = TERMINAL - spec.height;
  return {
    name,
    from: -edge,
    shapes: [
      ...terminals.flatMap((x) => terminal(x, top)),
      solid(rectangle([-edge, top], width, -top, Math.min(1.2, width * 0.06)), 'body'),
      inner(line([-edge, top + 1.6], [edge, top + 1.6])),
      inner(line([-edge, -1.6], [edge, -1.6])),
    ],
    ...(name === 'front'
      ? { print: { at: [0, top / 2] as const, width: width * 0.88, height: -top * 0.74 } }
      : {}),
  };
};

/** A soldered rectangular can with its terminals on insulators. */
export const oilCan: Form = {
  name: 'soldered can',
  views: (spec) => {
    const half = (spec.pitch ?? spec.length * 0.5) / 2;
    return [face(spec, 'front', spec.length, [-half, half]), face(spec, 'side', spec.width, [0])];
  },
};
