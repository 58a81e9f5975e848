import { leadLength, wire } from '../lead.ts';
import { line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Sprayed metal at both ends, mm. */
const SPRAY = 0.5;
/** Lines that show the layers. */
const LAYERS = 5;

const front = (spec: PartSpec): View => {
  const { length, height } = spec;
  const half = (spec.pitch ?? length - SPRAY) / 2;
  const edge = length / 2;
  const layers = Array.from(
    { length: LAYERS },
    (_, i) => -height + ((i + 1) * height) / (LAYERS + 1),
  );
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...[-half, half].map((x) => wire(spec, [x, -height * 0.8], [x, leadLength(height)])),
      solid(rectangle([-edge, -height], length, height), 'body'),
      // Cut edges of the film: bare and unmarked.
      ...layers.flatMap((y) => [
        inner(line([SPRAY - edge, y], [SPRAY - edge + length * 0.12, y])),
        inner(line([edge - SPRAY - length * 0.12, y], [edge - SPRAY, y])),
      ]),
      ...[-edge, edge - SPRAY].map((x) => solid(rectangle([x, -height], SPRAY, height), 'metal')),
    ],
    print: { at: [0, -height / 2], width: length * 0.68, height: height * 0.86 },
  };
};

const side = (spec: PartSpec): View => {
  const { width, height } = spec;
  return {
    name: 'side',
    from: -width / 2,
    shapes: [
      solid(rectangle([-width / 2, -height], width, height), 'metal'),
      wire(spec, [0, -height * 0.8], [0, leadLength(height)]),
    ],
  };
};

/** A bare block of film layers with sprayed ends. */
export const stacked: Form = {
  name: 'bare layered block',
  views: (spec) => [front(spec), side(spec)],
};
