import { ringOf } from '../cut.ts';
import { rectangle, turned, type Path } from '../path.ts';
import { band, solid, type View } from '../shape.ts';
import type { Form } from './form.ts';
import { bandPlaces, lyingLeads } from './tube.ts';

/** A coated rod with caps that stand out a little at both ends. */
const dogBone = (length: number, width: number): Path => {
  const half = length / 2;
  const cap = Math.min(length * 0.24, width);
  const waist = width * 0.09;
  const edge = width * 0.28;
  const profile: Path = [
    ['M', [-half, edge - width]],
    ['C', [-half, edge * 0.4 - width], [edge * 0.4 - half, -width], [edge - half, -width]],
    ['L', [cap * 0.7 - half, -width]],
    ['C', [cap - half, -width], [cap - half, waist - width], [cap * 1.25 - half, waist - width]],
    ['L', [half - cap * 1.25, waist - width]],
    ['C', [half - cap, waist - width], [half - cap, -width], [half - cap * 0.7, -width]],
    ['L', [half - edge, -width]],
    ['C', [half - edge * 0.4, -width], [half, edge * 0.4 - width], [half, edge - width]],
  ];
  return turned(profile, ([x, y]) => [x, -width - y]);
};

/** A film resistor: coated rod with end caps. */
export const resistor: Form = {
  name: 'resistor',
  round: 'lying',
  views: (spec) => {
    const { length, width } = spec;
    const inset = length * 0.07;
    const bands = bandPlaces(spec.bands?.length ?? 0, inset - length / 2, length / 2 - inset / 2);
    const outline = dogBone(length, width);
    const view: View = {
      name: 'front',
      from: -length / 2,
      shapes: [
        ...lyingLeads(spec),
        solid(outline, 'body'),
        ...bands.map((place, i) => band(ringOf(outline, place.x, place.x + place.width), spec, i)),
        { path: outline, line: 'ink' },
      ],
      ...(bands.length > 0
        ? {}
        : { print: { at: [0, -width / 2], width: length * 0.8, height: width * 0.74 } }),
    };
    return [view];
  },
};

/** A carbon composition resistor: a moulded rod with sharp ends. */
export const composition: Form = {
  name: 'composition resistor',
  round: 'lying',
  views: (spec) => {
    const { length, width } = spec;
    const body = rectangle([-length / 2, -width], length, width, width * 0.06);
    const bands = bandPlaces(spec.bands?.length ?? 0, -length * 0.48, length * 0.46);
    return [
      {
        name: 'front',
        from: -length / 2,
        shapes: [
          ...lyingLeads(spec),
          solid(body, 'body'),
          ...bands.map((place, i) => band(ringOf(body, place.x, place.x + place.width), spec, i)),
          { path: body, line: 'ink' },
        ],
      },
    ];
  },
};
