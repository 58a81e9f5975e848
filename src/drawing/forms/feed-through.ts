import { line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { Form } from './form.ts';
import { lyingLeads } from './tube.ts';

/** A tube through a screen, its conductor from end to end, its other plate the flange. */
export const feedThrough: Form = {
  name: 'feed-through',
  round: 'lying',
  views: (spec) => {
    const { length, width } = spec;
    const edge = length / 2;
    const neck = width * 0.6;
    const [flange, thread] = [Math.min(1.6, length * 0.14), length * 0.3];
    const turns = Math.max(3, Math.floor(thread / 0.8));
    const view: View = {
      name: 'front',
      from: -edge,
      shapes: [
        ...lyingLeads(spec),
        solid(rectangle([-edge, -(width + neck) / 2], length, neck, 0.3), { colour: 'cream' }),
        solid(rectangle([0, -(width + neck * 1.3) / 2], thread, neck * 1.3), 'metal'),
        ...Array.from({ length: turns - 1 }, (_, i) => {
          const x = ((i + 1) * thread) / turns;
          return inner(
            line([x - 0.2, -(width + neck * 1.3) / 2], [x + 0.2, -(width - neck * 1.3) / 2]),
          );
        }),
        solid(rectangle([-flange, -width], flange, width, 0.2), 'metal'),
      ],
    };
    return [view];
  },
};
