import { ringOf } from '../cut.ts';
import { turned, type Path } from '../path.ts';
import { band, paint, solid } from '../shape.ts';
import type { Form } from './form.ts';
import { bandPlaces, endNote, lyingLeads, ring } from './tube.ts';

/** A small round-ended body on a straight wire: glass diode, glass or coated ceramic. */
export const axialBead: Form = {
  name: 'axial bead',
  round: 'lying',
  views: (spec) => {
    const { length, width, bands = [] } = spec;
    const edge = length / 2;
    const end = Math.min(width * 0.5, length * 0.22);
    const profile: Path = [
      ['M', [-edge, -width * 0.64]],
      ['C', [-edge, -width * 0.86], [-edge + end * 0.5, -width], [-edge + end, -width]],
      ['L', [edge - end, -width]],
      ['C', [edge - end * 0.5, -width], [edge, -width * 0.86], [edge, -width * 0.64]],
    ];
    const outline = turned(profile, ([x, y]) => [x, -width - y]);
    const cathode = spec.polarity === 'cathode-band';
    const wide = Math.min(length * 0.12, 0.9);
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...lyingLeads(spec),
          solid(outline, 'body'),
          ...bandPlaces(bands.length, end - edge, edge - end).map((place, i) =>
            band(ringOf(outline, place.x, place.x + place.width), spec, i),
          ),
          ...(cathode ? [paint(ring({ x: edge - end - wide, width: wide }, width), 'print')] : []),
          { path: outline, line: 'ink' },
        ],
        ...(bands.length > 0
          ? {}
          : {
              print: {
                at: [cathode ? -wide / 2 : 0, -width / 2],
                width: length * (cathode ? 0.62 : 0.8),
                height: width * 0.84,
              },
            }),
        notes: cathode ? [endNote(spec, 1, 'cathode')] : [],
      },
    ];
  },
};
