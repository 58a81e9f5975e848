import { ellipse, line, polygon, rectangle, type Point } from '../path.ts';
import { coloured, inner, solid, type Shape, type View } from '../shape.ts';
import type { ColourId, PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { lyingLeads } from './tube.ts';

/** Dots in a row, and on one side of the block. */
const rowOf = (count: number): number => (count === 4 ? 2 : 3);
const A_SIDE = 6;

/** Dots row by row, each row behind an arrow that says in which direction it is read. */
const dotted = (dots: readonly ColourId[], first: number, { length, width }: PartSpec): Shape[] => {
  const row = rowOf(dots.length);
  const rows = Math.ceil(dots.length / row);
  const radius = Math.min(length / 11, (width * 0.7) / (rows * 2.6));
  const heights = Array.from(
    { length: rows },
    (_, i) => -width / 2 + (i - (rows - 1) / 2) * width * 0.42,
  );
  const [tail, head] = [-length * 0.43, -length * 0.33];
  return [
    ...heights.map((y) =>
      inner(polygon([tail, y - radius * 0.8], [head, y], [tail, y + radius * 0.8])),
    ),
    ...dots.map((colour, i) => {
      const x = ((i % row) - (row - 1) / 2) * length * 0.25 + length * 0.04;
      const middle: Point = [x, heights[Math.floor(i / row)] ?? 0];
      return coloured(ellipse(middle, radius), colour, `dots-${String(first + i)}`, 'ink');
    }),
  ];
};

/** A flat side with its dots or its print. */
const face = (spec: PartSpec, dots: readonly ColourId[], first: number): View => {
  const { length, width } = spec;
  const edge = length / 2;
  const bevel = Math.min(0.9, width * 0.07);
  const inset = rectangle(
    [bevel - edge, bevel - width],
    length - 2 * bevel,
    width - 2 * bevel,
    Math.min(0.6, width * 0.05),
  );
  return {
    name: first === 0 ? 'above' : 'below',
    from: -edge,
    shapes: [
      ...lyingLeads(spec),
      solid(rectangle([-edge, -width], length, width, Math.min(1.2, width * 0.1)), 'body'),
      inner(inset),
      ...dotted(dots, first, spec),
    ],
    ...(dots.length > 0
      ? {}
      : { print: { at: [0, -width / 2], width: length * 0.84, height: width * 0.78 } }),
    ...(first === 0 ? {} : { notes: [{ text: 'back', at: [0, -width], side: 'above' }] }),
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
  views: (spec) => {
    const { dots = [] } = spec;
    const behind = dots.slice(A_SIDE);
    return [
      face(spec, dots.slice(0, A_SIDE), 0),
      ...(behind.length > 0 ? [face(spec, behind, A_SIDE)] : [side(spec)]),
    ];
  },
};
