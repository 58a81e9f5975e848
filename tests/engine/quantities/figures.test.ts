import { describe, expect, test } from 'vitest';
import { figuresOf, timesTen } from '../../../src/engine/quantities/figures.ts';

describe('significant figures', () => {
  test.each<[size: number, digits: number, figures: number, power: number]>([
    [0, 3, 0, 0],
    [1, 3, 1, 0],
    [10, 3, 1, 1],
    [4700, 3, 47, 2],
    [1005, 3, 101, 1],
    [1004.9, 3, 1, 3],
    [4.935, 3, 494, -2],
    [4.9349, 3, 493, -2],
    [0.00994, 2, 99, -4],
    [0.00995, 2, 1, -2],
    [999.5, 3, 1, 3],
    [999.4, 3, 999, 0],
    [2.5, 1, 3, 0],
    [3.5e-12, 1, 4, -12],
    [123456789012, 12, 123456789012, 0],
    [0.1 + 0.2, 12, 3, -1],
    [4.9e-324, 1, 5, -324],
    [1e308, 2, 1, 308],
  ])('%d to %d digits', (size, digits, figures, power) => {
    expect(figuresOf(size, digits)).toEqual({ figures, power });
  });
});

describe('a number times a power of ten', () => {
  test.each([
    [4.7, 0, 4.7],
    [4.7, -9, 4.7e-9],
    [4.7, 3, 4700],
    [3, 22, 3e22],
    [1e-305, 310, 1e5],
    [1e305, -310, 1e-5],
    [2, 300, 2e300],
    [2, -300, 2e-300],
  ])('%d · 10^%d', (value, power, expected) => {
    expect(Math.abs(timesTen(value, power) / expected - 1)).toBeLessThan(1e-14);
  });
});
