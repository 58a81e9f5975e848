import { leadLength, wire } from '../lead.ts';
import { ellipse, line, polygon, rectangle, segment, type Path } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** A slot for a screwdriver, across or on the slant. */
const slot = (x: number, y: number, reach: number, slant = 0.5): Path => {
  const [dx, dy] = [reach * Math.cos(slant), reach * Math.sin(slant)];
  return line([x - dx, y - dy], [x + dx, y + dy]);
};

const above = (spec: PartSpec): View => {
  const radius = spec.length / 2;
  const y = -spec.width / 2;
  const rotor = Math.min(radius, spec.width / 2) * 0.86;
  return {
    name: 'above',
    from: -radius,
    shapes: [
      solid(rectangle([-radius, -spec.width], spec.length, spec.width, radius * 0.55), 'body'),
      solid(ellipse([0, y], rotor), 'paper'),
      solid(segment([0, y], rotor, rotor, -0.4, Math.PI - 0.4), 'metal'),
      solid(ellipse([0, y], rotor * 0.34), 'metal'),
      { path: slot(0, y, rotor * 0.24), line: 'ink' },
    ],
  };
};

/** Plates one above the other under the screw. */
const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const half = (spec.pitch ?? length * 0.5) / 2;
  const stack = Array.from({ length: 4 }, (_, i) => -height * (0.5 + i * 0.11));
  return {
    name: 'side',
    from: -edge,
    shapes: [
      ...[-half, half].map((x) => wire(spec, [x, -0.2], [x, Math.min(5, leadLength(height))])),
      solid(rectangle([-edge, -height * 0.44], length, height * 0.44, 0.4), 'body'),
      ...stack.map((y) => solid(rectangle([-edge * 0.84, y], edge * 1.68, height * 0.05), 'metal')),
      solid(rectangle([-edge * 0.26, -height], edge * 0.52, height * 0.2, 0.3), 'metal'),
    ],
    print: { at: [0, -height * 0.22], width: length * 0.9, height: height * 0.36 },
  };
};

/** A trimmer capacitor turned by its slot: half-round plates over fixed ones. */
export const rotaryTrimmer: Form = {
  name: 'rotary trimmer',
  views: (spec) => [above(spec), side(spec)],
};

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
          solid(rectangle([-radius, -height], radius * 2, height * 0.16, 0.3), 'metal'),
          inner(line([-radius * 0.2, -height], [-radius * 0.2, -height * 0.9])),
        ],
      },
    ];
  },
};

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
