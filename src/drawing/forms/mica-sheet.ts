import { ellipse, rectangle } from '../path.ts';
import { paint, solid } from '../shape.ts';
import type { Form } from './form.ts';

/** A bare sheet of mica with a silvered patch for each section, pressed between spring contacts. */
export const micaSheet: Form = {
  name: 'mica sheet with silvered patches',
  views: (spec) => {
    const { length, height } = spec;
    const edge = length / 2;
    const sections = spec.pins ?? 2;
    const room = (length * 0.88) / sections;
    const patches = Array.from({ length: sections }, (_, i) => -length * 0.44 + i * room);
    return [
      {
        name: 'above',
        from: -edge,
        shapes: [
          solid(rectangle([-edge, -height], length, height, 0.4), 'body'),
          ...patches.map((x) =>
            paint(
              rectangle([x + room * 0.08, -height * 0.86], room * 0.84, height * 0.72),
              'metal',
            ),
          ),
          ...patches.map((x) => solid(ellipse([x + room / 2, -height * 0.5], 1), 'dark')),
        ],
      },
    ];
  },
};
