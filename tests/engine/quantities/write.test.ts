import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  parseQuantity,
  UNITS,
  writeQuantity,
  type Range,
  type Unit,
} from '../../../src/engine/quantities/index.ts';
import { UNIT_FACTS } from '../../../src/engine/quantities/unit-facts.ts';

describe('a quantity in an address', () => {
  const cases: [range: [number, number, number], unit: Unit, text: string, bare?: string][] = [
    [[4.7e-9, 4.7e-9, 4.7e-9], 'F', '4.7n'],
    [[1, 1, 1], 'F', '1F'],
    [[0, 0, 0], 'F', '0F'],
    [[4.7e-3, 4.7e-3, 4.7e-3], 'F', '4.7m'],
    [[4.7e-9, 4.7e-9, 4.7e-9], 'F', '4.7', 'nF'],
    [[9.5e-9, 1e-8, 1.2e-8], 'F', '9.5..10..12n'],
    [[10, 15, 20], 'V', '10..20'],
    [[10, 15.000001, 20], 'V', '10..15.000001..20'],
    [[15, 30, 45], 'degC', '15..45'],
    [[15, 25, 45], 'degC', '15..25..45'],
    [[-40, 22.5, 85], 'degC', '-40..85'],
    [[47000, 47000, 47000], 'ohm', '47k'],
    [[470, 470, 470], 'ohm', '470'],
    [[0.1, 0.1, 0.1], 'fraction', '10'],
    [[-7.5e-4, -7.5e-4, -7.5e-4], '1/K', '-750'],
    [[5e6, 5e6, 5e6], 'V/s', '5'],
    [[1e-5, 1e-5, 1e-5], 's', '10us'],
    [[10, 10, 10], 's', '10'],
    [[315576000, 315576000, 315576000], 's', '10', 'years'],
    [[0.005, 0.005, 0.005], 'm', '5mm'],
    [[1, 1, 1], 'H', '1H'],
    [[1e-8, 1e-8, 1e-8], 'H', '10n'],
    [[1e25, 1e25, 1e25], 'V', '1e22k'],
    [[1e-12, 1e-9, 1e-5], 'F', '0.000001..0.001..10u'],
    [[-1.0000000000000027e18, -1e18, 0], 'V', '-1000000000000002.7..-1000000000000000..0k'],
  ];
  test.each(cases)('%s %s is %s', ([min, typ, max], unit, text, bare) => {
    expect(writeQuantity({ min, typ, max }, unit, bare)).toBe(text);
  });

  const size = fc.oneof(
    fc.constant(0),
    fc
      .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -24, max: 24 }))
      .map(([mantissa, decade]) => mantissa * 10 ** decade),
  );
  const signed = fc.tuple(size, fc.boolean());
  const quantity = fc
    .tuple(fc.constantFrom(...UNITS), fc.array(signed, { minLength: 1, maxLength: 3 }))
    .map(([unit, sizes]): { unit: Unit; range: Range } => {
      const values = sizes
        .map(([value, negative]) => (negative && UNIT_FACTS[unit].signed ? 0 - value : value))
        .sort((a, b) => a - b);
      const [min = 0, second = min, third = second] = values;
      // One value, two ends about their middle, or three figures.
      const range =
        values.length === 2
          ? { min, typ: (min + second) / 2, max: second }
          : { min, typ: second, max: third };
      return { unit, range };
    });

  const expectSame = (range: Range, text: string, unit: Unit, bare?: string): void => {
    const result = parseQuantity(text, unit, bare);
    if (!result.ok) throw new Error(`${text}: ${result.fault.message}`);
    for (const end of ['min', 'typ', 'max'] as const)
      expect(Math.abs(result.value[end] - range[end])).toBeLessThanOrEqual(
        1e-9 * Math.abs(range[end]),
      );
  };

  test('is read back the same, in every unit', () => {
    fc.assert(
      fc.property(quantity, ({ unit, range }) => {
        const text = writeQuantity(range, unit);
        expect(text).toMatch(/^[-.\da-zA-Z]+$/);
        expectSame(range, text, unit);
      }),
      { numRuns: 5000 },
    );
  });

  test('is read back the same in a unit that the caller names', () => {
    fc.assert(
      fc.property(size, size, (one, other) => {
        const [min, max] = [Math.min(one, other), Math.max(one, other)];
        const range = { min, typ: (min + max) / 2, max };
        for (const bare of ['s', 'ms', 'h', 'years'])
          expectSame(range, writeQuantity(range, 's', bare), 's', bare);
      }),
      { numRuns: 1000 },
    );
  });
});
