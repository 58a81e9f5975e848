import { ellipse, line, rectangle } from '../path.ts';
import { solid, type Shape } from '../shape.ts';
import type { Form } from './form.ts';
import { slot } from './slot.ts';

/** A trimmer capacitor of springy plates with mica between, pressed together by a screw. */
export const compressionTrimmer: Form = {
  name: 'compression trimmer',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const radius = Math.min(width * 0.3, length * 0.2);
    const leaf = (lift: number): Shape =>
      solid(
        [
          ['M', [-edge * 0.86, -height * 0.42]],
          [
            'C',
            [-edge * 0.3, -height * 0.42 - lift],
            [edge * 0.4, -height * 0.5 - lift],
            [edge * 0.8, -height * 0.52 - lift],
          ],
          ['L', [edge * 0.8, -height * 0.47 - lift]],
          [
            'C',
            [edge * 0.4, -height * 0.45 - lift],
            [-edge * 0.3, -height * 0.37 - lift],
            [-edge * 0.86, -height * 0.37],
          ],
          ['Z'],
        ],
        'metal',
      );
    return [
      {
        name: 'above',
        from: -edge,
        shapes: [
          ...[-edge - 2.5, edge - 0.5].map((x) =>
            solid(rectangle([x, -width * 0.62], 3, width * 0.24, 0.4), 'metal'),
          ),
          solid(rectangle([-edge, -width], length, width, width * 0.14), 'body'),
          solid(rectangle([-edge * 0.82, -width * 0.86], edge * 1.64, width * 0.72, 0.6), 'metal'),
          solid(ellipse([0, -width / 2], radius), 'metal'),
          { path: slot(0, -width / 2, radius * 0.8, 0.7), line: 'ink' },
        ],
      },
      {
        name: 'side',
        from: -edge,
        shapes: [
          solid(rectangle([-edge, -height * 0.36], length, height * 0.36, 0.3), 'body'),
          ...[0, height * 0.12, height * 0.24].map(leaf),
          solid(rectangle([-radius * 0.3, -height * 0.86], radius * 0.6, height * 0.5), 'metal'),
          solid(rectangle([-radius, -height], radius * 2, height * 0.16, 0.3), 'metal'),
          { path: line([0, -height], [0, -height * 0.91]), line: 'ink' },
        ],
      },
    ];
  },
};
