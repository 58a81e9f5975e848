import { ellipse, rectangle, type Path } from '../path.ts';
import { paint, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { foilNote, lyingLeads, ring, roundEnd } from './tube.ts';

/** A card tube that wax has softened: edges not quite straight, a drip below. */
const tube = (length: number, width: number): Path => {
  const edge = length / 2;
  const sag = Math.min(0.3, width * 0.03);
  const drip = -edge + length * 0.24;
  return [
    ['M', [-edge, -width + sag]],
    ['C', [-edge * 0.8, -width - sag * 0.2], [-edge * 0.4, -width], [0, -width]],
    ['C', [edge * 0.4, -width], [edge * 0.8, -width - sag * 0.2], [edge, -width + sag]],
    ['C', [edge + sag, -width * 0.7], [edge + sag, -width * 0.3], [edge, -sag]],
    ['C', [edge * 0.8, sag * 0.2], [edge * 0.4, 0], [0, 0]],
    ['L', [drip + 1.4, 0]],
    ['C', [drip + 0.7, 0], [drip + 0.6, 0.2], [drip + 0.5, 0.6]],
    ['C', [drip + 0.5, 1.3], [drip - 0.5, 1.3], [drip - 0.5, 0.6]],
    ['C', [drip - 0.6, 0.2], [drip - 0.7, 0], [drip - 1.4, 0]],
    ['C', [-edge * 0.8, 0], [-edge * 0.9, 0], [-edge, -sag]],
    ['C', [-edge - sag, -width * 0.3], [-edge - sag, -width * 0.7], [-edge, -width + sag]],
    ['Z'],
  ];
};

/** How far wax creeps along a lead, mm. */
const CREEP = 2.6;

/** Wax that has crept along the lead out of one end. */
const creep = (spec: PartSpec, side: number): Shape => {
  const [edge, y] = [spec.length / 2, -spec.width / 2];
  const tall = spec.width * 0.2;
  return solid(
    [
      ['M', [side * edge, y - tall]],
      [
        'C',
        [side * (edge + 0.9), y - tall * 0.8],
        [side * (edge + 1.4), y - 0.5],
        [side * (edge + CREEP), y - 0.4],
      ],
      ['L', [side * (edge + CREEP), y + 0.4]],
      [
        'C',
        [side * (edge + 1.4), y + 0.5],
        [side * (edge + 0.9), y + tall * 0.8],
        [side * edge, y + tall],
      ],
      ['Z'],
    ],
    { colour: 'honey' },
  );
};

const front = (spec: PartSpec): View => {
  const { length, width } = spec;
  const edge = length / 2;
  const outer = spec.polarity === 'outer-foil-band';
  const lip = Math.min(1.8, length * 0.06);
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...lyingLeads(spec),
      ...[-1, 1].map((side) => creep(spec, side)),
      solid(tube(length, width), 'body'),
      // Wax stands bare beyond the printed wrapper.
      ...[-1, 1].map((side) => {
        const x = side < 0 ? -edge : edge - lip;
        return solid(rectangle([x, -width * 0.985], lip, width * 0.97, lip * 0.3), {
          colour: 'honey',
        });
      }),
      ...(outer
        ? [paint(ring({ x: edge - length * 0.17, width: length * 0.06 }, width * 0.996), 'print')]
        : []),
    ],
    print: {
      at: [outer ? -length * 0.06 : 0, -width / 2],
      width: length * (outer ? 0.66 : 0.82),
      height: width * 0.84,
    },
    notes: outer ? [foilNote({ ...spec, length: length + 2 * CREEP }, 1)] : [],
  };
};

/** The end: wax inside a card tube. */
const end = (spec: PartSpec): View =>
  roundEnd(spec, (middle, radius, wire) => [
    solid(ellipse(middle, radius), 'body'),
    solid(ellipse(middle, radius * 0.84), { colour: 'honey' }),
    solid(ellipse(middle, wire), 'metal'),
  ]);

/** A card tube filled with wax. */
export const waxTube: Form = {
  name: 'waxed paper tube',
  round: 'lying',
  views: (spec) => [front(spec), end(spec)],
};
