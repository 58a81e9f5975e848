import { ringOf } from '../cut.ts';
import { line, rectangle, turned, type Path } from '../path.ts';
import { coloured, inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { foilNote, lyingLeads } from './tube.ts';

/** Film that was shrunk by heat over both ends of its roll. */
const outline = (length: number, width: number): Path => {
  const edge = length / 2;
  const neck = Math.min(length * 0.16, width * 0.55);
  const mouth = width * 0.27;
  const profile: Path = [
    ['M', [-edge, mouth - width]],
    [
      'C',
      [-edge + neck * 0.25, mouth * 0.75 - width],
      [-edge + neck * 0.4, -width],
      [-edge + neck, -width],
    ],
    ['L', [edge - neck, -width]],
    [
      'C',
      [edge - neck * 0.4, -width],
      [edge - neck * 0.25, mouth * 0.75 - width],
      [edge, mouth - width],
    ],
  ];
  return turned(profile, ([x, y]) => [x, -width - y]);
};

const front = (spec: PartSpec): View => {
  const { length, width, tip } = spec;
  const edge = length / 2;
  const neck = Math.min(length * 0.16, width * 0.55);
  // The foils end short of the film, each at its own side.
  const foil = { left: -edge + neck * 0.95, right: edge - neck * 0.95 };
  const wide = Math.min(2.2, length * 0.1);
  const body = outline(length, width);
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...lyingLeads(spec, neck),
      solid(rectangle([foil.left, -width * 0.92], foil.right - foil.left, width * 0.84), 'metal'),
      solid(body, 'body'),
      ...[-1, 1].map((side) =>
        inner(
          line(
            [side * (edge - neck * 0.95), -width * 0.92],
            [side * (edge - neck * 0.3), -width * 0.56],
          ),
        ),
      ),
      ...(tip === undefined
        ? []
        : [coloured(ringOf(body, foil.left + 0.2, foil.left + 0.2 + wide), tip, 'tip', 'ink')]),
    ],
    print: {
      at: [tip === undefined ? 0 : wide / 2, -width / 2],
      width: foil.right - foil.left - (tip === undefined ? 0 : wide + 0.6),
      height: width * 0.78,
    },
    notes: spec.polarity === 'outer-foil-band' ? [foilNote(spec, -1)] : [],
  };
};

/** A clear roll of film whose ends were shrunk by heat, the foil seen through it. */
export const filmTube: Form = { name: 'film tube', round: 'lying', views: (spec) => [front(spec)] };
