import { ellipse, polygon, rectangle, segment, type Path } from '../path.ts';
import { solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import { canOutline, minusStripe, STRIPE } from './can.ts';
import type { Form } from './form.ts';

/** How long the pins are, and how wide, mm. */
const PIN = { long: 5.8, wide: 1.5 } as const;

/** A flat pin with a knee that snaps behind the board. */
const pin = (x: number, side: number): Path => {
  const half = PIN.wide / 2;
  return polygon(
    [x - half, -0.2],
    [x + half, -0.2],
    [x + half + side * 0.5, 2.2],
    [x + half, PIN.long * 0.7],
    [x + half * 0.4, PIN.long],
    [x - half * 0.4, PIN.long],
    [x - half, PIN.long * 0.7],
    [x - half + side * 0.5, 2.2],
  );
};

const front = (spec: PartSpec): View => {
  const { length: width, height } = spec;
  const half = (spec.pitch ?? 10) / 2;
  const striped = spec.polarity === 'stripe-minus';
  return {
    name: 'front',
    from: -width / 2,
    shapes: [
      ...[-1, 1].map((side) => solid(pin(side * half, side), 'metal')),
      solid(canOutline(width, height), 'body'),
      ...(striped ? minusStripe(width, height) : []),
    ],
    print: {
      at: [striped ? ((STRIPE - 0.5) * width) / 2 : 0, -height * 0.57],
      width: width * (striped ? 0.6 : 0.86),
      height: height * 0.7,
    },
    notes: striped
      ? [
          { text: '+', at: [-half, PIN.long], side: 'below' },
          { text: '−', at: [half, PIN.long], side: 'below' },
        ]
      : [],
  };
};

/** From below: the deck with its pins, plus to the left as from the front. */
const below = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const half = (spec.pitch ?? 10) / 2;
  const deck = radius - Math.min(1.6, radius * 0.12);
  return {
    name: 'below',
    from: -radius,
    shapes: [
      solid(ellipse([0, -radius], radius), 'body'),
      ...(spec.polarity === 'stripe-minus'
        ? [solid(segment([0, -radius], radius, radius, -0.35, 0.35), 'paper')]
        : []),
      solid(ellipse([0, -radius], deck), { colour: 'dark-grey' }),
      ...[-half, half].map((x) =>
        solid(rectangle([x - 0.4, -radius - PIN.wide / 2], 0.8, PIN.wide), 'metal'),
      ),
    ],
  };
};

/** A large can that snaps into the board with two flat pins. */
export const snapIn: Form = {
  name: 'snap-in can',
  round: 'upright',
  views: (spec) => [front(spec), below(spec)],
};
