import { ellipse, rectangle } from '../path.ts';
import { paint, solid, type Shape } from '../shape.ts';
import type { Form } from './form.ts';

/** Ribbon leads of a flat pack, mm. */
const RIBBON = { wide: 0.4, long: 6, pitch: 1.27 } as const;

/** A small flat tablet with ribbons on two sides. */
export const flatPack: Form = {
  name: 'flat pack',
  views: (spec) => {
    const { length, width, pins = 10 } = spec;
    const edge = length / 2;
    const each = Math.ceil(pins / 2);
    const pitch = Math.min(spec.pitch ?? RIBBON.pitch, length / each);
    const xs = Array.from({ length: each }, (_, i) => (i - (each - 1) / 2) * pitch);
    const ribbons = xs.flatMap((x): Shape[] =>
      [-width - RIBBON.long, -0.2].map((y) =>
        solid(rectangle([x - RIBBON.wide / 2, y], RIBBON.wide, RIBBON.long + 0.2), 'metal'),
      ),
    );
    return [
      {
        name: 'above',
        from: -edge,
        shapes: [
          ...ribbons,
          solid(rectangle([-edge, -width], length, width, 0.2), 'body'),
          paint(ellipse([-edge + 0.8, -0.8], 0.3), 'print'),
        ],
        print: { at: [0, -width / 2], width: length * 0.8, height: width * 0.6 },
      },
    ];
  },
};
