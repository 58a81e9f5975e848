import { describe, expect, test } from 'vitest';
import {
  add,
  between,
  exactly,
  hull,
  mapFalling,
  mapRising,
  overPositive,
  scale,
  timesPositive,
  type Range,
} from '../../../src/engine/quantities/range.ts';

const to = (min: number, typ: number, max: number): Range => ({ min, typ, max });

describe('arithmetic of ranges', () => {
  test.each<[what: string, got: Range, expected: Range]>([
    ['no width', exactly(3), to(3, 3, 3)],
    ['the middle of two ends', between(2, 6), to(2, 4, 6)],
    ['a typical value that is given', between(2, 6, 5), to(2, 5, 6)],
    ['what rises keeps its ends', mapRising(to(1, 2, 4), (x) => x + 1), to(2, 3, 5)],
    ['what falls changes its ends', mapFalling(to(1, 2, 4), (x) => 8 / x), to(2, 4, 8)],
    ['times a positive number', scale(to(1, 2, 4), 3), to(3, 6, 12)],
    ['times a negative number', scale(to(1, 2, 4), -3), to(-12, -6, -3)],
    ['times nothing', scale(to(1, 2, 4), 0), to(0, 0, 0)],
    ['a sum', add(to(1, 2, 4), to(10, 30, 50)), to(11, 32, 54)],
    ['a product', timesPositive(to(1, 2, 4), to(10, 30, 50)), to(10, 60, 200)],
    ['a quotient: the least over the most', overPositive(to(8, 12, 20), to(2, 3, 4)), to(2, 4, 10)],
  ])('%s', (_what, got, expected) => expect(got).toEqual(expected));
});

describe('the range that holds several', () => {
  test.each<[what: string, ranges: [Range, ...Range[]], expected: Range]>([
    ['one is itself', [to(1, 2, 4)], to(1, 2, 4)],
    ['of three, the middle typical one', [to(5, 50, 60), to(1, 2, 4), to(3, 8, 90)], to(1, 8, 90)],
    ['of two, the geometric mean', [to(1, 100, 200), to(1, 4, 5)], to(1, 20, 200)],
    [
      'of four, the mean of the inner two',
      [exactly(1000), exactly(9), exactly(4), exactly(1)],
      to(1, 6, 1000),
    ],
    ['with nothing among them, the arithmetic mean', [exactly(0), exactly(6)], to(0, 3, 6)],
    ['of either sign, the arithmetic mean', [to(-3, -2, -1), to(1, 4, 5)], to(-3, 1, 5)],
    ['of negative ones, the arithmetic mean', [exactly(-2), exactly(-8)], to(-8, -5, -2)],
  ])('%s', (_what, ranges, expected) => {
    const found = hull(ranges);
    expect([found.min, found.max]).toEqual([expected.min, expected.max]);
    expect(found.typ).toBeCloseTo(expected.typ, 12);
  });
});
