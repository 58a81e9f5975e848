import { ellipse, line, polygon, rectangle, type Point } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { ColourId, PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { lyingLeads } from './tube.ts';

/** Dots in a row. */
const ROW = 3;

/** Dots row by row, and the arrow that says in which direction they are read. */
const dotted = (dots: readonly ColourId[], { length, width }: PartSpec): Shape[] => {
  const rows = Math.ceil(dots.length / ROW);
  const radius = Math.min(length / 11, (width * 0.7) / (rows * 2.6));
  const places = dots.map((_, i): Point => {
    const [row, column] = [Math.floor(i / ROW), i % ROW];
    return [
      (column - (ROW - 1) / 2) * length * 0.25 + length * 0.04,
      -width / 2 + (row - (rows - 1) / 2) * width * 0.42,
    ];
  });
  const [tail, head] = [-length * 0.43, -length * 0.33];
  const arrows = Array.from({ length: rows }, (_, row) => {
    const y = -width / 2 + (row - (rows - 1) / 2) * width * 0.42;
    const tall = radius * 0.8;
    return inner(polygon([tail, y - tall], [head, y], [tail, y + tall]));
  });
  return [
    ...arrows,
    ...dots.map((colour, i) => solid(ellipse(places[i] ?? [0, 0], radius), { colour })),
  ];
};

/** From above: the flat side with its dots or its print. */
const above = (spec: PartSpec): View => {
  const { length, width, dots = [] } = spec;
  const edge = length / 2;
  const bevel = Math.min(0.9, width * 0.07);
  return {
    name: 'above',
    from: -edge,
    shapes: [
      ...lyingLeads(spec),
      solid(rectangle([-edge, -width], length, width, Math.min(1.2, width * 0.1)), 'body'),
      inner(
        rectangle(
          [bevel - edge, bevel - width],
          length - 2 * bevel,
          width - 2 * bevel,
          Math.min(0.6, width * 0.05),
        ),
      ),
      ...dotted(dots, spec),
    ],
    ...(dots.length > 0
      ? {}
      : { print: { at: [0, -width / 2], width: length * 0.84, height: width * 0.78 } }),
  };
};

/** From the side: two halves, the leads between them. */
const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const thin = { ...spec, width: height };
  return {
    name: 'side',
    from: -edge,
    shapes: [
      ...lyingLeads(thin),
      solid(rectangle([-edge, -height], length, height, height * 0.16), 'body'),
      inner(line([-edge, -height / 2], [edge, -height / 2])),
    ],
  };
};

/** A flat moulded block with a lead at each end, as foil mica and some paper come. */
export const moulded: Form = {
  name: 'flat moulded block',
  views: (spec) => [above(spec), side(spec)],
};
