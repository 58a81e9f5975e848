import { line, rectangle, turned, type Path } from '../path.ts';
import { inner, paint, solid, type Note, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { bandPlaces, leadEnd, lyingLeads, ring } from './tube.ts';

/** From above: glass fused over a stack of foils. */
const block = (spec: PartSpec): View => {
  const { length, width } = spec;
  const edge = length / 2;
  const inset = Math.min(1.4, width * 0.16);
  return {
    name: 'above',
    from: -edge,
    shapes: [
      ...lyingLeads(spec, inset),
      solid(
        rectangle([-edge + inset, -width + inset], length - 2 * inset, width - 2 * inset),
        'metal',
      ),
      solid(rectangle([-edge, -width], length, width, Math.min(1, width * 0.12)), 'body'),
    ],
    print: { at: [0, -width / 2], width: length * 0.76, height: width * 0.62 },
  };
};

const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const layers = [0.35, 0.5, 0.65].map((share) => -height * share);
  return {
    name: 'side',
    from: -edge,
    shapes: [
      ...lyingLeads({ ...spec, width: height }),
      solid(rectangle([-edge, -height], length, height, height * 0.2), 'body'),
      ...layers.map((y) => inner(line([-edge * 0.8, y], [edge * 0.8, y]))),
    ],
  };
};

/** A flat block of fused glass with a ribbon or wire at each end. */
export const glassBlock: Form = { name: 'glass block', views: (spec) => [block(spec), side(spec)] };

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
    const notes: Note[] = cathode ? [{ text: 'cathode', at: leadEnd(spec, 1), side: 'above' }] : [];
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...lyingLeads(spec),
          solid(outline, 'body'),
          ...bandPlaces(bands.length, end - edge, edge - end).map((place, i) =>
            paint(ring(place, width), { colour: bands[i] ?? 'none' }),
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
        notes,
      },
    ];
  },
};
