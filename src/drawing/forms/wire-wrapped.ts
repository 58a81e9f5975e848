import { ringOf } from '../cut.ts';
import { leadLength, wire } from '../lead.ts';
import { ellipse, rectangle, type Point } from '../path.ts';
import { coloured, band, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { bandPlaces } from './tube.ts';

/** How far from the end of the rod its wire is wound, as a share of its length. */
const WOUND = 0.09;

/** A wire wound twice round the rod, then away to the board. */
const wound = (spec: PartSpec, x: number, lift: number): Shape[] => {
  const { width } = spec;
  const thick = spec.leadWire ?? 0.6;
  return [
    wire(spec, [x, -lift - width / 2], [x, leadLength(width + lift)]),
    ...[-thick * 0.55, thick * 0.55].map((off) =>
      solid(
        rectangle([x + off - thick / 2, -lift - width - 0.15], thick, width + 0.3, thick / 2),
        'metal',
      ),
    ),
  ];
};

/** Dots along the rod, the first one larger. */
const dotted = ({ dots = [], length, width }: PartSpec, lift: number): Shape[] => {
  const room = length * (1 - 4 * WOUND);
  const step = room / dots.length;
  return dots.map((colour, i) => {
    const at: Point = [-room / 2 + (i + 0.5) * step, -lift - width / 2];
    const radius = Math.min(width * (i === 0 ? 0.34 : 0.24), step * 0.4);
    return coloured(ellipse(at, radius), colour, `dots-${String(i)}`, 'ink');
  });
};

const front = (spec: PartSpec): View => {
  const { length, width, bands = [], dots = [], tip, otherTip } = spec;
  const edge = length / 2;
  const lift = Math.max(0, spec.height - width);
  const x = edge - length * WOUND;
  const body = rectangle([-edge, -lift - width], length, width, Math.min(0.3, width * 0.1));
  const places = bandPlaces(bands.length, -edge + length * 2 * WOUND, edge - length * 2 * WOUND);
  return {
    name: 'front',
    from: -edge,
    shapes: [
      solid(body, 'body'),
      ...(tip === undefined
        ? []
        : [coloured(ringOf(body, -edge, -edge + length * 2.6 * WOUND), tip, 'tip')]),
      ...(otherTip === undefined
        ? []
        : [coloured(ringOf(body, edge - length * 2.6 * WOUND, edge), otherTip, 'otherTip')]),
      ...places.map((place, i) => band(ringOf(body, place.x, place.x + place.width), spec, i)),
      { path: body, line: 'ink' },
      ...dotted(spec, lift),
      ...[-x, x].flatMap((at) => wound(spec, at, lift)),
    ],
    ...(bands.length + dots.length > 0
      ? {}
      : {
          print: {
            at: [0, -lift - width / 2],
            width: length * (1 - 4 * WOUND),
            height: width * 0.84,
          },
        }),
  };
};

/** The end of a hollow tube or of a solid rod. */
const end =
  (hollow: boolean) =>
  (spec: PartSpec): View => {
    const radius = spec.width / 2;
    const lift = Math.max(0, spec.height - spec.width);
    const middle: Point = [0, -lift - radius];
    return {
      name: 'side',
      from: -radius,
      shapes: [
        wire(spec, [radius * 0.7, middle[1]], [radius * 0.7, leadLength(spec.height)]),
        solid(ellipse(middle, radius), 'body'),
        ...(hollow ? [solid(ellipse(middle, radius * 0.56), 'dark')] : []),
      ],
    };
  };

/** A thin hollow ceramic tube with a wire wound round each end. */
export const ceramicTube: Form = {
  name: 'ceramic tube',
  round: 'lying',
  views: (spec) => [front(spec), end(true)(spec)],
};

/** A carbon rod with a wire wound round each end; body, end and dot tell its value. */
export const rodResistor: Form = {
  name: 'rod resistor',
  round: 'lying',
  views: (spec) => [front(spec), end(false)(spec)],
};
