import fc from 'fast-check';
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

  test.each<[what: string, ends: [number, number], marks: number[]]>([
    ['two decades have 1, 2 and 5', [1, 100], [1, 2, 5, 10, 20, 50, 100]],
    ['rounding hides no end', [0.1 * (1 + 1e-12), 10], [0.1, 0.2, 0.5, 1, 2, 5, 10]],
    ['of many every second', [1e-9, 1], [1e-9, 1e-7, 1e-5, 1e-3, 0.1]],
    ['two are enough', [9, 22], [10, 20]],
    // A piece of a decade has round marks between, wherever in the decade it lies.
    ['from 6 to 9', [6.1, 9.4], [7, 8, 9]],
    ['from 24 to 59', [24, 59], [30, 40, 50]],
    ['from 31.6 to 38.2', [31.6, 38.2], [32, 34, 36, 38]],
    // Where the usual step has one mark alone, a shorter one is taken.
    ['just above a mark', [0.0951000001, 0.0951952], [0.09512, 0.09514, 0.09516, 0.09518]],
  ])('of decades: %s', (_what, ends, marks) => {
    const { at, ticks } = plotScale('log', ends, [100, 0]);
    expect(ticks).toEqual(marks);
    expect(at(ends[0])).toBeCloseTo(100, 9);
    expect(at(Math.sqrt(ends[0] * ends[1]))).toBeCloseTo(50, 9);
    expect(at(ends[1])).toBeCloseTo(0, 9);
  });

  test.each<[what: string, ends: [number, number], first: number, last: number, marks: number[]]>([
    ['steps of 2', [0, 11], 0, 12, [0, 2, 4, 6, 8, 10, 12]],
    [
      'steps of 0.1 without what a sum leaves behind',
      [0, 0.5],
      0,
      0.5,
      [0, 0.1, 0.2, 0.3, 0.4, 0.5],
    ],
    ['both sides of nought', [-0.7, 2.3], -1, 2.5, [-1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5]],
    ['very small', [0, 4.1e-12], 0, 5e-12, [0, 1e-12, 2e-12, 3e-12, 4e-12, 5e-12]],
    // Ten times a decade and the next one are the same step, whatever a power leaves behind.
    [
      'a step at the end of a decade',
      [5.063_999_999_999e-11, 5.063_999_999_999e-11 * 1.001],
      5.064e-11,
      5.07e-11,
      [5.064e-11, 5.065e-11, 5.066e-11, 5.067e-11, 5.068e-11, 5.069e-11, 5.07e-11],
    ],
    // Rounding out may ask for a longer step.
    ['a wider span', [0.9, 8.6], 0, 10, [0, 2, 4, 6, 8, 10]],
  ])('of a plain axis: %s', (_what, ends, first, last, marks) => {
    const { at, ticks } = plotScale('linear', ends, [0, 600]);
    expect(ticks).toEqual(marks);
    expect(at(first)).toBeCloseTo(0, 9);
    expect(at(last)).toBeCloseTo(600, 9);
  });

  test.each(['log', 'linear'] as const)('of one number stand halfway: %s', (kind) => {
    const { at, ticks } = plotScale(kind, [3, 3], [0, 600]);
    expect(at(3)).toBe(300);
    expect(ticks).toEqual([3]);
  });

  test('are few, rise, lie within the axis and never want on it', () => {
    const size = fc.double({ min: 1e-12, max: 1e12, noNaN: true });
    const wider = fc.double({ min: 1.001, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(size, wider, fc.boolean(), fc.boolean(), (from, times, isLog, isTime) => {
        const ends = [from, from * times] as const;
        const { at, ticks } = plotScale(isLog ? 'log' : 'linear', ends, [0, 600], { isTime });
        expect(ticks.length).toBeGreaterThan(1);
        expect(ticks.length).toBeLessThan(14);
        const places = ticks.map(at);
        expect(places).toEqual(places.toSorted((a, b) => a - b));
        for (const place of places) {
          expect(place).toBeGreaterThan(-1e-3);
          expect(place).toBeLessThan(600.001);
        }
      }),
    );
  });
});
