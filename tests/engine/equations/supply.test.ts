import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { surgeCurrent, switchOnPeak } from '../../../src/engine/equations/inrush.ts';

const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
const factor = fc.double({ min: 1, max: 1e3, noNaN: true });

describe('surge at switch-on', () => {
  it('never exceeds the voltage over the resistance', () => {
    fc.assert(
      fc.property(
        positive,
        positive,
        positive,
        (volt, ohm, farad) => surgeCurrent(volt, ohm, farad, 0.01) <= switchOnPeak(volt, ohm),
      ),
    );
  });

  it('does not fall as the capacitance grows, nor rise with the resistance', () => {
    fc.assert(
      fc.property(positive, positive, positive, factor, (volt, ohm, farad, times) => {
        const surge = surgeCurrent(volt, ohm, farad, 0.01);
        const slack = 1 + 1e-9;
        return (
          surgeCurrent(volt, ohm, farad * times, 0.01) * slack >= surge &&
          surgeCurrent(volt, ohm * times, farad, 0.01) <= surge * slack
        );
      }),
    );
  });

  it('doubles with four times a small capacitance', () => {
    const one = surgeCurrent(20, 0.5, 1e-4, 0.01);
    expect(surgeCurrent(20, 0.5, 4e-4, 0.01)).toBeCloseTo(2 * one, 9);
  });
});
