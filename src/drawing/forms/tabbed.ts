import { leadLength, wire } from '../lead.ts';
import { ellipse, rectangle } from '../path.ts';
import { solid, type Note } from '../shape.ts';
import type { Form } from './form.ts';

/** Shares of the whole height and length, as on the usual outline of 10 by 15 mm. */
const BODY = 0.6;
const HOLE = 0.18;
/** Between neighbouring leads, mm. */
const STEP = 2.54;

/** A flat power package: plastic below a metal tab with its hole, leads in a row. */
export const tabbed: Form = {
  name: 'flat package with a tab',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const pins = spec.pins ?? 3;
    const step = spec.pitch ?? STEP;
    const xs = Array.from({ length: pins }, (_, i) => (i - (pins - 1) / 2) * step);
    const end = leadLength(height) + 3;
    const body = height * BODY;
    const thin = { ...spec, leadWire: spec.leadWire ?? 0.9 };
    const tab = width * 0.3;
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...xs.map((x) => wire(thin, [x, -0.2], [x, end])),
          solid(rectangle([-edge, -height], length, height - body, 0.3), 'metal'),
          solid(ellipse([0, -(height + body) / 2], length * HOLE), 'paper'),
          solid(rectangle([-edge, -body], length, body, 0.3), 'body'),
        ],
        print: { at: [0, -body / 2], width: length * 0.86, height: body * 0.7 },
        notes: xs.map((x, i): Note => ({ text: String(i + 1), at: [x, end], side: 'below' })),
      },
      {
        name: 'side',
        from: -width / 2,
        shapes: [
          wire(thin, [0, -0.2], [0, end]),
          solid(rectangle([-width / 2, -height], tab, height), 'metal'),
          solid(rectangle([tab - width / 2, -body], width - tab, body, 0.3), 'body'),
        ],
      },
    ];
  },
};
