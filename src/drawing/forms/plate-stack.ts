import { ellipse, rectangle } from '../path.ts';
import { solid, type Shape } from '../shape.ts';
import type { Form } from './form.ts';

/** Rectifier plates in a row on a bolt, a tag between some of them. */
export const plateStack: Form = {
  name: 'stack of plates',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const count = spec.pins ?? Math.max(3, Math.floor(length / 5));
    const step = (length * 0.8) / count;
    const thick = Math.min(1.4, step * 0.35);
    const middle = -height / 2;
    const plates = Array.from({ length: count }, (_, i): Shape => {
      const x = -length * 0.4 + (i + 0.5) * step;
      return solid(rectangle([x - thick / 2, -height], thick, height, 0.3), 'body');
    });
    const tags = [0, Math.floor(count / 2), count - 1].map((i): Shape => {
      const x = -length * 0.4 + (i + 0.5) * step + thick;
      return solid(rectangle([x, -height - 4], Math.min(1, step * 0.3), height / 2 + 4), 'metal');
    });
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...tags,
          solid(rectangle([-edge, middle - 2], length, 4, 0.4), 'metal'),
          ...plates,
        ],
      },
      {
        name: 'side',
        from: -width / 2,
        shapes: [
          solid(rectangle([-width / 2, -height], width, height, 0.8), 'body'),
          solid(ellipse([0, middle], Math.min(width, height) * 0.18), 'metal'),
        ],
      },
    ];
  },
};
