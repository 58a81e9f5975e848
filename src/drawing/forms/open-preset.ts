import { arc, ellipse, line, rectangle, type Path, type Point } from '../path.ts';
import { solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Half of the gap in the track, radians. */
const GAP = 0.7;

/** A horseshoe: the track of carbon, open below. */
const track = ([x, y]: Point, outer: number, inside: number): Path => {
  const [from, to] = [Math.PI / 2 + GAP, Math.PI / 2 - GAP + 2 * Math.PI];
  const back = arc([x, y], inside, inside, to, from).map((stroke): Path[number] =>
    stroke[0] === 'M' ? ['L', stroke[1]] : stroke,
  );
  return [...arc([x, y], outer, outer, from, to), ...back, ['Z']];
};

/** From the front: an upright board with its track, wiper and three tags. */
const front = (spec: PartSpec): View => {
  const { length, height } = spec;
  const radius = Math.min(length, height) / 2;
  const middle: Point = [0, -height + radius];
  const half = (spec.pitch ?? 5) / 2;
  const tag = (x: number): Shape =>
    solid(rectangle([x - 0.6, -1], 1.2, 5, [0, 0, 0.5, 0.5]), 'metal');
  const angle = -Math.PI / 3;
  const reach: Point = [
    middle[0] + radius * 0.76 * Math.cos(angle),
    middle[1] + radius * 0.76 * Math.sin(angle),
  ];
  return {
    name: 'front',
    from: -radius,
    shapes: [
      ...[-half, 0, half].map(tag),
      solid(ellipse(middle, radius), 'body'),
      solid(rectangle([-half - 1.2, -radius * 0.7], 2 * half + 2.4, radius * 0.7, 0.5), 'body'),
      solid(track(middle, radius * 0.88, radius * 0.6), 'dark'),
      solid(ellipse(middle, radius * 0.3), 'metal'),
      {
        path: line([middle[0] - radius * 0.2, middle[1]], [middle[0] + radius * 0.2, middle[1]]),
        line: 'ink',
      },
      solid(
        [
          ...line(
            [middle[0] + 0.5, middle[1] - radius * 0.28],
            [reach[0] + 0.5, reach[1]],
            [reach[0] - 0.7, reach[1] - 0.3],
            [middle[0] - 0.6, middle[1] - radius * 0.29],
          ),
          ['Z'],
        ],
        'metal',
      ),
    ],
    notes: [-half, 0, half].map(
      (x, i) => ({ text: String(i + 1), at: [x, 4], side: 'below' }) as const,
    ),
  };
};

/** An open preset: a horseshoe of carbon on a board, its wiper in the open. */
export const openPreset: Form = { name: 'open preset', views: (spec) => [front(spec)] };
