import { describe, expect, test } from 'vitest';
import {
  completeOriginal,
  rowNamed,
  usualCapacitance,
} from '../../../src/engine/assessment/original.ts';
import { resolveSituation } from '../../../src/engine/assessment/conditions.ts';
import type { Original, Part } from '../../../src/engine/assessment/parts.ts';
import type { TypeRow } from '../../../src/schemas/types.ts';
import type { PositionRow } from '../../../src/schemas/positions.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue } from './setting.ts';

const type = (id: string): TypeRow => rowNamed(catalogue.types, id, 'type');
const position = (id: string): PositionRow => rowNamed(catalogue.positions, id, 'position');
const completed = (
  original: Original,
  at = 'interstage-coupling',
  { peak = 0, rms = 0 } = {},
): Part => completeOriginal(catalogue, original, position(at), { peak, rms });

describe('what is known of the old part', () => {
  test('is kept as it is, the typical value as the mark', () => {
    expect(
      completed({
        type: 'ceramic-z5u',
        capacitance: { min: 5e-9, typ: 8.2e-9, max: 12e-9 },
        tolerance: { minus: 0.2, plus: 0.8 },
        ratedVoltage: exactly(500),
      }),
    ).toEqual({
      type: 'ceramic-z5u',
      capacitance: 8.2e-9,
      tolerance: { minus: 0.2, plus: 0.8 },
      ratedVoltage: 500,
      voltageKind: 'dc',
      age: 40 * 31_557_600,
    });
  });
});

test('a given age is kept', () => {
  const age = exactly(10 * 31_557_600);
  expect(completed({ type: 'ceramic-z5u', age }).age).toBe(age.typ);
});

describe('what is not known of the old part', () => {
  test('is what was usual for the type', () => {
    const { old_v_typical: volts } = type('ceramic-z5u');
    expect(completed({ type: 'ceramic-z5u' })).toMatchObject({
      tolerance: { minus: 0.2, plus: 0.2 },
      ratedVoltage: volts,
    });
    // Old electrolytics were made wider upwards.
    expect(completed({ type: 'al-electrolytic-wet' }).tolerance).toEqual({ minus: 0.2, plus: 0.5 });
  });

  // positions.csv: interstage-coupling shows 10 nF, of electrolytics 10 µF; memory-hold 100 nF.
  test.each([
    ['the value that pages show for the position', 'ceramic-z5u', 'interstage-coupling', 10e-9],
    ['that of electrolytics', 'al-electrolytic-wet', 'interstage-coupling', 10e-6],
    ['that of electrolytics, as a bead', 'ta-mno2-solid', 'interstage-coupling', 10e-6],
    ['the same for all where nothing else is said', 'al-low-leakage', 'memory-hold', 100e-9],
  ])('takes %s: %s in %s', (_what, of, where, farads) => {
    expect(usualCapacitance(catalogue, type(of), position(where))).toBeCloseTo(farads, 12);
  });

  test('takes the nearest value that the type was made in', () => {
    const at = position('noise-generator');
    const made = type('al-electrolytic-wet');
    expect(made.old_c_min).toBeGreaterThan(at.reference_c);
    expect(usualCapacitance(catalogue, made, at)).toBe(made.old_c_min);
  });

  test('stays within type and position wherever they overlap', () => {
    for (const one of Object.values(catalogue.types)) {
      for (const at of Object.values(catalogue.positions)) {
        const low = Math.max(one.old_c_min, at.usual_c_min);
        const high = Math.min(one.old_c_max, at.usual_c_max);
        if (low > high) continue;
        expect(usualCapacitance(catalogue, one, at)).toBeGreaterThanOrEqual(low);
        expect(usualCapacitance(catalogue, one, at)).toBeLessThanOrEqual(high);
      }
    }
  });

  test('takes a preferred rating that bears the voltage known to be there', () => {
    const volts = completed({ type: 'al-electrolytic-wet' }, 'bulk-rail', {
      peak: 52,
    }).ratedVoltage;
    expect(volts).toBe(63);
  });

  test('takes the voltage itself where no preferred rating bears it', () => {
    const volts = completed({ type: 'al-electrolytic-wet' }, 'bulk-rail', { peak: 1e5 });
    expect(volts.ratedVoltage).toBe(1e5);
  });

  // 275 V are a rating for alternating voltage.
  test('takes one for direct voltage where its type is rated so', () => {
    expect(
      completed({ type: 'al-electrolytic-wet' }, 'bulk-rail', { peak: 260 }).ratedVoltage,
    ).toBe(300);
  });

  test.each<[string, string, { peak: number; rms?: number }, number]>([
    // At the mains the class bears what rides on it: 250 V for 230 V.
    ['film-x2', 'mains-x', { peak: 360, rms: 230 }, 250],
    ['film-y2', 'mains-y', { peak: 360, rms: 230 }, 250],
    ['film-x2', 'mains-x', { peak: 360, rms: 250 }, 250],
    ['film-x2', 'mains-x', { peak: 360, rms: 260 }, 275],
    // Parts for direct voltage are made for 315 V, those for alternating voltage for 330 V.
    ['film-x2', 'mains-x', { peak: 360, rms: 312 }, 330],
    // The peak of 250 V is 354 V, that of 275 V 389 V.
    ['film-x2', 'interstage-coupling', { peak: 350 }, 250],
    ['film-x2', 'interstage-coupling', { peak: 380 }, 275],
  ])('of %s at %s takes a rating for AC that bears %o', (id, at, stress, volts) => {
    expect(completed({ type: id }, at, stress).ratedVoltage).toBe(volts);
  });

  test('bears the alternating voltage that the position has', () => {
    const at = (conditions = {}): number =>
      resolveSituation(catalogue, {
        original: { type: 'film-x2' },
        position: 'mains-x',
        conditions,
      }).original.ratedVoltage;
    // The mains of 230 V may be a tenth higher.
    expect(at()).toBe(275);
    expect(at({ vac: exactly(240) })).toBe(250);
    expect(at({ vac: exactly(290) })).toBe(300);
  });

  test('is rated for AC where the type is approved for the mains', () => {
    expect(completed({ type: 'paper-x-safety' }, 'mains-x').voltageKind).toBe('ac');
    expect(completed({ type: 'paper-wax' }, 'mains-x').voltageKind).toBe('dc');
  });
});

describe('a name that the catalogue does not have', () => {
  test.each(['unobtainium', '', 'hasOwnProperty', '__proto__'])('%s is refused', (id) => {
    expect(() => rowNamed(catalogue.types, id, 'type')).toThrow(RangeError);
    expect(() => completed({ type: id })).toThrow(RangeError);
  });
});
