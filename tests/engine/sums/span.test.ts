import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOf, seeded } from '../../../src/engine/sums/chance.ts';
import { spanOf } from '../../../src/engine/sums/span.ts';
import { defineSum, quantity } from '../../../src/engine/sums/sum.ts';

const field = (symbol: string) =>
  quantity({ label: symbol, symbol, unit: 'ohm', usual: '1', lowest: 0, highest: 1e9 });

/** A divider: its resistors occur twice, so that reckoning with each separately would be wrong. */
const divider = defineSum({
  id: 'divider',
  title: 'Divider',
  lead: 'Share behind a divider.',
  group: 'parts',
  inputs: { a: field('A'), b: field('B') },
  outputs: { share: { label: 'Share', unit: 'fraction', headline: true } },
  equations: [],
  at: ({ a, b }) => ({ share: a + b === 0 ? undefined : b / (a + b) }),
  cautions: [],
  sources: [],
  checks: [],
});

/** Two that add up. */
const total = defineSum({
  id: 'total',
  title: 'Sum',
  lead: 'Two in a row.',
  group: 'parts',
  inputs: { a: field('A'), b: field('B') },
  outputs: { share: { label: 'Sum', unit: 'ohm', headline: true } },
  equations: [],
  at: ({ a, b }) => ({ share: a + b }),
  cautions: [],
  sources: [],
  checks: [],
});

const range = (min: number, typ: number, max: number) => ({ min, typ, max });

describe('spanOf', () => {
  test('does not widen a quantity that occurs twice', () => {
    const { share } = spanOf(
      divider,
      { a: range(90, 100, 110), b: range(90, 100, 110) },
      undefined,
    );
    expect(share).toEqual({ min: 90 / 200, typ: 0.5, max: 110 / 200 });
  });

  test('leaves out what is not defined', () => {
    expect(spanOf(divider, { a: range(0, 0, 0), b: range(0, 0, 0) }, undefined)).toEqual({});
  });

  test('holds every value between the ends', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (p, q) => {
        const a = range(50, 100, 200);
        const b = range(10, 40, 90);
        const span = spanOf(divider, { a, b }, undefined)['share'];
        const x = a.min + p * (a.max - a.min);
        const y = b.min + q * (b.max - b.min);
        const at = y / (x + y);
        expect(span !== undefined && at >= span.min - 1e-12 && at <= span.max + 1e-12).toBe(true);
      }),
    );
  });
});

describe('chanceOf', () => {
  const given = { a: range(90, 100, 110), b: range(90, 100, 110) };

  test('is the same for the same seed and another for another', () => {
    const drawn = (seed: number) => chanceOf(divider, given, undefined, 'share', seed)?.drawn;
    expect(drawn(1)).toEqual(drawn(1));
    expect(drawn(1)).not.toEqual(drawn(2));
  });

  test('is within the worst case, squares too', () => {
    const chance = chanceOf(divider, given, undefined, 'share');
    expect(chance?.rootSumSquare.max).toBeCloseTo(
      0.5 + Math.hypot(110 / 210 - 0.5, 100 / 190 - 0.5),
      6,
    );
    expect(chance?.drawn.min).toBeGreaterThan(chance?.worst.min ?? 1);
    expect(chance?.drawn.max).toBeLessThan(chance?.worst.max ?? 0);
    expect(chance?.histogram.counts.reduce((sum, count) => sum + count)).toBe(2000);
  });

  test('draws the triangle that two even ranges add up to', () => {
    const even = { a: range(0, 0.5, 1), b: range(0, 0.5, 1) };
    const chance = chanceOf(total, even, undefined, 'share');
    // Of a triangle from 0 to 2 a twentieth lies below the root of a tenth.
    expect(Math.abs((chance?.drawn.min ?? 9) - Math.sqrt(0.1))).toBeLessThan(0.04);
    expect(Math.abs((chance?.drawn.max ?? 9) - 2 + Math.sqrt(0.1))).toBeLessThan(0.04);
    const { from = 0, to = 0, counts = [] } = chance?.histogram ?? {};
    const step = (to - from) / counts.length;
    for (const [index, count] of counts.entries()) {
      const middle = from + (index + 0.5) * step;
      const expected = 2000 * step * (1 - Math.abs(middle - 1));
      expect(Math.abs(count - expected), `step ${index}`).toBeLessThan(4 * Math.sqrt(expected + 4));
    }
  });

  test('has nothing to say of a single range', () => {
    expect(chanceOf(divider, { ...given, b: range(1, 1, 1) }, undefined, 'share')).toBeUndefined();
  });
});

test('drawn numbers spread evenly from 0 to 1', () => {
  const random = seeded(7);
  const drawn = Array.from({ length: 10_000 }, random);
  const mean = drawn.reduce((sum, value) => sum + value) / drawn.length;
  expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...drawn)).toBeLessThan(1);
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.01);
});
