import { leadLength, wire } from '../lead.ts';
import { ellipse, rectangle, segment } from '../path.ts';
import { solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { slot } from './slot.ts';

const above = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const y = -spec.width / 2;
  const rotor = Math.min(radius, spec.width / 2) * 0.86;
  return {
    name: 'above',
    from: -radius,
    shapes: [
      solid(rectangle([-radius, -spec.width], spec.length, spec.width, radius * 0.55), 'body'),
      solid(ellipse([0, y], rotor), 'paper'),
      solid(segment([0, y], rotor, rotor, -0.4, Math.PI - 0.4), 'metal'),
      solid(ellipse([0, y], rotor * 0.34), 'metal'),
      { path: slot(0, y, rotor * 0.24), line: 'ink' },
    ],
  };
};

/** Plates one above the other under the screw. */
const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const half = (spec.pitch ?? length * 0.5) / 2;
  const stack = Array.from({ length: 4 }, (_, i) => -height * (0.5 + i * 0.11));
  return {
    name: 'side',
    from: -edge,
    shapes: [
      ...[-half, half].map((x) => wire(spec, [x, -0.2], [x, Math.min(5, leadLength(height))])),
      solid(rectangle([-edge, -height * 0.44], length, height * 0.44, 0.4), 'body'),
      ...stack.map((y) => solid(rectangle([-edge * 0.84, y], edge * 1.68, height * 0.05), 'metal')),
      solid(rectangle([-edge * 0.26, -height], edge * 0.52, height * 0.2, 0.3), 'metal'),
    ],
    print: { at: [0, -height * 0.22], width: length * 0.9, height: height * 0.36 },
  };
};

/** A trimmer capacitor turned by its slot: half-round plates over fixed ones. */
export const rotaryTrimmer: Form = {
  name: 'rotary trimmer',
  views: (spec) => [above(spec), side(spec)],
};
