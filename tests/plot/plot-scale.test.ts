import { describe, expect, test } from 'vitest';
import { plotScale } from '../../src/plot/plot-scale.ts';

const MINUTE = 60;
const HOUR = 3600;
const DAY = 24 * HOUR;
const YEAR = 31_557_600;

describe('marks along an axis', () => {
  test.each([
    ['seconds', [0, 90], [0, 20, 40, 60, 80, 100]],
    ['minutes', [0, 5 * MINUTE], [0, 1, 2, 3, 4, 5].map((minutes) => minutes * MINUTE)],
    ['hours', [0, 5.5 * HOUR], [0, 1, 2, 3, 4, 5, 6].map((hours) => hours * HOUR)],
    ['years', [0, 10 * YEAR], [0, 2, 4, 6, 8, 10].map((years) => years * YEAR)],
  ] as const)('count %s', (_, ends, marks) => {
    const scale = plotScale('linear', ends, [0, 600], { isTime: true });
    expect(scale.ticks).toEqual(marks);
    // The axis is rounded out to the marks at its ends.
    expect(scale.at(marks[0])).toBe(0);
    expect(scale.at(marks.at(-1) ?? NaN)).toBeCloseTo(600, 9);
  });

  test('of decades in time are read as minutes and hours', () => {
    const { ticks } = plotScale('log', [0.1, 10 * HOUR], [0, 600], { isTime: true });
    expect(ticks).toEqual([0.1, 1, 10, 60, 600, HOUR, 10 * HOUR]);
  });

  test('of few decades in time have several to a decade', () => {
    const { ticks } = plotScale('log', [58 * DAY, 15.8 * YEAR], [0, 600], { isTime: true });
    expect(ticks).toEqual([100 * DAY, 200 * DAY, ...[1, 2, 5, 10].map((years) => years * YEAR)]);
  });

  test('of decades in anything else are powers of ten', () => {
    const { ticks } = plotScale('log', [10, 1e6], [0, 600]);
    expect(ticks).toEqual([10, 100, 1e3, 1e4, 1e5, 1e6]);
  });
});
