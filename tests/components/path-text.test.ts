import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { written } from '../../src/drawing/path-text.ts';
import { line, pointsOf, polygon, rectangle, type Path } from '../../src/drawing/path.ts';
import { readPath } from './path-places.ts';

describe('an outline in text', () => {
  test.each<[path: Path, scale: number, text: string]>([
    [polygon([1, 2], [4, 2], [4, 6], [1, 6]), 1, 'm1 2h3v4h-3z'],
    // To a tenth of a unit, without noughts before the point, and parted where nothing else does.
    [line([-1.5, -2.25], [0.25, 0.5]), 1, 'm-1.5-2.2l1.8 2.7'],
    [line([0.5, 0.5], [0.75, 0.25]), 1, 'm.5.5l.3-.2'],
    [line([0, 0], [10, 0.5]), 1, 'm0 0l10 .5'],
    [line([1, 1], [2, 3]), 4, 'm4 4l4 8'],
    // Straight strokes that go on are one, those that come back are not.
    [line([0, 0], [1, 0], [2.5, 0], [2.5, 1], [2.5, 4]), 1, 'm0 0h2.5v4'],
    [line([0, 0], [1, 2], [2, 4], [2, 4], [3, 5]), 1, 'm0 0l2 4l1 1'],
    [line([0, 0], [2, 0], [1, 0]), 1, 'm0 0h2h-1'],
    // A stroke that goes nowhere is a dot, and as good as none on a line.
    [line([1, 1], [1, 1]), 1, 'm1 1h0'],
    [line([0, 0], [1, 1], [1.01, 1.01], [1, 3]), 1, 'm0 0l1 1v2'],
    // A second outline counts from where the first began.
    [[...polygon([1, 1], [2, 1], [2, 2]), ...line([5, 1], [5, 3])], 1, 'm1 1h1v1zm4 0v2'],
    [
      [
        ['M', [1, 1]],
        ['C', [1, 2], [2, 3], [4, 3]],
        ['L', [4, 5]],
      ],
      1,
      'm1 1c0 1 1 2 3 2v2',
    ],
  ])('%j at %d: %s', (path, scale, text) => {
    expect(written(path, scale, [0, 0])).toBe(text);
  });

  test('is moved', () => {
    expect(written(line([1, 1], [2, 1]), 2, [3, -4])).toBe('m5-2h2');
  });

  test('a rectangle with round corners comes back to where it began', () => {
    const strokes = readPath(written(rectangle([0, 0], 10, 6, 1), 4, [0, 0]));
    expect(strokes.at(-2)?.places.at(-1)).toEqual(strokes[0]?.places[0]);
  });

  const place = fc.tuple(
    fc.double({ min: -50, max: 50, noNaN: true }),
    fc.double({ min: -50, max: 50, noNaN: true }),
  );
  const lengthOf = (places: readonly (readonly [number, number])[]): number =>
    places.reduce((sum, [x, y], at) => {
      const [fromX, fromY] = places[at - 1] ?? [x, y];
      return sum + Math.hypot(x - fromX, y - fromY);
    }, 0);

  test('is as long as it was, and ends where it ended', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 12 }), (points) => {
        const path = line(...points.flatMap((point) => [point, point]));
        const rounded = path
          .flatMap(pointsOf)
          .map(([x, y]) => [Math.round(x * 40) / 10, Math.round(y * 40) / 10] as const);
        const read = readPath(written(path, 4, [0, 0])).flatMap(({ places }) => places);
        expect(lengthOf(read)).toBeCloseTo(lengthOf(rounded), 6);
        expect(read.at(-1)?.[0]).toBeCloseTo(rounded.at(-1)?.[0] ?? NaN, 6);
        expect(read.at(-1)?.[1]).toBeCloseTo(rounded.at(-1)?.[1] ?? NaN, 6);
      }),
    );
  });
});
