import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axisOver, placeOn } from '../../src/components/range-axis.ts';

describe('the axis over some values', () => {
  test.each<[number[], 'log' | 'linear', number, number, number[]]>([
    [[0.2, 30], 'log', 0.1, 100, [0.1, 1, 10, 100]],
    [[5], 'log', 1, 10, [1, 10]],
    [[0, 4], 'linear', 0, 4, [0, 1, 2, 3, 4]],
    [[-3, 5], 'linear', -3, 5, [-2, 0, 2, 4]],
    [[], 'log', 0, 1, [0, 0.5, 1]],
    // What can be told by no number stands at its end.
    [[0.4, Number.MAX_VALUE], 'log', 0.1, 1, [0.1, 1]],
    [[0.4, Infinity], 'log', 0.1, 1, [0.1, 1]],
    [[2, Number.MAX_VALUE], 'linear', 0, 2, [0, 0.5, 1, 1.5, 2]],
  ])('%j, %s: %f to %f', (values, scale, min, max, ticks) => {
    const axis = axisOver(values, scale);
    expect([axis.min, axis.max, axis.ticks]).toEqual([min, max, ticks]);
    for (const value of values) expect(placeOn(axis, value)).toBeLessThanOrEqual(1);
  });

  test('has marks between its ends, whatever the values', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ noNaN: true }), { maxLength: 6 }),
        fc.constantFrom('log' as const, 'linear' as const),
        (values, scale) => {
          const axis = axisOver(values, scale);
          expect(axis.max).toBeGreaterThan(axis.min);
          expect(axis.ticks.length).toBeGreaterThan(0);
          for (const tick of axis.ticks) {
            expect(tick).toBeGreaterThanOrEqual(axis.min * (axis.min < 0 ? 1.001 : 0.999));
            expect(tick).toBeLessThanOrEqual(axis.max * (axis.max < 0 ? 0.999 : 1.001));
          }
        },
      ),
    );
  });
});
