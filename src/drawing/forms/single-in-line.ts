import { leadLength, wire } from '../lead.ts';
import { ellipse, rectangle } from '../path.ts';
import { solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Between neighbouring pins, mm. */
const STEP = 2.54;

const front = (spec: PartSpec): View => {
  const { length, height } = spec;
  const pins = spec.pins ?? 8;
  const step = spec.pitch ?? STEP;
  const xs = Array.from({ length: pins }, (_, i) => (i - (pins - 1) / 2) * step);
  const first = xs[0] ?? 0;
  const end = Math.min(5, leadLength(height));
  return {
    name: 'front',
    from: -length / 2,
    shapes: [
      ...xs.map((x) => wire({ ...spec, leadWire: spec.leadWire ?? 0.5 }, [x, -0.8], [x, end])),
      solid(rectangle([-length / 2, -height], length, height - 0.6, 0.5), 'body'),
      solid(ellipse([first, -1.6], 0.5), 'print'),
    ],
    print: { at: [0.5, -height * 0.58], width: length * 0.86, height: height * 0.56 },
    notes: [
      { text: '1', at: [first, end], side: 'below' },
      { text: String(pins), at: [xs.at(-1) ?? 0, end], side: 'below' },
    ],
  };
};

/** A flat network with one row of pins, pin 1 at its dot. */
export const singleInLine: Form = {
  name: 'single in-line network',
  views: (spec) => [front(spec)],
};
