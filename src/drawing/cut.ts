import { polygon, type Path, type Point } from './path.ts';

/** Straight pieces that a curve is taken in; and that a cut edge is made of. */
const PIECES = 12;

/** Places along an outline, near enough to one another to stand for it. */
const sampled = (outline: Path): Point[] => {
  const points: Point[] = [];
  for (const stroke of outline) {
    const start = points.at(-1);
    if (stroke[0] === 'Z') {
      if (points[0] !== undefined) points.push(points[0]);
    } else if (stroke[0] === 'C' && start !== undefined) {
      const [, a, b, end] = stroke;
      for (let i = 1; i <= PIECES; i++) {
        const t = i / PIECES;
        const s = 1 - t;
        const mix = (axis: 0 | 1): number =>
          s ** 3 * start[axis] +
          3 * s * s * t * a[axis] +
          3 * s * t * t * b[axis] +
          t ** 3 * end[axis];
        points.push([mix(0), mix(1)]);
      }
    } else if (stroke[0] !== 'C') {
      points.push(stroke[1]);
    }
  }
  return points;
};

/** How far an outline reaches to both sides, where it is cut at a place along an axis. */
const reach = (points: readonly Point[], axis: 0 | 1, at: number): [number, number] | undefined => {
  const other = axis === 0 ? 1 : 0;
  const hits = points.slice(1).flatMap((b, i): number[] => {
    const a = points[i] ?? b;
    const [low, high] = [Math.min(a[axis], b[axis]), Math.max(a[axis], b[axis])];
    if (at < low || at > high || low === high) return [];
    return [a[other] + ((at - a[axis]) / (b[axis] - a[axis])) * (b[other] - a[other])];
  });
  return hits.length === 0 ? undefined : [Math.min(...hits), Math.max(...hits)];
};

const cut = (outline: Path, axis: 0 | 1, from: number, to: number): Path => {
  const points = sampled(outline);
  // A hair inside, so that a cut along the very edge still meets the outline.
  const hair = (to - from) * 1e-3;
  const steps = Array.from({ length: PIECES + 1 }, (_, i) => {
    const at = from + hair + ((to - from - 2 * hair) * i) / PIECES;
    return { at, ends: reach(points, axis, at) };
  });
  const side = (which: 0 | 1): Point[] =>
    steps.flatMap(({ at, ends }): Point[] => {
      if (ends === undefined) return [];
      return [axis === 0 ? [at, ends[which]] : [ends[which], at]];
    });
  return polygon(...side(0), ...side(1).reverse());
};

/** What of a closed outline lies between two heights, as a stripe from side to side. */
export const stripeOf = (outline: Path, from: number, to: number): Path =>
  cut(outline, 1, from, to);

/** What of a closed outline lies between two places along it, as a ring round a lying part. */
export const ringOf = (outline: Path, from: number, to: number): Path => cut(outline, 0, from, to);
