import { ellipse, line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** From above: a metal cup with its terminal in the middle. */
const above = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  return {
    name: 'above',
    from: -radius,
    shapes: [
      solid(ellipse([0, -radius], radius), 'body'),
      inner(ellipse([0, -radius], radius * 0.82)),
      solid(ellipse([0, -radius], radius * 0.34), 'dark'),
      solid(ellipse([0, -radius], radius * 0.2), 'metal'),
    ],
  };
};

const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const cup = height * 0.55;
  return {
    name: 'side',
    from: -edge,
    shapes: [
      solid(rectangle([-0.9, -height], 1.8, height - cup + 0.2, [0.9, 0.9, 0, 0]), 'metal'),
      solid(
        rectangle([-edge * 0.34, -cup - height * 0.1], edge * 0.68, height * 0.1 + 0.2),
        'dark',
      ),
      solid(rectangle([-edge, -cup], length, cup, [0.6, 0.6, 0.2, 0.2]), 'body'),
      inner(line([-edge, -cup * 0.35], [edge, -cup * 0.35])),
    ],
    print: { at: [0, -cup * 0.68], width: length * 0.86, height: cup * 0.6 },
  };
};

/** A round metal cup, one plate its case, the other a terminal in the middle. */
export const button: Form = {
  name: 'metal button',
  round: 'upright',
  views: (spec) => [above(spec), side(spec)],
};
