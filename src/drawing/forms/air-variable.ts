import { ellipse, rectangle, segment } from '../path.ts';
import { solid, type Shape } from '../shape.ts';
import type { Form } from './form.ts';

/** Meshing plates on a shaft, in the open. */
export const airVariable: Form = {
  name: 'air variable',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const count = Math.max(5, Math.min(13, Math.floor(length / 2.4)));
    const room = length * 0.76;
    const plates = Array.from({ length: count }, (_, i): Shape => {
      const x = -room / 2 + ((i + 0.5) * room) / count;
      const fixed = i % 2 === 0;
      const thick = Math.min(0.8, (room / count) * 0.4);
      return solid(
        rectangle([x - thick / 2, fixed ? -height * 0.94 : -height * 0.66], thick, height * 0.56),
        fixed ? 'metal' : 'body',
      );
    });
    const radius = Math.min(width / 2, height * 0.4);
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...plates,
          solid(
            rectangle([-edge - 5, -height * 0.42], length + 5, Math.min(6, height * 0.14), 0.3),
            'metal',
          ),
          ...[-edge, edge - length * 0.07].map((x) =>
            solid(rectangle([x, -height], length * 0.07, height, 0.3), 'body'),
          ),
        ],
      },
      {
        name: 'side',
        from: -width / 2,
        shapes: [
          solid(rectangle([-width / 2, -height], width, height, 0.6), 'body'),
          solid(segment([0, -height * 0.4], radius, radius, Math.PI, 2 * Math.PI), 'metal'),
          solid(
            segment([0, -height * 0.4], radius * 0.9, radius * 0.9, -0.5, Math.PI - 0.5),
            'metal',
          ),
          solid(ellipse([0, -height * 0.4], Math.min(3, height * 0.1)), 'metal'),
        ],
      },
    ];
  },
};
