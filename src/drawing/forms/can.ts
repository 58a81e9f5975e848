import { leadLength, signBelow, wire } from '../lead.ts';
import { ellipse, line, rectangle, turned, type Path } from '../path.ts';
import { paint, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Where the minus stripe begins, from the middle, as a share of the diameter; and how wide it is. */
export const STRIPE = 0.2;
const stripeWidth = (width: number): number => Math.min(width * 0.2, 4.5);

/** A can from the side: round edges above, a rolled groove above the seal. */
export const canOutline = (width: number, height: number): Path => {
  const [half, edge] = [width / 2, Math.min(width * 0.08, 1)];
  const groove = Math.min(height * 0.16, 1.2 + width * 0.1);
  const [deep, wide] = [Math.min(width * 0.035, 0.5), Math.min(groove * 0.45, 1)];
  const profile: Path = [
    ['M', [0, -height]],
    ['L', [half - edge, -height]],
    ['C', [half - edge * 0.4, -height], [half, -height + edge * 0.6], [half, -height + edge]],
    ['L', [half, -groove - wide]],
    [
      'C',
      [half, -groove - wide * 0.4],
      [half - deep, -groove - wide * 0.5],
      [half - deep, -groove],
    ],
    [
      'C',
      [half - deep, -groove + wide * 0.5],
      [half, -groove + wide * 0.4],
      [half, -groove + wide],
    ],
    ['L', [half, -edge * 0.5]],
    ['L', [half - edge * 0.5, 0]],
  ];
  return turned(profile, ([x, y]) => [-x, y]);
};

/** The minus stripe of a can, with its signs. */
export const minusStripe = (width: number, height: number): Shape[] => {
  const [from, wide] = [STRIPE * width, stripeWidth(width)];
  const signs = Math.max(2, Math.min(5, Math.floor(height / 5)));
  const long = Math.min(wide * 0.6, 2.4);
  const thick = Math.min(0.7, long * 0.35);
  return [
    solid(rectangle([from, -height], wide, height), 'paper'),
    ...Array.from({ length: signs }, (_, i) => {
      const y = -height + ((i + 0.5) * height) / signs;
      return paint(rectangle([from + (wide - long) / 2, y - thick / 2], long, thick), 'dark');
    }),
  ];
};

const front = (spec: PartSpec): View => {
  const { length: width, height } = spec;
  const half = (spec.pitch ?? Math.max(1.5, width * 0.42)) / 2;
  const end = leadLength(height);
  const striped = spec.polarity === 'stripe-minus';
  const room = striped ? width * (0.5 + STRIPE) : width;
  return {
    name: 'front',
    from: -width / 2,
    shapes: [
      wire(spec, [-half, -0.3], [-half, end + 1.5]),
      wire(spec, [half, -0.3], [half, end]),
      solid(canOutline(width, height), 'body'),
      ...(striped ? minusStripe(width, height) : []),
    ],
    print: {
      at: [striped ? ((STRIPE - 0.5) * width) / 2 : 0, -height * 0.57],
      width: room * 0.86,
      height: height * 0.72,
    },
    notes:
      spec.polarity === undefined
        ? []
        : [signBelow('+', [-half, end + 1.5]), signBelow('−', [half, end])],
  };
};

/** From above: the vent that lets a can open before it bursts, on cans that are wide enough. */
const above = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const sleeve = spec.finish === 'metal' ? 0 : Math.min(0.9, radius * 0.16);
  const score = (radius - sleeve) * 0.62;
  return {
    name: 'above',
    from: -radius,
    shapes: [
      solid(ellipse([0, -radius], radius), 'body'),
      ...(sleeve > 0 ? [solid(ellipse([0, -radius], radius - sleeve), 'metal')] : []),
      ...(spec.length >= 6.3
        ? [
            { path: line([-score, -radius], [score, -radius]), line: 'ink' } as const,
            { path: line([0, -radius - score], [0, -radius + score]), line: 'ink' } as const,
          ]
        : []),
    ],
  };
};

/** A round can that stands on the board, both leads below. */
export const can: Form = {
  name: 'can',
  round: 'upright',
  views: (spec) => [front(spec), above(spec)],
};
