import { describe, expect, test } from 'vitest';
import { bandBetween, lineThrough } from '../../src/plot/outline.ts';

describe('outlines of curves', () => {
  test('run straight, or keep their height until the next place', () => {
    const places = [
      [0, 10],
      [5.04, 7],
      [9, 7.25],
    ] as const;
    expect(lineThrough(places, 'line')).toBe('M0.0 10.0L5.0 7.0L9.0 7.3');
    expect(lineThrough(places, 'steps')).toBe('M0.0 10.0H5.0V7.0H9.0V7.3');
    expect(lineThrough([], 'line')).toBe('');
  });

  test('a band goes along one side and back along the other', () => {
    const [low, high] = [
      [
        [0, 4],
        [8, 2],
      ],
      [
        [0, 6],
        [8, 3],
      ],
    ] as const;
    expect(bandBetween(low, high)).toBe('M0.0 4.0L8.0 2.0L8.0 3.0L0.0 6.0Z');
    expect(bandBetween([], [])).toBe('');
  });
});
