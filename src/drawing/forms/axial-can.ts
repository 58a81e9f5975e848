import { ellipse, line, rectangle, turned, type Path } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { endSigns, lyingLeads, roundEnd } from './tube.ts';

/** How far from the end the groove is rolled, mm. */
const grooveAt = (length: number): number => Math.min(length * 0.14, 3);

/** A lying can with a rolled groove at its left end, or at both. */
const outline = (length: number, width: number, both: boolean): Path => {
  const half = length / 2;
  const edge = Math.min(width * 0.1, 1);
  const wide = Math.min(length * 0.04, 0.9);
  const deep = Math.min(width * 0.08, 0.9);
  const groove = (x: number): Path => [
    ['L', [x - wide, -width]],
    ['C', [x - wide * 0.4, -width], [x - wide * 0.5, deep - width], [x, deep - width]],
    ['C', [x + wide * 0.5, deep - width], [x + wide * 0.4, -width], [x + wide, -width]],
  ];
  const profile: Path = [
    ['M', [-half, edge - width]],
    ['C', [-half, edge * 0.4 - width], [edge * 0.4 - half, -width], [edge - half, -width]],
    ...groove(grooveAt(length) - half),
    ...(both ? groove(half - grooveAt(length)) : []),
    ['L', [half - edge, -width]],
    ['C', [half - edge * 0.4, -width], [half, edge * 0.4 - width], [half, edge - width]],
  ];
  return turned(profile, ([x, y]) => [x, -width - y]);
};

/** Arrows along the can that point at the minus end. */
const arrows = (length: number, width: number): Shape[] => {
  const y = -width * 0.16;
  return [0.02, 0.26].map((share) => {
    const x = length * share;
    const reach = Math.min(length * 0.14, 4);
    const head = Math.min(width * 0.08, 0.8);
    return inner([
      ...line([x, y], [x + reach, y]),
      ...line([x + reach - head, y - head], [x + reach, y], [x + reach - head, y + head]),
    ]);
  });
};

const front = (spec: PartSpec): View => {
  const { length, width } = spec;
  const polar = spec.polarity !== undefined;
  const at = grooveAt(length) - length / 2;
  return {
    name: 'front',
    from: -length / 2,
    shapes: [
      ...lyingLeads(spec),
      solid(outline(length, width, !polar), 'body'),
      inner(line([at, -width * 0.94], [at, -width * 0.06])),
      ...(spec.polarity === 'arrow-minus' ? arrows(length, width) : []),
    ],
    print: {
      at: [polar ? length * 0.05 : 0, -width * (spec.polarity === 'arrow-minus' ? 0.6 : 0.5)],
      width: length * 0.72,
      height: width * (spec.polarity === 'arrow-minus' ? 0.6 : 0.8),
    },
    notes: polar ? endSigns(spec) : [],
  };
};

/** The end where the plus lead comes out of its seal. */
const end = (spec: PartSpec): View =>
  roundEnd(spec, (middle, radius, wire) => [
    solid(ellipse(middle, radius), 'metal'),
    solid(ellipse(middle, radius * 0.8), 'dark'),
    solid(rectangle([-wire, -radius - wire], wire * 2, wire * 2, wire), 'metal'),
  ]);

/** A lying aluminium can, its plus end grooved over a rubber seal. */
export const axialCan: Form = {
  name: 'axial can',
  round: 'lying',
  views: (spec) => [front(spec), end(spec)],
};
