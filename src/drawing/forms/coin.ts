import { leadLength, signBelow, wire } from '../lead.ts';
import { ellipse, line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

const front = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const half = (spec.pitch ?? length * 0.5) / 2;
  const end = Math.min(5, leadLength(height));
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...[-half, half].map((x) => wire(spec, [x, -0.2], [x, end])),
      solid(rectangle([-edge, -height], length, height, Math.min(0.8, height * 0.14)), 'body'),
      inner(line([-edge, -height * 0.22], [edge, -height * 0.22])),
    ],
    print: { at: [0, -height * 0.6], width: length * 0.9, height: height * 0.66 },
    notes:
      spec.polarity === undefined
        ? []
        : [signBelow('+', [-half, end]), signBelow('−', [half, end])],
  };
};

const above = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  return {
    name: 'above',
    from: -radius,
    shapes: [
      solid(ellipse([0, -radius], radius), 'body'),
      inner(ellipse([0, -radius], radius * 0.84)),
    ],
  };
};

/** A low round cell: double-layer capacitor or battery. */
export const coin: Form = {
  name: 'coin',
  round: 'upright',
  views: (spec) => [front(spec), above(spec)],
};
