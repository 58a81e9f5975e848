import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absorptionError, recoveryDecades } from '../../../src/engine/equations/absorption.ts';
import { cornerFrequency, shareAcross } from '../../../src/engine/equations/coupling.ts';
import { allowedShare } from '../../../src/engine/equations/derating.ts';
import { thirdHarmonic } from '../../../src/engine/equations/distortion.ts';
import { ageingLoss, driftByLimits, driftBySlope } from '../../../src/engine/equations/drift.ts';
import { impedanceSpan } from '../../../src/engine/equations/impedance.ts';
import { centsOfDrift } from '../../../src/engine/equations/pitch.ts';
import { droop, insulationAt, leakageOfPart } from '../../../src/engine/equations/leakage.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import type { DeratingRow } from '../../../src/schemas/derating.ts';

const magnitude = fc.double({ min: 1e-12, max: 1e12, noNaN: true });
const inOrder = ({ min, typ, max }: Range): boolean => min <= typ && typ <= max;

const range = fc
  .tuple(
    magnitude,
    fc.double({ min: 1, max: 100, noNaN: true }),
    fc.double({ min: 1, max: 100, noNaN: true }),
  )
  .map(([min, up, more]): Range => ({ min, typ: min * up, max: min * up * more }));

/** What leaks (A) at 25 °C through a part with a time constant (s). */
const leaking = (voltage: number, capacitance: number, constant: Range, floor = 0): Range =>
  leakageOfPart({ constant, halving: exactly(10), floor }, capacitance, voltage, 25).current;

describe('equations keep ranges in order', () => {
  it.each([
    ['insulation when warm', (r: Range) => insulationAt(r, { min: 4, typ: 10, max: 18 }, 55)],
    ['leakage current', (r: Range) => leaking(10, 1e-6, r)],
    ['leakage current with a floor', (r: Range) => leaking(10, 1e-6, r, 3e-6)],
    ['corner frequency', (r: Range) => cornerFrequency(r, 1e5)],
    ['absorption error', (r: Range) => absorptionError(5, r, { short: 1e-5, open: 1e-2 })],
    ['drift by slope', (r: Range) => driftBySlope(r, 30)],
    ['drift by a slope of either sign', (r: Range) => driftBySlope({ ...r, min: -r.min }, 30)],
    ['impedance', (r: Range) => impedanceSpan(1e6, exactly(0.1), r, 1e-7)],
  ] as const)('%s', (_name, equation) => {
    fc.assert(
      fc.property(range, (r) => {
        expect(inOrder(equation(r))).toBe(true);
      }),
    );
  });

  it('droop, however much the current', () => {
    fc.assert(
      fc.property(range, range, (other, own) => {
        expect(inOrder(droop(5, 1e-8, other, own, 0.01).total)).toBe(true);
      }),
    );
  });
});

describe('equations behave as the physics', () => {
  it('halves insulation every halving interval, and never improves it below 25 °C', () => {
    const ten = exactly(10);
    expect(insulationAt(exactly(800), ten, 55).typ).toBeCloseTo(100, 9);
    expect(insulationAt(exactly(800), ten, 0).typ).toBe(800);
  });

  it('lets a leakage floor raise only the unfavourable end, and nothing at no voltage', () => {
    expect(leaking(10, 1e-9, exactly(100), 3e-6)).toEqual({
      min: 1e-10,
      typ: 1e-10,
      max: 3e-6,
    });
    expect(leaking(0, 1e-9, exactly(100), 3e-6).max).toBe(0);
  });

  it('never droops below zero volts by the part itself', () => {
    expect(droop(5, 1e-9, exactly(0), exactly(1), 1).total.max).toBe(5);
  });

  it('droops from zero volts as well by what hangs on it', () => {
    expect(droop(0, 1e-8, exactly(100e-12), exactly(0), 1).total.typ).toBeCloseTo(0.01, 12);
  });

  it('says which share of the droop is the part itself', () => {
    expect(droop(5, 1e-8, exactly(75e-12), exactly(25e-12), 0.01).ownShare).toBeCloseTo(0.25, 9);
  });

  it('adds one decade of recovery for each tenfold hold', () => {
    const gain = recoveryDecades({ short: 1, open: 99 }) - recoveryDecades({ short: 1, open: 9 });
    expect(gain).toBeCloseTo(1, 12);
  });

  it('puts 0.707 of the signal across the part at the corner', () => {
    expect(shareAcross(100, 100)).toBeCloseTo(Math.SQRT1_2, 12);
  });

  it('makes twice the harmonic with twice the signal, the sign of the coefficient aside', () => {
    expect(thirdHarmonic(-0.2, 50, 2, 1)).toBeCloseTo(2 * thirdHarmonic(0.2, 50, 1, 1), 15);
  });

  it('takes the whole width of limits as the worst drift', () => {
    expect(driftByLimits({ min: -0.56, typ: -0.1, max: 0.22 })).toEqual({
      min: 0,
      typ: 0.39,
      max: 0.78,
    });
  });

  it('ages nothing in the first hour and never to nothing', () => {
    expect(ageingLoss(exactly(0.05), 0.5).max).toBe(0);
    expect(ageingLoss(exactly(0.5), 1e6).max).toBe(0.99);
    expect(ageingLoss(exactly(0.05), 87_660).max).toBeCloseTo(0.247, 3);
  });
});

const row = (from: number, to: number, share: number, end: number): DeratingRow => ({
  guideline: 'maker',
  types: ['a-type'],
  above_v: undefined,
  up_to_v: undefined,
  share,
  from_c: from,
  to_c: to,
  end_share: end,
  source: 'trade',
  locator: '',
  basis: 'common-practice',
  note: '',
});

describe('cents between the ends of a drift', () => {
  it.each([
    ['a thousandth', 0.001, 1.731],
    ['a tenth, 5 % to each side', 0.1, 173.3],
    ['two thirds, from 4/3 to 2/3: an octave', 2 / 3, 1200],
    ['none', 0, 0],
  ])('%s', (_name, drift, expected) => {
    expect(centsOfDrift(exactly(drift)).typ).toBeCloseTo(expected, 1);
  });
});

describe('allowedShare', () => {
  const rows = [row(85, 125, 1, 2 / 3), row(-55, 85, 1, 1)];
  it.each([
    [-80, 1],
    [25, 1],
    [85, 1],
    [105, 5 / 6],
    [125, 2 / 3],
    [126, 0],
  ])('at %f °C lets %f of the rating stand', (celsius, share) => {
    expect(allowedShare(rows, 'maker', { type: 'a-type', rated: 25 }, celsius)?.share).toBeCloseTo(
      share,
      12,
    );
  });

  it('is silent on types and guidelines without rows', () => {
    expect(allowedShare(rows, 'maker', { type: 'another', rated: 25 }, 25)).toBeUndefined();
    expect(allowedShare(rows, 'agency', { type: 'a-type', rated: 25 }, 25)).toBeUndefined();
  });

  it('takes the stricter of two spans that touch', () => {
    const step = [row(-55, 85, 1, 1), row(85, 125, 0.5, 0.5)];
    expect(allowedShare(step, 'maker', { type: 'a-type', rated: 25 }, 85)?.share).toBe(0.5);
  });
});
