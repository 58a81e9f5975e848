import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { voltageLifeFactor, wearLife, type Wear } from '../../../src/engine/equations/life.ts';
import { canRise, rippleVoltage } from '../../../src/engine/equations/ripple.ts';
import { canSurface } from '../../../src/engine/equations/surface.ts';
import { surgeCurrent, switchOnPeak } from '../../../src/engine/equations/inrush.ts';

const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
const factor = fc.double({ min: 1, max: 1e3, noNaN: true });

describe('surge at switch-on', () => {
  it('never exceeds the voltage over the resistance', () => {
    fc.assert(
      fc.property(positive, positive, positive, (volt, ohm, farad) => {
        expect(surgeCurrent(volt, ohm, farad, 0.01) <= switchOnPeak(volt, ohm)).toBe(true);
      }),
    );
  });

  it('does not fall as the capacitance grows, nor rise with the resistance', () => {
    fc.assert(
      fc.property(positive, positive, positive, factor, (volt, ohm, farad, times) => {
        const surge = surgeCurrent(volt, ohm, farad, 0.01);
        const slack = 1 + 1e-9;
        expect(
          surgeCurrent(volt, ohm, farad * times, 0.01) * slack >= surge &&
            surgeCurrent(volt, ohm * times, farad, 0.01) <= surge * slack,
        ).toBe(true);
      }),
    );
  });

  it('doubles with four times a small capacitance', () => {
    const one = surgeCurrent(20, 0.5, 1e-4, 0.01);
    expect(surgeCurrent(20, 0.5, 4e-4, 0.01)).toBeCloseTo(2 * one, 9);
  });
});

describe('ripple', () => {
  it('keeps the range in order and halves with twice the capacitance', () => {
    fc.assert(
      fc.property(positive, positive, factor, (ampere, farad, times) => {
        const range = { min: farad, typ: farad * times, max: farad * times * times };
        const { min, typ, max } = rippleVoltage(ampere, 100, range);
        const half = rippleVoltage(ampere, 200, range);
        expect(min <= typ && typ <= max && Math.abs(half.typ * 2 - typ) <= 1e-9 * typ).toBe(true);
      }),
    );
  });
});

describe('heat of ripple current', () => {
  const cooling = { ofSquareCentimetre: 2e-3, power: 0.75 };

  it('grows with the square of the current and falls with the surface', () => {
    fc.assert(
      fc.property(positive, positive, positive, factor, (ampere, ohm, volume, times) => {
        const rise = canRise(ampere, ohm, canSurface(volume, 1.6), cooling);
        const more = canRise(ampere * times, ohm, canSurface(volume, 1.6), cooling);
        const larger = canRise(ampere, ohm, canSurface(volume * times, 1.6), cooling);
        expect(Math.abs(more / rise / times ** 2 - 1) < 1e-9 && larger <= rise * (1 + 1e-9)).toBe(
          true,
        );
      }),
    );
  });
});

describe('life of a wet part', () => {
  const wear: Wear = {
    rated: 3600,
    ratedTemperature: 85,
    ambient: 60,
    doubling: 10,
    rise: 3,
    riseHalving: 7,
    voltageFactor: 1,
    longest: 1e9,
  };
  const gain = { least: 0.5, power: 3 };
  const kelvin = fc.double({ min: 0, max: 60, noNaN: true });

  it('never grows when it is warmer, outside or inside', () => {
    fc.assert(
      fc.property(kelvin, kelvin, (outside, inside) => {
        const usual = wearLife(wear);
        expect(
          wearLife({ ...wear, ambient: wear.ambient + outside }) <= usual &&
            wearLife({ ...wear, rise: wear.rise + inside }) <= usual,
        ).toBe(true);
      }),
    );
  });

  it('is the rated life at the rated temperature, with no heat and full voltage', () => {
    const voltageFactor = voltageLifeFactor(63, 63, gain);
    expect(wearLife({ ...wear, ambient: 85, rise: 0, voltageFactor })).toBe(3600);
  });

  it.each([
    ['at three quarters of the rated voltage', 7.5, 1 / 0.75 ** 3],
    ['at the least share', 5, 8],
    ['below it', 1, 8],
    ['without voltage', 0, 8],
    ['above its rating', 12, 1],
  ])('%s', (_, used, factorThere) => {
    expect(voltageLifeFactor(used, 10, gain)).toBeCloseTo(factorThere, 9);
  });
});
