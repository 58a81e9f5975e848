import { describe, expect, test } from 'vitest';
import type { Range } from '../../../src/engine/quantities/range.ts';
import { at, body, found, type Given } from './invented-place.ts';

/** What stands and what is drilled in a place at least, for an old part of 1 µF 100 V, worked out by hand. */

describe('a share of the rating', () => {
  test.each<[string, Given, number]>([
    [
      'at least 40 V in such a place, which half of its 100 V bear, though 25 V are usual',
      {
        rows: [at('vdc', 'rated-voltage', { typ: 0.5, max: 40 })],
        type: { old_ample_below: 101, old_v_typical: 25 },
      },
      40,
    ],
    [
      'no more than half of its 100 V, though 80 V are met in such a place',
      { rows: [at('vdc', 'rated-voltage', { typ: 0.5, max: 80 })] },
      50,
    ],
    [
      'half of 100 V where the least of such a place is less',
      { rows: [at('vdc', 'rated-voltage', { typ: 0.5, max: 40 })] },
      50,
    ],
    // Nobody said its rating: of preferred ones, the first above 90 V where 63 V are usual.
    [
      'half of the rating that bears what is met in such a place',
      {
        rows: [at('vdc', 'rated-voltage', { typ: 0.5, max: 90 })],
        original: { ratedVoltage: undefined },
      },
      50,
    ],
    [
      'half of its 100 V as marked, though 25 V are usual of its type',
      {
        rows: [at('vdc', 'marked-voltage', { typ: 0.5, max: 90 })],
        type: { old_ample_below: 101, old_v_typical: 25 },
      },
      50,
    ],
    // 63 V are usual, and it bears 90 V at least; a rating for AC bears its peak.
    [
      'half of the preferred rating above 90 V where nobody said its mark',
      {
        rows: [at('vdc', 'marked-voltage', { typ: 0.5, max: 90 })],
        original: { ratedVoltage: undefined },
      },
      50,
    ],
    [
      'half of 63 V where nobody said its mark and no least is known',
      { rows: [at('vdc', 'marked-voltage', { typ: 0.5 })], original: { ratedVoltage: undefined } },
      31.5,
    ],
    [
      'half of the peak of 100 V AC',
      {
        rows: [at('vdc', 'marked-voltage', { typ: 0.5 })],
        original: { voltageKind: 'ac' },
      },
      100 / Math.SQRT2,
    ],
  ])('%s', (_what, all, volts) => {
    expect(found(all, 'vdc').typ).toBeCloseTo(volts, 9);
  });
});

describe('holes', () => {
  // The leads of the body are of 0.6 mm, and a lead wants 0.2 mm to spare.
  test.each<[string, Given, Range]>([
    [
      'the usual holes for leads that go through all of them',
      { rows: [at('hole', 'body-lead', { min: 0.8, typ: 1, max: 1.3 })] },
      { min: 0.8e-3, typ: 1e-3, max: 1.3e-3 },
    ],
    [
      'as wide as pins of 1.1 mm need',
      {
        rows: [at('hole', 'body-lead', { min: 0.8, typ: 1, max: 1.5 })],
        bodies: [{ ...body, lead_mm: 1.1 }],
      },
      { min: 1.3e-3, typ: 1.3e-3, max: 1.5e-3 },
    ],
    [
      'the usual ones where no leads are known',
      { rows: [at('hole', 'body-lead', { typ: 1 })], bodies: [], knows: {} },
      { min: 1e-3, typ: 1e-3, max: 1e-3 },
    ],
  ])('%s', (_what, all, wanted) => {
    const { min, typ, max } = found(all, 'hole');
    expect(min).toBeCloseTo(wanted.min, 9);
    expect(typ).toBeCloseTo(wanted.typ, 9);
    expect(max).toBeCloseTo(wanted.max, 9);
  });
});
