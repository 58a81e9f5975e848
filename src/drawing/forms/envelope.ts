import { line, rectangle } from '../path.ts';
import { inner, solid } from '../shape.ts';
import type { Form } from './form.ts';

/** Share of the length that each metal end takes. */
const FLANGE = 0.14;

/** A sealed glass or ceramic cylinder between metal flanges, cups within each other inside. */
export const envelope: Form = {
  name: 'sealed envelope with flanges',
  round: 'lying',
  views: (spec) => {
    const { length, width } = spec;
    const edge = length / 2;
    const end = length * FLANGE;
    const cup = (side: number, share: number) =>
      inner(
        line(
          [side * (edge - end), -width / 2 - width * share],
          [-side * length * 0.18, -width / 2 - width * share],
          [-side * length * 0.18, -width / 2 + width * share],
          [side * (edge - end), -width / 2 + width * share],
        ),
      );
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          solid(rectangle([end - edge, -width * 0.94], length - 2 * end, width * 0.88, 1), 'body'),
          cup(1, 0.3),
          cup(-1, 0.2),
          ...[-edge, edge - end].map((x) =>
            solid(rectangle([x, -width], end, width, 0.5), 'metal'),
          ),
        ],
      },
    ];
  },
};
