import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import {
  assess,
  resolveSituation,
  type Candidate,
  type Request,
} from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given, known, knowing } from '../assessment/setting.ts';

const keptOf = (request: Request, candidate: Candidate, from = catalogue): Finding => {
  const { findings } = assess(from, request, candidate);
  const found = findings.find(({ finding }) => finding === 'kept-value');
  if (found === undefined) throw new Error('no finding');
  return found;
};

const old = (type: string, farad: number, volts: number): Request['original'] => ({
  type,
  capacitance: exactly(farad),
  ratedVoltage: exactly(volts),
});

const twenty = { minus: 0.2, plus: 0.2 };

describe('what is left of 47 uF of X5R on a rail of 12 V', () => {
  const request: Request = {
    original: old('al-electrolytic-wet', 47e-6, 16),
    position: 'bulk-rail',
    conditions: given({ vdc: 12 }),
  };
  const chip: Candidate = {
    type: 'ceramic-x5r',
    capacitance: 47e-6,
    tolerance: twenty,
    ratedVoltage: 25,
  };
  const plain = knowing(catalogue, 'ceramic-x5r', {
    'capacitance-change-temperature': known({ min: -0.15, typ: 0, max: 0.15 }),
    ageing: known(0.05),
    'voltage-coefficient': known({ min: -0.9, typ: -0.5, max: -0.2 }),
  });

  test('multiplies what each cause leaves, worked out by hand', () => {
    // 0.05 a decade over log10(10 years in hours) = 4.943 decades; 12 V of 25 V are 0.48.
    const { standIn } = keptOf(request, chip, plain);
    const worst = 47e-6 * 0.8 * 0.85 * (1 - 0.05 * 4.943) * (1 - 0.9 * 0.48);
    const usual = 47e-6 * (1 - (0.05 * 4.943) / 2) * (1 - 0.5 * 0.48);
    expect(Math.abs((standIn?.min ?? NaN) / worst - 1)).toBeLessThan(1e-3);
    expect(Math.abs((standIn?.typ ?? NaN) / usual - 1)).toBeLessThan(1e-3);
    expect(worst * 1e6).toBeCloseTo(13.7, 1);
  });

  test('says how much each cause takes', () => {
    expect(keptOf(request, chip, plain).working.replaceAll(/\s/gu, ' ')).toBe(
      '47 µF marked; tolerance ±20 %, temperature ±15 %, age −24.7 to 0 %, bias −43.2 to 0 %: ' +
        '13.7–64.9 µF, at the worst 0.674 × what is needed',
    );
  });

  test('may be too little: the usual part does, not every part', () => {
    expect(keptOf(request, chip).verdict).toBe('fits-if');
  });
});

describe('what is needed', () => {
  const rail: Request = {
    original: { ...old('ta-mno2-solid', 47e-6, 25), tolerance: twenty },
    position: 'bulk-rail',
  };
  const needed = (request: Request) =>
    resolveSituation(catalogue, request).conditions.find(({ id }) => id === 'needed');

  test('is four fifths of the least that the old part itself gave on a rail', () => {
    const { original } = keptOf(rail, { type: 'ta-mno2-solid' });
    expect(needed(rail)?.from).toBe('derived');
    expect((needed(rail)?.range.typ ?? NaN) / (original?.min ?? NaN)).toBeCloseTo(0.8, 9);
  });

  test('is what the visitor says, where he does', () => {
    const asked: Request = { ...rail, conditions: given({ needed: 200e-6 }) };
    expect(needed(asked)).toMatchObject({ from: 'given', range: exactly(200e-6) });
    const { limit, verdict } = keptOf(asked, { type: 'al-electrolytic-wet', capacitance: 47e-6 });
    expect(limit).toEqual({ low: 200e-6 });
    expect(verdict).toBe('stopgap');
  });

  test('follows the voltage across the old part, and its age', () => {
    const disc: Request = { original: old('ceramic-z5u', 1e-7, 50), position: 'local-decoupling' };
    const typical = needed(disc)?.range.typ ?? NaN;
    expect(needed({ ...disc, conditions: given({ vdc: 40 }) })?.range.typ).toBeLessThan(typical);
    const young = { ...disc, original: { ...disc.original, age: exactly(1e6) } };
    expect(needed(young)?.range.typ).toBeGreaterThan(typical);
  });
});

describe('decoupling with 100 nF', () => {
  const instead = (type: string, of: string): Finding =>
    keptOf(
      { original: old(of, 1e-7, 50), position: 'local-decoupling' },
      {
        type,
        capacitance: 1e-7,
        ratedVoltage: 50,
        tolerance: type === 'ceramic-y5v' ? { minus: 0.2, plus: 0.8 } : { minus: 0.1, plus: 0.1 },
      },
    );

  test.each([
    ['ceramic-x7r', 'ceramic-disc-unknown', 'fits'],
    ['ceramic-x7r', 'ceramic-x7r', 'fits'],
    ['ceramic-x7r', 'pet-metallized', 'fits'],
    ['ceramic-z5u', 'pet-metallized', 'fits-if'],
    ['ceramic-y5v', 'pet-metallized', 'fits-if'],
    ['ceramic-y5v', 'ceramic-y5v', 'fits'],
  ])('of %s for %s: %s', (type, of, verdict) => {
    expect(instead(type, of).verdict).toBe(verdict);
  });
});
