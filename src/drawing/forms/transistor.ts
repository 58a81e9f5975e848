import { leadLength, wire } from '../lead.ts';
import { ellipse, line, polygon, rectangle, segment, type Point } from '../path.ts';
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
    // From below, the flat side is drawn on top; the leads run as from the front.
    const flat = Math.asin((2 * width - length) / length);
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
          solid(segment([0, -edge], edge, edge, -flat, Math.PI + flat), 'body'),
          ...xs.map((x) => solid(rectangle([x - 0.25, -edge - 0.25], 0.5, 0.5), 'metal')),
        ],
      },
    ];
  },
};

/** Where the tab sticks out, as seen from below: lower left, radians. */
const TAB = (3 * Math.PI) / 4;

/** Angles of the pins, counted clockwise from the tab as seen from below. */
const pinAngles = (count: number): number[] => {
  if (count === 3) return [Math.PI, -Math.PI / 2, 0];
  const step = (2 * Math.PI) / count;
  return Array.from({ length: count }, (_, i) => TAB + (i + 1) * step);
};

/** On which side of a place a word stands that is out from the middle in a direction. */
const sideOf = (angle: number): Note['side'] => {
  if (Math.abs(Math.cos(angle)) > 0.3) return Math.cos(angle) < 0 ? 'left' : 'right';
  return Math.sin(angle) > 0 ? 'below' : 'above';
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
    const at = (angle: number, out: number, aside = 0): Point => [
      out * Math.cos(angle) - aside * Math.sin(angle),
      -edge + out * Math.sin(angle) + aside * Math.cos(angle),
    ];
    const angles = pinAngles(pins);
    const circle = Math.min(ring, edge * 0.62);
    const seen = pins === 3 ? [-ring, 0, ring] : [-ring, -ring * 0.7, 0, ring * 0.7, ring];
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
              at(TAB, edge - 0.3, 0.4),
              at(TAB, edge + 0.8, 0.4),
              at(TAB, edge + 0.8, -0.4),
              at(TAB, edge - 0.3, -0.4),
            ),
            'body',
          ),
          solid(ellipse(middle, edge), 'body'),
          inner(ellipse(middle, cap)),
          ...angles.map((angle) => solid(ellipse(at(angle, circle), 0.35), 'paper')),
        ],
        notes: [0, pins - 1].map((pin): Note => {
          const angle = angles[pin] ?? 0;
          return { text: String(pin + 1), at: at(angle, edge + 0.8), side: sideOf(angle) };
        }),
      },
    ];
  },
};
