import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../src/engine/sums/chance.ts';
import { spanOf } from '../../../src/engine/sums/span.ts';
import { defineSum, quantity, type InputValues } from '../../../src/engine/sums/sum.ts';
import { exact } from './made-up.ts';

/** Many fields that add up, the last one against the others. */
const field = (label: string) =>
  quantity({ label, unit: 'ohm', usual: '1', lowest: 0, highest: 1e9 });
const NAMES = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k'] as const;
const many = defineSum({
  id: 'many',
  title: 'Many',
  lead: 'Many.',
  group: 'parts',
  inputs: Object.fromEntries(NAMES.map((name) => [name, field(name)])),
  outputs: {
    up: { label: 'Sum', unit: 'ohm', headline: true },
    down: { label: 'Against it', unit: 'ohm' },
    odd: { label: 'Odd', unit: 'ohm' },
  },
  equations: [],
  at: (values) => {
    const numbers = NAMES.map((name) => Number(values[name] ?? 0));
    const up = numbers.reduce((sum, one) => sum + one) - 2 * (numbers.at(-1) ?? 0);
    return { up, down: 100 - up, odd: up > 9 ? undefined : up };
  },
  cautions: [],
  sources: [],
  checks: [],
});
const widths = (count: number) =>
  Object.fromEntries(
    NAMES.map((name, at) => [name, at < count ? { min: 0.5, typ: 1, max: 2 } : exact(1)]),
  );

describe('ends over the ranges of many fields', () => {
  // Ten ones less the last: 9. At their least and greatest: 10 × 0.5 − 2 and 10 × 2 − 0.5.
  test.each([
    ['eleven', 11, { min: 3, typ: 9, max: 19.5 }],
    ['ten', 10, { min: 4, typ: 9, max: 19 }],
    ['six', 6, { min: 6, typ: 9, max: 15 }],
    ['five', 5, { min: 6.5, typ: 9, max: 14 }],
    ['none', 0, { min: 9, typ: 9, max: 9 }],
  ])('%s with a width', (_what, count, ends) => {
    const { up, down } = spanOf(many, widths(count), undefined);
    expect(up).toEqual(ends);
    expect(down).toEqual({ min: 100 - ends.max, typ: 91, max: 100 - ends.min });
  });

  test('an output that is not defined at some ends spans the others', () => {
    expect(spanOf(many, widths(11), undefined)['odd']).toEqual({ min: 3, typ: 9, max: 9 });
  });

  test('up to five the middles are tried too: a hill is highest in the middle of its foot', () => {
    const hill = { ...many, at: ({ a = 0 }) => ({ up: 10 - (Number(a) - 1) ** 2 }) };
    expect(spanOf(hill, widths(1), undefined)['up']).toEqual({ min: 9, typ: 10, max: 10 });
    const off = { ...widths(5), a: { min: 0.5, typ: 1.5, max: 2 } };
    const slope = {
      ...many,
      at: ({ a = 0, b = 0 }) => ({ up: Math.abs(Number(a) - 1.5) - Number(b) }),
    };
    // At a of 1.5 and b of 2 it is lowest, at 0.5 and 0.5 highest.
    expect(spanOf(slope, off, undefined)['up']).toEqual({ min: -2, typ: -1, max: 0.5 });
  });
});

describe('by chance', () => {
  const three = {
    ...many,
    at: ({ a = 0, b = 0, c = 0 }) => ({ up: Number(a) - Number(b) + Number(c) }),
  };
  const asked = { a: { min: 6, typ: 10, max: 12 }, b: { min: 2, typ: 3, max: 6 }, c: exact(100) };

  test('what each does by itself adds as squares, below and above', () => {
    const chance = chanceOf(three, asked, undefined, 'up');
    // Below: 4 less of one, 3 more of the other; above: 2 more, 1 less.
    expect(chance?.rootSumSquare.min).toBeCloseTo(107 - 5, 12);
    expect(chance?.rootSumSquare.typ).toBe(107);
    expect(chance?.rootSumSquare.max).toBeCloseTo(107 + Math.sqrt(5), 12);
    expect(chance?.worst).toEqual({ min: 100, typ: 107, max: 110 });
  });

  test('fields without a width keep their value, and the middle lies between the tails', () => {
    const { drawn, histogram } = chanceOf(three, asked, undefined, 'up') ?? {};
    // Evenly from 6 to 12 less evenly from 2 to 6: 5 in the middle, and 100.
    expect(Math.abs((drawn?.typ ?? 0) - 105)).toBeLessThan(0.2);
    expect(drawn?.min).toBeGreaterThan(100);
    expect(drawn?.max).toBeLessThan(110);
    expect(histogram?.from).toBeGreaterThanOrEqual(100);
    expect(histogram?.to).toBeLessThanOrEqual(110);
    expect(histogram?.counts).toHaveLength(24);
  });

  test('nothing is said of an output that is not there, or that nothing moves', () => {
    expect(chanceOf(three, asked, undefined, 'down')).toBeUndefined();
    const still = { ...many, at: () => ({ up: 5 }) };
    expect(chanceOf(still, asked, undefined, 'up')).toBeUndefined();
    // At the very ends alone it is another, where no draw comes.
    const capped = { ...many, at: ({ a, b }: InputValues) => ({ up: a === 6 && b === 2 ? 4 : 5 }) };
    const ends = { ...asked, a: { min: 6, typ: 8, max: 12 }, b: { min: 2, typ: 4, max: 6 } };
    expect(chanceOf(capped, ends, undefined, 'up')).toBeUndefined();
  });

  test('draws that are not defined are left out', () => {
    const half = {
      ...many,
      at: ({ a = 0, b = 0 }) => ({ up: Number(a) > 9 ? Number(a) + 0 * Number(b) : undefined }),
    };
    const chance = chanceOf(half, asked, undefined, 'up');
    expect(chance?.histogram.from).toBeGreaterThan(9);
    expect(chance?.histogram.counts.reduce((sum, one) => sum + one)).toBeLessThan(1200);
  });
});
