import { describe, expect, test } from 'vitest';
import { centsOfVoltage } from '../../../src/engine/equations/pitch.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

describe('a voltage as pitch', () => {
  // Identity: an octave is 1200 cents. 100 pA out of 100 nF is 1 mV a second, 1.2 cents of it at
  // 1 V an octave.
  test.each([
    [0.001, 1, 1.2],
    [1, 1, 1200],
    [-0.001, 1, -1.2],
    [0.001, 0.26, 4.615],
  ])('%f V at %f V an octave: %f cents', (volt, octave, cents) => {
    expect(centsOfVoltage(exactly(volt), octave).typ).toBeCloseTo(cents, 3);
  });
});
