import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { phaseLead } from '../../../src/engine/equations/coupling.ts';
import { driftBySlope, driftWithResistor } from '../../../src/engine/equations/drift.ts';
import { impedanceSpan } from '../../../src/engine/equations/impedance.ts';
import { insulationResistance, leakageThrough } from '../../../src/engine/equations/leakage.ts';
import { reactiveCurrent, timeToFall, voltageLeft } from '../../../src/engine/equations/mains.ts';
import { selfResonance } from '../../../src/engine/equations/resonance.ts';
import {
  holdStep,
  settlingConstants,
  settlingTime,
} from '../../../src/engine/equations/sampling.ts';
import { frequencyShift } from '../../../src/engine/equations/shift.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';

const positive = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
const up = fc.double({ min: 1, max: 100, noNaN: true });
const range = fc
  .tuple(positive, up, up)
  .map(([min, more, most]): Range => ({ min, typ: min * more, max: min * more * most }));
const inOrder = ({ min, typ, max }: Range): boolean => min <= typ && typ <= max;

describe('equations of circuits keep ranges in order', () => {
  it.each([
    ['shift of a corner above the mark', (r: Range) => frequencyShift(r, 1e-9, 1)],
    ['shift of a resonance below the mark', (r: Range) => frequencyShift(r, 1e12, 1 / 2)],
    ['hold step', (r: Range) => holdStep(1e-12, r)],
    ['settling time', (r: Range) => settlingTime(r, 5, 0.01)],
    ['touch current', (r: Range) => reactiveCurrent(50, r, 230)],
    ['self-resonance', (r: Range) => selfResonance(r, 1e-7)],
  ] as const)('%s', (_name, equation) => {
    fc.assert(
      fc.property(range, (r) => {
        expect(inOrder(equation(r))).toBe(true);
      }),
    );
  });
});

describe('shift of a frequency', () => {
  it('is nothing at the mark, and counts both ways', () => {
    expect(frequencyShift(exactly(1e-9), 1e-9, 1)).toEqual(exactly(0));
    const both = frequencyShift({ min: 0.8, typ: 1, max: 1.25 }, 1, 1);
    expect(both.min).toBe(0);
    expect(both.max).toBeCloseTo(0.25, 12);
  });
});

describe('impedance over a spread of inductance', () => {
  // 100 nF have 1.5915 ohm at 1 MHz; 100 nH have 0.6283 ohm there and 400 nH 2.5133 ohm.
  it.each([
    ['below resonance', [100, 150], 1.5915 - 0.9425, 1.5915 - 0.6283],
    ['through resonance, where only the resistance is left', [100, 400], 0, 1.5915 - 0.6283],
    ['beyond resonance', [400, 500], 2.5133 - 1.5915, 3.1416 - 1.5915],
  ])('%s', (_what, [least = 0, most = 0], nearest, farthest) => {
    const henries = { min: least * 1e-9, typ: 1e-9 * least, max: most * 1e-9 };
    const { min, max } = impedanceSpan(1e6, { min: 0.1, typ: 0.1, max: 0.2 }, henries, 1e-7);
    expect(min).toBeCloseTo(Math.hypot(0.1, nearest), 3);
    expect(max).toBeCloseTo(Math.hypot(0.2, farthest), 3);
  });
});

describe('a resistor beside a part', () => {
  it('balances its own opposite and never does more than add', () => {
    const slope = fc.double({ min: -1e-3, max: 1e-3, noNaN: true });
    fc.assert(
      fc.property(slope, slope, (part, resistor) => {
        const net = driftWithResistor(exactly(part), exactly(resistor), 20).max;
        const alone = driftBySlope(exactly(part), 20).max + driftBySlope(exactly(resistor), 20).max;
        const balanced = driftWithResistor(exactly(part), exactly(-part), 20).max;
        expect(net <= alone + 1e-15 && balanced === 0).toBe(true);
      }),
    );
  });
});

describe('settling', () => {
  it('needs no time for a step within the error, and ln 2 more for half the error', () => {
    expect(settlingConstants(1, 2)).toBe(0);
    expect(settlingConstants(8, 1) - settlingConstants(8, 2)).toBeCloseTo(Math.LN2, 12);
  });
});

describe('discharge', () => {
  it('is at the end voltage at the time that it takes to get there', () => {
    fc.assert(
      fc.property(up, up, positive, (end, more, tau) => {
        const start = end * more;
        const left = voltageLeft(start, timeToFall(start, end, tau), tau);
        expect(Math.abs(left / end - 1) < 1e-9).toBe(true);
      }),
    );
  });
});

describe('phase lead', () => {
  it('falls from 90 degrees to nothing as the frequency rises', () => {
    fc.assert(
      fc.property(positive, positive, up, (hertz, corner, more) => {
        const lead = phaseLead(hertz, corner);
        expect(lead > 0 && lead < 90.000001 && phaseLead(hertz * more, corner) <= lead).toBe(true);
      }),
    );
  });
});

describe('insulation', () => {
  it('is never more than either promise, and in order', () => {
    fc.assert(
      fc.property(range, range, positive, (tau, cap, farad) => {
        const both = insulationResistance(tau, farad, cap);
        const dielectric = insulationResistance(tau, farad);
        expect(
          inOrder(both) && both.min <= cap.min && both.max <= cap.max && both.typ <= dielectric.typ,
        ).toBe(true);
      }),
    );
  });

  it('lets a smaller part leak no more than a larger one', () => {
    fc.assert(
      fc.property(range, range, positive, up, (tau, cap, farad, more) => {
        const small = leakageThrough(10, insulationResistance(tau, farad, cap));
        const large = leakageThrough(10, insulationResistance(tau, farad * more, cap));
        expect(small.max <= large.max * (1 + 1e-9) && small.typ <= large.typ * (1 + 1e-9)).toBe(
          true,
        );
      }),
    );
  });
});
