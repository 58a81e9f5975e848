import { ellipse, line, rectangle } from '../path.ts';
import { inner, paint, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { foilNote, lyingLeads, ring } from './tube.ts';

/** The tape stands out over the resin at both ends, mm. */
const RIM = 0.7;

const front = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const outer = spec.polarity === 'outer-foil-band';
  const flat = { ...spec, width: height };
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...lyingLeads(flat, 0.5),
      solid(rectangle([-edge, -height], length, height, Math.min(0.5, height * 0.08)), 'body'),
      ...[RIM - edge, edge - RIM].map((x) => inner(line([x, -height], [x, 0]))),
      ...(outer
        ? [paint(ring({ x: edge - length * 0.15, width: length * 0.06 }, height), 'print')]
        : []),
    ],
    print: {
      at: [outer ? -length * 0.06 : 0, -height / 2],
      width: length * (outer ? 0.68 : 0.84),
      height: height * 0.82,
    },
    notes: outer ? [foilNote(flat, 1)] : [],
  };
};

/** The end: resin in the tape, round or flattened. */
const end = (spec: PartSpec): View => {
  const { width, height } = spec;
  const wire = (spec.leadWire ?? 0.8) / 2;
  return {
    name: 'side',
    from: -width / 2,
    shapes: [
      solid(ellipse([0, -height / 2], width / 2, height / 2), 'body'),
      solid(ellipse([0, -height / 2], width / 2 - RIM, height / 2 - RIM), 'body'),
      solid(ellipse([0, -height / 2], wire), 'metal'),
    ],
  };
};

/** A roll wrapped in tape, its ends filled with resin; round or flattened. */
export const wrapped: Form = {
  name: 'tape-wrapped tube',
  round: 'lying',
  views: (spec) => [front(spec), end(spec)],
};
