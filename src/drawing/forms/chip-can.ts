import { ellipse, mapped, polygon, rectangle, segment } from '../path.ts';
import { paint, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import { canOutline } from './can.ts';
import type { Form } from './form.ts';

/** Height of the plastic base, mm. */
const BASE = 1;

/** The base has its plus side, here the left one, bevelled. */
const above = (spec: PartSpec): View => {
  const side = spec.length + 0.3;
  const [half, middle] = [side / 2, -side / 2];
  const bevel = side * 0.2;
  const radius = spec.length / 2 - 0.15;
  const tab = { long: 0.9, wide: 0.8 };
  return {
    name: 'above',
    from: -half,
    shapes: [
      ...[-half - tab.long, half - 0.1].map((x) =>
        solid(rectangle([x, middle - tab.wide / 2], tab.long + 0.1, tab.wide), 'metal'),
      ),
      solid(
        polygon(
          [-half + bevel, -side],
          [half, -side],
          [half, 0],
          [-half + bevel, 0],
          [-half, -bevel],
          [-half, -side + bevel],
        ),
        'dark',
      ),
      solid(ellipse([0, middle], radius), 'metal'),
      ...(spec.polarity === 'segment-minus'
        ? [paint(segment([0, middle], radius, radius, -0.8, 0.8), 'dark')]
        : []),
    ],
    print: {
      at: [spec.polarity === 'segment-minus' ? -radius * 0.14 : 0, middle],
      width: radius * 1.5,
      height: radius * 1.2,
    },
    notes:
      spec.polarity === undefined
        ? []
        : [
            { text: '+', at: [-half - tab.long, middle], side: 'left' },
            { text: '−', at: [half + tab.long, middle], side: 'right' },
          ],
  };
};

const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const half = length / 2 + 0.15;
  return {
    name: 'side',
    from: -half,
    shapes: [
      solid(
        mapped(canOutline(length - 0.3, height - BASE), ([x, y]) => [x, y - BASE]),
        'metal',
      ),
      solid(rectangle([-half, -BASE], half * 2, BASE), 'dark'),
    ],
  };
};

/** A small can on a square base, without leads. */
export const chipCan: Form = {
  name: 'chip can',
  round: 'upright',
  views: (spec) => [above(spec), side(spec)],
};
