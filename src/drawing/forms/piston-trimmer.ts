import { wire } from '../lead.ts';
import { line, rectangle } from '../path.ts';
import { solid } from '../shape.ts';
import type { Form } from './form.ts';

/** A trimmer capacitor whose piston screws into a glass or ceramic tube. */
export const pistonTrimmer: Form = {
  name: 'piston trimmer',
  round: 'lying',
  views: (spec) => {
    const { length, width } = spec;
    const edge = length / 2;
    const screw = Math.min(4, length * 0.2);
    const collar = length * 0.22;
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          solid(rectangle([-edge, -width * 0.62], screw + 0.3, width * 0.24, 0.2), 'metal'),
          solid(rectangle([screw - edge, -width], collar, width, 0.3), 'metal'),
          solid(
            rectangle([screw + collar - edge, -width * 0.76], length * 0.3, width * 0.52),
            'metal',
          ),
          solid(
            rectangle(
              [screw + collar - edge, -width * 0.9],
              length - screw - collar - 1,
              width * 0.8,
              [0, 0.8, 0.8, 0],
            ),
            'body',
          ),
          solid(
            rectangle([edge - length * 0.26, -width * 0.94], length * 0.2, width * 0.88, 0.2),
            'metal',
          ),
          wire(spec, [edge - 1, -width / 2], [edge + 4, -width / 2]),
          { path: line([-edge, -width / 2], [-edge + 1.2, -width / 2]), line: 'ink' },
        ],
      },
    ];
  },
};
