import { leadLength, wire } from '../lead.ts';
import { ellipse, line, mapped, polygon, rectangle, segment, type Point } from '../path.ts';
import { inner, solid, type Note } from '../shape.ts';
import type { Form } from './form.ts';

/** A plastic body with one flat side, three leads in a row. */
export const flatSided: Form = {
  name: 'flat-sided transistor',
  views: (spec) => {
    const { length, width, height } = spec;
    const pitch = spec.pitch ?? 1.27;
    const xs = [-pitch, 0, pitch];
    const end = leadLength(height) + 3;
    const edge = length / 2;
    const flat = Math.asin(Math.max(-1, Math.min(1, 1 - (2 * (length - width)) / length)));
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...xs.map((x) => wire({ ...spec, leadWire: spec.leadWire ?? 0.45 }, [x, -0.2], [x, end])),
          solid(rectangle([-edge, -height], length, height, 0.2), 'body'),
          inner(line([-edge * 0.8, -height], [-edge * 0.8, 0])),
          inner(line([edge * 0.8, -height], [edge * 0.8, 0])),
        ],
        print: { at: [0, -height / 2], width: length * 0.76, height: height * 0.84 },
        notes: xs.map((x, i): Note => ({ text: String(i + 1), at: [x, end], side: 'below' })),
      },
      {
        name: 'below',
        from: -edge,
        shapes: [
          solid(
            mapped(segment([0, -edge], edge, edge, flat, Math.PI - flat), ([x, y]) => [
              x,
              -length - y + edge * (1 - Math.sin(flat)) * 0,
            ]),
            'body',
          ),
          ...xs.map((x) => solid(rectangle([x - 0.25, -width * 0.55], 0.5, 0.5), 'metal')),
        ],
      },
    ];
  },
};

/** Places of pins round a metal can, counted clockwise from the tab as seen from below. */
const pinPlaces = (count: number, ring: number, middle: Point): Point[] => {
  const step = count === 3 ? Math.PI / 2 : (2 * Math.PI) / count;
  const first = count === 3 ? Math.PI : (3 * Math.PI) / 4 - step;
  return Array.from({ length: count }, (_, i): Point => {
    const angle = count === 3 ? first + i * step : (3 * Math.PI) / 4 + (i + 1) * step;
    return [middle[0] + ring * Math.cos(angle), middle[1] + ring * Math.sin(angle)];
  });
};

/** A round metal can with a tab, three leads or eight. */
export const metalCan: Form = {
  name: 'metal can with a tab',
  round: 'upright',
  views: (spec) => {
    const { length, height } = spec;
    const edge = length / 2;
    const pins = spec.pins ?? 3;
    const cap = edge * 0.88;
    const end = leadLength(height) + 4;
    const ring = (spec.pitch ?? 5.08) / 2;
    const thin = { ...spec, leadWire: spec.leadWire ?? 0.45 };
    const middle: Point = [0, -edge];
    const places = pinPlaces(pins, Math.min(ring, edge * 0.7), middle);
    const seen = pins === 3 ? [-ring, 0, ring] : [-ring, -ring * 0.7, 0, ring * 0.7, ring];
    const tabAngle = (3 * Math.PI) / 4;
    const tab = (out: number, side: number): Point => [
      out * Math.cos(tabAngle) - side * Math.sin(tabAngle),
      -edge + out * Math.sin(tabAngle) + side * Math.cos(tabAngle),
    ];
    return [
      {
        name: 'front',
        from: -edge,
        shapes: [
          ...seen.map((x) => wire(thin, [x, -0.2], [x, end])),
          solid(rectangle([-cap, -height], cap * 2, height, [0.8, 0.8, 0, 0]), 'body'),
          solid(
            rectangle(
              [-edge, -Math.min(1, height * 0.16)],
              length,
              Math.min(1, height * 0.16),
              0.3,
            ),
            'body',
          ),
        ],
        print: { at: [0, -height * 0.56], width: cap * 1.8, height: height * 0.74 },
      },
      {
        name: 'below',
        from: -edge,
        shapes: [
          solid(
            polygon(
              tab(edge - 0.3, 0.4),
              tab(edge + 0.8, 0.4),
              tab(edge + 0.8, -0.4),
              tab(edge - 0.3, -0.4),
            ),
            'body',
          ),
          solid(ellipse(middle, edge), 'body'),
          inner(ellipse(middle, cap)),
          ...places.map((place) => solid(ellipse(place, 0.3), 'metal')),
        ],
        notes: places
          .map((place, i): Note => {
            const out: Point = [
              middle[0] + (place[0] - middle[0]) * 1.5,
              middle[1] + (place[1] - middle[1]) * 1.5 + 0.5,
            ];
            return { text: String(i + 1), at: out, side: 'right' };
          })
          .filter((_, i) => i === 0 || i === pins - 1),
      },
    ];
  },
};
