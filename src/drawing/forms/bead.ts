import { leadLength, signBelow, wire } from '../lead.ts';
import { stripeOf } from '../cut.ts';
import { ellipse, line, type Path } from '../path.ts';
import { band, coloured, inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** A drop that hangs from above: round on top, drawn in to where the leads come out. */
const drop = (width: number, height: number, neck: number): Path => {
  const half = width / 2;
  return [
    ['M', [-neck, 0]],
    ['C', [-neck, -height * 0.2], [-half, -height * 0.3], [-half, -height * 0.58]],
    ['C', [-half, -height * 0.83], [-half * 0.6, -height], [0, -height]],
    ['C', [half * 0.6, -height], [half, -height * 0.83], [half, -height * 0.58]],
    ['C', [half, -height * 0.3], [neck, -height * 0.2], [neck, 0]],
    ['C', [neck * 0.6, -height * 0.06], [-neck * 0.6, -height * 0.06], [-neck, 0]],
    ['Z'],
  ];
};

/** Heights of the coloured places, as shares of the whole: the top, a band below it, one by the leads. */
const PLACES = { top: [0.78, 1], below: [0.62, 0.72], leads: [0.1, 0.26] } as const;

/** Top, bands and spot of a bead that is marked in colours. */
const colours = (spec: PartSpec, outline: Path): Shape[] => {
  const { height, tip, bands = [], dots = [] } = spec;
  const stripe = ([from, to]: readonly [number, number]): Path =>
    stripeOf(outline, -height * to, -height * from);
  const places = bands.length === 1 ? [PLACES.leads] : [PLACES.below, PLACES.leads];
  return [
    ...(tip === undefined ? [] : [coloured(stripe(PLACES.top), tip, 'tip', 'ink')]),
    ...places.slice(0, bands.length).map((place, i) => band(stripe(place), spec, i)),
    ...dots
      .slice(0, 1)
      .map((dot) =>
        coloured(ellipse([0, -height * 0.45], spec.length * 0.16), dot, 'dots-0', 'ink'),
      ),
  ];
};

const front = (spec: PartSpec): View => {
  const { length, height } = spec;
  const half = (spec.pitch ?? 2.5) / 2;
  const neck = Math.min(length * 0.42, Math.max(1, Math.min(half, length * 0.28) + 0.45));
  const leaves = Math.min(half, neck - 0.4);
  const end = leadLength(height);
  const outline = drop(length, height, neck);
  const marked = colours(spec, outline);
  const lead = (side: number, longer: number) =>
    wire(
      spec,
      [side * leaves, -0.6],
      [side * leaves, 0.3],
      ...(half > leaves ? [[side * half, 0.3 + half - leaves] as const] : []),
      [side * half, end + longer],
    );
  return {
    name: 'front',
    from: -length / 2,
    shapes: [
      lead(-1, 1.5),
      lead(1, 0),
      solid(outline, 'body'),
      ...marked,
      { path: outline, line: 'ink' },
      ...(spec.polarity === 'plus-mark'
        ? [
            inner([
              ...line([-length * 0.26, -height * 0.3], [-length * 0.06, -height * 0.3]),
              ...line(
                [-length * 0.16, -height * 0.3 - length * 0.1],
                [-length * 0.16, -height * 0.3 + length * 0.1],
              ),
            ]),
          ]
        : []),
      ...(spec.finish === 'gloss'
        ? [
            inner([
              ['M', [-length * 0.33, -height * 0.66]],
              [
                'C',
                [-length * 0.32, -height * 0.78],
                [-length * 0.24, -height * 0.86],
                [-length * 0.14, -height * 0.89],
              ],
            ]),
          ]
        : []),
    ],
    ...(marked.length > 0
      ? {}
      : {
          print: { at: [0, -height * 0.58] as const, width: length * 0.8, height: height * 0.42 },
        }),
    notes:
      spec.polarity === undefined
        ? []
        : [signBelow('+', [-half, end + 1.5]), signBelow('−', [half, end])],
  };
};

/** A bead of resin on two leads, as solid tantalum is dipped. */
export const bead: Form = { name: 'dipped bead', round: 'upright', views: (spec) => [front(spec)] };
