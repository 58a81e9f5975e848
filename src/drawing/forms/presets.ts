import { wire } from '../lead.ts';
import { ellipse, line, polygon, rectangle } from '../path.ts';
import { solid, type Shape } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { slot } from './slot.ts';

const pinsBelow = (spec: PartSpec, xs: readonly number[]): Shape[] =>
  xs.map((x) => wire(spec, [x, -0.2], [x, 4]));

/** A long cermet preset, its screw at one end. */
export const multiTurn: Form = {
  name: 'multi-turn preset',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const pitch = spec.pitch ?? 2.54;
    const xs = [-pitch, 0, pitch].map((x) => (length > 12 ? x * 2.5 : x));
    const screw = Math.min(1.2, height * 0.22);
    const sideScrew = length > 12;
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...pinsBelow(spec, xs),
          sideScrew
            ? solid(rectangle([-edge - 1.5, -height * 0.78], 1.7, screw * 2, 0.2), 'metal')
            : solid(rectangle([-edge + 1, -height - 1.5], screw * 2, 1.7, 0.2), 'metal'),
          ...(sideScrew
            ? [
                {
                  path: line(
                    [-edge - 1.5, -height * 0.78 + screw],
                    [-edge - 0.7, -height * 0.78 + screw],
                  ),
                  line: 'ink',
                } as const,
              ]
            : [
                {
                  path: line(
                    [-edge + 1 + screw, -height - 1.5],
                    [-edge + 1 + screw, -height - 0.7],
                  ),
                  line: 'ink',
                } as const,
              ]),
          solid(rectangle([-edge, -height], length, height - 0.4, 0.3), 'body'),
          ...[-edge, edge - 1].map((x) => solid(rectangle([x, -0.6], 1, 0.6), 'body')),
        ],
        print: { at: [0, -height * 0.54], width: length * 0.88, height: height * 0.74 },
        notes: xs.map((x, i) => ({ text: String(i + 1), at: [x, 4], side: 'below' }) as const),
      },
      {
        name: 'side',
        from: -width / 2,
        shapes: [
          ...pinsBelow(spec, [0]),
          solid(rectangle([-width / 2, -height], width, height - 0.4, 0.3), 'body'),
          ...(sideScrew
            ? [
                solid(ellipse([0, -height * 0.78 + screw], screw), 'metal'),
                { path: slot(0, -height * 0.78 + screw, screw * 0.75), line: 'ink' } as const,
              ]
            : [solid(rectangle([-screw, -height - 1.5], screw * 2, 1.7, 0.2), 'metal')]),
        ],
      },
    ];
  },
};

/** A small square cermet preset with its rotor on top. */
export const singleTurn: Form = {
  name: 'single-turn preset',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const y = -width / 2;
    const rotor = Math.min(length, width) * 0.36;
    const pitch = spec.pitch ?? 2.54;
    return [
      {
        name: 'above',
        from: -edge,
        shapes: [
          solid(rectangle([-edge, -width], length, width, 0.4), 'body'),
          solid(ellipse([0, y], rotor), 'paper'),
          solid(
            polygon(
              [-rotor * 0.8, y - 0.35],
              [rotor * 0.8, y - 0.35],
              [rotor * 0.8, y + 0.35],
              [-rotor * 0.8, y + 0.35],
            ),
            'dark',
          ),
          solid(polygon([rotor * 0.5, y - 1.1], [rotor * 0.95, y], [rotor * 0.5, y + 1.1]), 'dark'),
        ],
      },
      {
        name: 'side',
        from: -edge,
        shapes: [
          ...pinsBelow(spec, [-pitch, 0, pitch]),
          solid(rectangle([-rotor, -height], rotor * 2, height * 0.2), 'paper'),
          solid(rectangle([-edge, -height * 0.88], length, height * 0.88 - 0.4, 0.3), 'body'),
        ],
        print: { at: [0, -height * 0.48], width: length * 0.88, height: height * 0.6 },
        notes: [-pitch, 0, pitch].map(
          (x, i) => ({ text: String(i + 1), at: [x, 4], side: 'below' }) as const,
        ),
      },
    ];
  },
};
