import { stripeOf } from '../cut.ts';
import { leadLength, runDown, wire } from '../lead.ts';
import { rectangle } from '../path.ts';
import { band, inner, paint, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Coating that runs down the leads, mm. */
const NECK = 1.4;

/** Radius of the corners as a share of the shorter side. */
const ROUND = 0.34;

const front = (spec: PartSpec): View => {
  const { length, bands = [] } = spec;
  const height = spec.height - NECK;
  const top = -spec.height;
  const half = Math.min((spec.pitch ?? length * 0.8) / 2, length / 2 - 1);
  const end = leadLength(spec.height);
  const corner = Math.min(length, height) * ROUND;
  const outline = rectangle([-length / 2, top], length, height, corner);
  const edge = (x: number): number => {
    const within = Math.min(corner, Math.max(0, Math.abs(x) - (length / 2 - corner)));
    return -NECK - corner + Math.sqrt(corner ** 2 - within ** 2) - 0.12;
  };
  const coats = [-half, half].map((x) => runDown(spec, x, edge, NECK - 0.4));
  const striped = bands.length > 0;
  return {
    name: 'front',
    from: -length / 2,
    shapes: [
      ...[-half, half].map((x) => wire(spec, [x, -NECK], [x, end])),
      ...coats.map((coat) => solid(coat, 'body')),
      solid(outline, 'body'),
      ...bands.map((_, i) => {
        const each = height / bands.length;
        return band(stripeOf(outline, top + i * each, top + (i + 1) * each), spec, i);
      }),
      ...(striped ? [{ path: outline, line: 'ink' } as const] : []),
      ...(striped ? [] : coats.map((coat) => paint(coat, 'body'))),
      ...(spec.finish === 'gloss'
        ? [
            inner([
              ['M', [-length * 0.36, top + height * 0.34]],
              [
                'C',
                [-length * 0.36, top + height * 0.18],
                [-length * 0.3, top + height * 0.13],
                [-length * 0.18, top + height * 0.13],
              ],
            ]),
          ]
        : []),
    ],
    ...(striped
      ? {}
      : { print: { at: [0, top + height / 2], width: length * 0.88, height: height * 0.72 } }),
  };
};

const side = (spec: PartSpec): View => {
  const { width, height } = spec;
  const radius = width / 2;
  const edge = (x: number): number =>
    -NECK - radius + Math.sqrt(Math.max(0, radius ** 2 - x ** 2)) - 0.12;
  const coat = runDown(spec, 0, edge, NECK - 0.4);
  return {
    name: 'side',
    from: -radius,
    shapes: [
      wire(spec, [0, -NECK], [0, leadLength(height)]),
      solid(coat, 'body'),
      solid(rectangle([-radius, -height], width, height - NECK, radius), 'body'),
      paint(coat, 'body'),
    ],
  };
};

/** A flat part dipped in resin: film, mica, multilayer ceramic. */
export const dipped: Form = { name: 'dipped lozenge', views: (spec) => [front(spec), side(spec)] };
