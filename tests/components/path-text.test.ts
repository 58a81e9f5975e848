import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { written } from '../../src/drawing/path-text.ts';
import { ellipse, line, pointsOf, polygon, rectangle, type Path } from '../../src/drawing/path.ts';
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
    // Quarters of a circle go on as they ended: only the first names both of its guides.
    [ellipse([0, 0], 10), 1, 'm10 0c0 5.5-4.5 10-10 10s-10-4.5-10-10s4.5-10 10-10s10 4.5 10 10z'],
    // A curve that turns where it begins names both.
    [
      [
        ['M', [0, 0]],
        ['C', [0, 1], [1, 2], [2, 2]],
        ['C', [2, 3], [3, 4], [4, 4]],
      ],
      1,
      'm0 0c0 1 1 2 2 2c0 1 1 2 2 2',
    ],
    // A round corner that is too small to see is none.
    [
      [
        ['M', [0, 0]],
        ['L', [3, 0]],
        ['C', [3.01, 0], [3.02, 0.01], [3.02, 0.02]],
        ['L', [3.02, 2]],
      ],
      1,
      'm0 0h3v2',
    ],
  ])('%j at %d: %s', (path, scale, text) => {
    expect(written(path, scale, [0, 0])).toBe(text);
  });

  test('is told apart as finely as is asked', () => {
    expect(written(line([0, 0], [1.3, 0], [1.3, 0.7]), 1, [0, 0], 2)).toBe('m0 0h1.5v.5');
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

  test('its curves go where they went', () => {
    const tenths = fc.integer({ min: -300, max: 300 }).map((n) => n / 10);
    const place = fc.tuple(tenths, tenths);
    fc.assert(
      fc.property(
        place,
        fc.array(fc.tuple(place, place, fc.boolean()), { minLength: 1, maxLength: 8 }),
        (start, curves) => {
          let [guide, pen] = [start, start];
          const path: Path = [
            ['M', start],
            ...curves.map(([second, end, goesOn]): Path[number] => {
              const first: typeof start = goesOn
                ? [2 * pen[0] - guide[0], 2 * pen[1] - guide[1]]
                : second;
              [guide, pen] = [second, end];
              return ['C', first, second, end];
            }),
          ];
          const wanted = path.filter((stroke, i) => {
            const from = path[i - 1];
            const before = from === undefined ? undefined : pointsOf(from).at(-1);
            const stays = pointsOf(stroke).every((at) => String(at) === String(before));
            return i < 2 || !stays;
          });
          const read = readPath(written(path, 1, [0, 0])).flatMap(({ places }) => places.flat());
          const meant = wanted.flatMap((stroke) => pointsOf(stroke).flat());
          expect(read).toHaveLength(meant.length);
          for (const [i, number] of meant.entries()) expect(read[i]).toBeCloseTo(number, 6);
        },
      ),
    );
  });
});
