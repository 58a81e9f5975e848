import { ellipse, line, polygon, rectangle, segment, type Path, type Point } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Ears and lugs below the can, mm. */
const EAR = { wide: 3.2, long: 4.5 } as const;
const LUG = { wide: 2.4, long: 9 } as const;

/** A lug with an eye for the wires. */
const lug = (x: number): Shape[] => [
  solid(rectangle([x - LUG.wide / 2, -0.3], LUG.wide, LUG.long, [0, 0, 1.2, 1.2]), 'metal'),
  solid(ellipse([x, LUG.long - 2.2], 0.6, 1), 'paper'),
];

/** An ear that is twisted behind the chassis. */
const ear = (x: number): Shape =>
  solid(
    polygon(
      [x - EAR.wide / 2, -0.3],
      [x + EAR.wide / 2, -0.3],
      [x + EAR.wide / 2, EAR.long],
      [x + EAR.wide / 4, EAR.long + 0.8],
      [x - EAR.wide / 4, EAR.long + 0.8],
      [x - EAR.wide / 2, EAR.long],
    ),
    'metal',
  );

const sections = (spec: PartSpec): number => spec.pins ?? 3;

const front = (spec: PartSpec): View => {
  const { length: width, height } = spec;
  const count = sections(spec);
  const reach = width * 0.26;
  const xs = Array.from({ length: count }, (_, i) =>
    count === 1 ? 0 : -reach + (2 * reach * i) / (count - 1),
  );
  const edge = width / 2;
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...xs.flatMap(lug),
      ...[-edge + EAR.wide / 2 + 0.4, edge - EAR.wide / 2 - 0.4].map(ear),
      solid(rectangle([-edge, -height], width, height, [1.6, 1.6, 0.4, 0.4]), 'body'),
      // The rim in which the base is rolled.
      inner(line([-edge, -2.2], [edge, -2.2])),
      inner(line([-edge, -3.2], [edge, -3.2])),
    ],
    print: { at: [0, -height * 0.54], width: width * 0.88, height: height * 0.8 },
  };
};

/** The signs that tell the sections apart, in the order in which they are punched here. */
const SIGNS: readonly ((at: Point, size: number) => Path)[] = [
  ([x, y], size) => segment([x, y + size * 0.4], size, size, Math.PI, 2 * Math.PI),
  ([x, y], size) => rectangle([x - size * 0.8, y - size * 0.8], size * 1.6, size * 1.6),
  ([x, y], size) =>
    polygon([x, y - size], [x + size, y + size * 0.75], [x - size, y + size * 0.75]),
  () => [],
];

/** From below: lugs in a ring, each with its sign; ears round the rim are the common minus. */
const below = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const middle: Point = [0, -radius];
  const at = (angle: number, out: number): Point => [
    radius * out * Math.cos(angle),
    -radius + radius * out * Math.sin(angle),
  ];
  const count = sections(spec);
  const angles = Array.from({ length: count }, (_, i) => -Math.PI / 2 + (i * 2 * Math.PI) / count);
  const ears = [1, 3, 5, 7].map((eighth) => (eighth * Math.PI) / 4);
  const size = radius * 0.1;
  return {
    name: 'below',
    from: -radius,
    shapes: [
      solid(ellipse(middle, radius), 'metal'),
      solid(ellipse(middle, radius * 0.82), { colour: 'brown' }),
      ...ears.map((angle) => {
        const [x, y] = at(angle, 0.9);
        return solid(rectangle([x - 1.5, y - 0.5], 3, 1), 'metal');
      }),
      ...angles.flatMap((angle, i): Shape[] => {
        const [x, y] = at(angle, 0.4);
        const sign = SIGNS[i % SIGNS.length]?.(at(angle, 0.64), size) ?? [];
        return [
          solid(rectangle([x - 1.2, y - 0.4], 2.4, 0.8), 'metal'),
          ...(sign.length === 0 ? [] : [solid(sign, 'paper')]),
        ];
      }),
    ],
    notes: [{ text: 'case −', at: [0, 0], side: 'below' }],
  };
};

/** A can of several sections on one case, held by ears that are twisted behind the chassis. */
export const multiCan: Form = {
  name: 'twist-lock can',
  round: 'upright',
  views: (spec) => [front(spec), below(spec)],
};
