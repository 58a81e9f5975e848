import { polygon, type Path, type Point } from './path.ts';
import { solid, type Note, type Shape } from './shape.ts';
import type { PartSpec } from './spec.ts';

/** Across a wire where nothing is said, mm. */
const USUAL_WIRE = 0.6;

/** Across the wire of a part, mm. */
export const wireOf = ({ leadWire }: PartSpec): number => leadWire ?? USUAL_WIRE;

const unit = ([ax, ay]: Point, [bx, by]: Point): Point => {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(bx - ax) / length, (by - ay) / length];
};

/** A wire along places, so many millimetres thick, with mitred bends. */
const wirePath = (points: readonly Point[], thickness: number): Path => {
  const side = (sign: number): Point[] =>
    points.map((point, i) => {
      const before = unit(points[i - 1] ?? point, i === 0 ? (points[1] ?? point) : point);
      const after = i === points.length - 1 ? before : unit(point, points[i + 1] ?? point);
      const [nx, ny] = [-(before[1] + after[1]) / 2, (before[0] + after[0]) / 2];
      const square = nx * nx + ny * ny || 1;
      const reach = (sign * thickness) / 2 / square;
      return [point[0] + nx * reach, point[1] + ny * reach];
    });
  return polygon(...side(1), ...side(-1).reverse());
};

/** A wire along places. */
export const wire = (spec: PartSpec, ...points: Point[]): Shape =>
  solid(wirePath(points, wireOf(spec)), 'metal');

/** How far leads are drawn, mm: cut to fit the page, longer for larger parts. */
export const leadLength = (height: number): number => Math.min(9, Math.max(5, height * 0.6));

/** The lower edge of a coated body: how far down it reaches at a place across, mm. */
export type Edge = (x: number) => number;

/**
 * Coating that has run down a lead, from the edge of the body to the lead itself; so far below the
 * lowest place where it leaves the body.
 */
export const runDown = (spec: PartSpec, x: number, edge: Edge, length: number): Path => {
  const thin = wireOf(spec) * 0.75;
  const wide = thin + 0.45;
  const [left, right] = [edge(x - wide), edge(x + wide)];
  const end = Math.max(left, right, edge(x)) + length;
  return [
    ['M', [x - wide, left]],
    [
      'C',
      [x - thin - 0.1, left + (end - left) * 0.3],
      [x - thin, end - length * 0.5],
      [x - thin, end],
    ],
    ['L', [x + thin, end]],
    [
      'C',
      [x + thin, end - length * 0.5],
      [x + thin + 0.1, right + (end - right) * 0.3],
      [x + wide, right],
    ],
    ['L', [x, Math.min(left, right) - 0.4]],
    ['Z'],
  ];
};

/** A sign below the end of a lead. */
export const signBelow = (text: string, at: Point): Note => ({ text, at, side: 'below' });
