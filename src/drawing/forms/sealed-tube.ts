import { ellipse, line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { endSigns, lyingLeads, roundEnd } from './tube.ts';

/** The seal of glass or rubber and the eyelet in it, beyond the end of the tube, mm. */
const sealOf = (width: number): number => Math.min(1.6, width * 0.16);

const front = (spec: PartSpec): View => {
  const { length, width } = spec;
  const edge = length / 2;
  const seal = sealOf(width);
  const polar = spec.polarity !== undefined && spec.polarity !== 'outer-foil-band';
  const sealed = polar ? [-1] : [-1, 1];
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...lyingLeads(spec),
      ...sealed.flatMap((side) => [
        solid(
          rectangle(
            [side > 0 ? edge - 0.2 : -edge - seal, -width * 0.69],
            seal + 0.2,
            width * 0.38,
          ),
          'paper',
        ),
        solid(
          rectangle(
            [side > 0 ? edge + seal * 0.8 : -edge - seal * 1.8, -width * 0.59],
            seal,
            width * 0.18,
            seal * 0.4,
          ),
          'metal',
        ),
      ]),
      solid(rectangle([-edge, -width], length, width, Math.min(0.8, width * 0.1)), 'body'),
      // Rolled over the seal.
      ...sealed.map((side) => {
        const x = side * (edge - Math.min(1, length * 0.05));
        return inner(line([x, -width], [x, 0]));
      }),
    ],
    print: { at: [0, -width / 2], width: length * 0.8, height: width * 0.82 },
    notes: polar ? endSigns(spec) : [],
  };
};

const end = (spec: PartSpec): View =>
  roundEnd(spec, (middle, radius, wire) => [
    solid(ellipse(middle, radius), 'metal'),
    solid(ellipse(middle, radius * 0.6), 'paper'),
    solid(ellipse(middle, Math.max(wire * 1.8, radius * 0.2)), 'metal'),
    solid(ellipse(middle, wire), 'metal'),
  ]);

/** A metal tube closed by a seal of glass, ceramic or rubber at one end or both. */
export const sealedTube: Form = {
  name: 'sealed metal tube',
  round: 'lying',
  views: (spec) => [front(spec), end(spec)],
};
