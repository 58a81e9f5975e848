import { describe, expect, test } from 'vitest';
import { ringing } from '../../../src/engine/sums/supply/ringing.ts';

const big = { capacitance: 10e-6, resistance: 0.05, inductance: 10e-9 };
const small = { capacitance: 10e-9, resistance: 0.05, inductance: 1e-9 };

describe('parts in parallel', () => {
  test('are lowest at the resonance of the one there is, with its resistance left', () => {
    const [dip, ...more] = ringing([big]);
    expect(more).toEqual([]);
    expect(dip?.kind).toBe('lowest');
    expect(dip?.frequency).toBeCloseTo(503_292, -2);
    expect(dip?.impedance).toBeCloseTo(0.05, 6);
  });

  test('of two ring where the inductance of one meets the capacitance of the other', () => {
    const turns = ringing([big, small]);
    expect(turns.map(({ kind }) => kind)).toEqual(['lowest', 'highest between', 'lowest']);
    // 11 nH and what is left of 10 nF in series with 10 µF: 1/(2π√(11 nH · 9.99 nF)).
    expect((turns[1]?.frequency ?? NaN) / 15.182e6).toBeCloseTo(1, 2);
    // Nearly as much as the loop of its losses lets it: (L/C)/(R₁ + R₂).
    expect(turns[1]?.impedance).toBeGreaterThan(5);
  });

  test('that are alike ring as one', () => {
    expect(ringing([big, big])).toHaveLength(1);
  });
});
