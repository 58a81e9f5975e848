import { ringOf } from '../cut.ts';
import { rectangle } from '../path.ts';
import { band, paint, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { bandPlaces, foilNote, lyingLeads, ring } from './tube.ts';

/** Width of the band at the outer foil, as a share of the length. */
const FOIL_BAND = 0.07;

const front = (spec: PartSpec): View => {
  const { length, width } = spec;
  const left = -length / 2;
  const body = rectangle([left, -width], length, width, Math.min(width * 0.12, 1));
  const bands = bandPlaces(spec.bands?.length ?? 0, left + length * 0.06, -left - length * 0.04);
  const outer = spec.polarity === 'outer-foil-band';
  return {
    name: 'front',
    from: left,
    shapes: [
      ...lyingLeads(spec),
      solid(body, 'body'),
      ...bands.map((place, i) => band(ringOf(body, place.x, place.x + place.width), spec, i)),
      ...(outer
        ? [paint(ring({ x: -left - length * 0.13, width: length * FOIL_BAND }, width), 'print')]
        : []),
      { path: body, line: 'ink' },
    ],
    ...(bands.length > 0
      ? {}
      : {
          print: {
            at: [outer ? -length * 0.05 : 0, -width / 2],
            width: length * (outer ? 0.76 : 0.88),
            height: width * 0.8,
          },
        }),
    notes: outer ? [foilNote(spec, 1)] : [],
  };
};

/** A hard moulded tube with a lead at each end. */
export const axial: Form = { name: 'axial tube', round: 'lying', views: (spec) => [front(spec)] };
