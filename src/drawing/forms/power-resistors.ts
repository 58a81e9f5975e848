import { ellipse, line, polygon, rectangle } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { Form } from './form.ts';
import { lyingLeads } from './tube.ts';

/** A wire-wound resistor set in a ceramic trough with cement. */
export const cement: Form = {
  name: 'cement resistor',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const standing = { ...spec, width: height };
    const view: View = {
      name: 'front',
      from: -edge,
      shapes: [
        ...lyingLeads(standing),
        solid(rectangle([-edge, -height], length, height, 0.5), 'body'),
        inner(line([-edge, -height * 0.86], [edge, -height * 0.86])),
      ],
      print: { at: [0, -height * 0.44], width: length * 0.9, height: height * 0.7 },
    };
    const end: View = {
      name: 'side',
      from: -width / 2,
      shapes: [
        solid(rectangle([-width / 2, -height], width, height, 0.5), 'body'),
        inner(rectangle([-width * 0.34, -height], width * 0.68, height * 0.8)),
        solid(ellipse([0, -height / 2], (spec.leadWire ?? 0.8) / 2), 'metal'),
      ],
    };
    return [view, end];
  },
};

/** A wire-wound resistor in a finned metal shell that is screwed down. */
export const metalClad: Form = {
  name: 'metal-clad resistor',
  views: (spec) => {
    const { length, width, height } = spec;
    const edge = length / 2;
    const body = length * 0.62;
    const fins = [0.25, 0.4, 0.6, 0.75].map((share) => -width * share);
    const lug = (side: number): Shape[] => [
      solid(
        rectangle(
          [side > 0 ? body / 2 - 0.2 : -edge, -width * 0.6],
          edge - body / 2 + 0.2,
          width * 0.2,
          0.6,
        ),
        'metal',
      ),
      solid(ellipse([side * (edge - 1.8), -width / 2], 0.8), 'paper'),
    ];
    return [
      {
        name: 'above',
        from: -edge,
        shapes: [
          ...[-1, 1].flatMap(lug),
          solid(rectangle([-body / 2, -width], body, width, 0.6), 'body'),
          ...fins.map((y) => inner(line([-body / 2, y], [body / 2, y]))),
          ...[-1, 1].map((side) =>
            solid(
              ellipse([side * body * 0.38, side > 0 ? -width * 0.11 : -width * 0.89], width * 0.07),
              'paper',
            ),
          ),
        ],
        print: { at: [0, -width / 2], width: body * 0.9, height: width * 0.19 },
      },
      {
        name: 'side',
        from: -width / 2,
        shapes: [
          solid(
            polygon(
              [-width / 2, 0],
              [-width / 2, -height * 0.22],
              [-width * 0.3, -height * 0.26],
              [-width * 0.3, -height * 0.9],
              [-width * 0.2, -height],
              [width * 0.2, -height],
              [width * 0.3, -height * 0.9],
              [width * 0.3, -height * 0.26],
              [width / 2, -height * 0.22],
              [width / 2, 0],
            ),
            'body',
          ),
          solid(ellipse([0, -height * 0.54], height * 0.26), 'paper'),
          solid(ellipse([0, -height * 0.54], height * 0.1), 'metal'),
        ],
      },
    ];
  },
};
