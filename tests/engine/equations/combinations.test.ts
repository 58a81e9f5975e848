import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  equalisingResistor,
  parallelCapacitance,
  parallelTolerance,
  seriesCapacitance,
  seriesTolerance,
  standingShare,
  worstShare,
} from '../../../src/engine/equations/combinations.ts';

const farad = fc.double({ min: -12, max: 0, noNaN: true }).map((power) => 10 ** power);
const fraction = fc.double({ min: 0, max: 0.95, noNaN: true });
const tolerance = fc.record({ minus: fraction, plus: fraction });
const part = fc.record({ capacitance: farad, tolerance });

/** Equal but for rounding. */
const alike = (a: number, b: number): boolean => Math.abs(a / b - 1) < 1e-9;

describe('parts together', () => {
  test('are side by side no less than the larger, in a row no more than the smaller', () => {
    fc.assert(
      fc.property(farad, farad, (a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)];
        expect(parallelCapacitance([a, b])).toBeGreaterThanOrEqual(large);
        expect(seriesCapacitance([a, b])).toBeLessThanOrEqual(small * (1 + 1e-12));
      }),
    );
  });

  test('of one value are twice or half of it, and as close as one of them', () => {
    fc.assert(
      fc.property(part, (one) => {
        const { capacitance, tolerance: own } = one;
        expect(alike(parallelCapacitance([capacitance, capacitance]), 2 * capacitance)).toBe(true);
        expect(alike(seriesCapacitance([capacitance, capacitance]), capacitance / 2)).toBe(true);
        for (const both of [parallelTolerance([one, one]), seriesTolerance([one, one])]) {
          expect(both.minus).toBeCloseTo(own.minus, 9);
          expect(both.plus).toBeCloseTo(own.plus, 9);
        }
      }),
    );
  });

  test('are no closer than the closer and no looser than the looser of them', () => {
    fc.assert(
      fc.property(part, part, (a, b) => {
        for (const both of [parallelTolerance([a, b]), seriesTolerance([a, b])]) {
          for (const side of ['minus', 'plus'] as const) {
            const ends = [a.tolerance[side], b.tolerance[side]];
            expect(both[side]).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-9);
            expect(both[side]).toBeLessThanOrEqual(Math.max(...ends) + 1e-9);
          }
        }
      }),
    );
  });
});

describe('sharing of voltage', () => {
  test('is never below a half nor above the whole', () => {
    fc.assert(
      fc.property(tolerance, (own) => {
        const share = worstShare(own);
        expect(share).toBeGreaterThanOrEqual(0.5);
        expect(share).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('with the resistor that was asked for is what was asked for', () => {
    const volts = fc.double({ min: 1, max: 2000, noNaN: true });
    const ampere = fc.double({ min: -9, max: -1, noNaN: true }).map((power) => 10 ** power);
    const share = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(volts, share, ampere, (voltage, wanted, difference) => {
        const resistor = equalisingResistor(voltage, wanted, difference);
        expect(standingShare(voltage, resistor, difference)).toBeCloseTo(wanted, 9);
        expect(standingShare(voltage, resistor / 2, difference)).toBeLessThanOrEqual(wanted + 1e-9);
      }),
    );
  });
});
