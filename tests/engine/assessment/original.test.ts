import { describe, expect, test } from 'vitest';
import {
  completeOriginal,
  rowNamed,
  usualCapacitance,
} from '../../../src/engine/assessment/original.ts';
import type { Original, Part } from '../../../src/engine/assessment/parts.ts';
import type { TypeRow } from '../../../src/schemas/types.ts';
import type { PositionRow } from '../../../src/schemas/positions.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue } from './setting.ts';

const type = (id: string): TypeRow => rowNamed(catalogue.types, id, 'type');
const position = (id: string): PositionRow => rowNamed(catalogue.positions, id, 'position');
const completed = (original: Original, at = 'interstage-coupling', peak = 0): Part =>
  completeOriginal(catalogue, original, position(at), peak);

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

  test('takes the value that pages show for the position', () => {
    const at = position('interstage-coupling');
    expect(usualCapacitance(type('ceramic-z5u'), at)).toBe(at.reference_c);
  });

  test('takes the nearest value that the type was made in', () => {
    const at = position('interstage-coupling');
    const made = type('al-electrolytic-wet');
    expect(made.old_c_min).toBeGreaterThan(at.reference_c);
    expect(usualCapacitance(made, at)).toBe(made.old_c_min);
  });

  test('stays within type and position wherever they overlap', () => {
    for (const one of Object.values(catalogue.types)) {
      for (const at of Object.values(catalogue.positions)) {
        const low = Math.max(one.old_c_min, at.usual_c_min);
        const high = Math.min(one.old_c_max, at.usual_c_max);
        if (low > high) continue;
        expect(usualCapacitance(one, at)).toBeGreaterThanOrEqual(low);
        expect(usualCapacitance(one, at)).toBeLessThanOrEqual(high);
      }
    }
  });

  test('takes a preferred rating that bears the voltage known to be there', () => {
    const volts = completed({ type: 'al-electrolytic-wet' }, 'bulk-rail', 52).ratedVoltage;
    expect(volts).toBe(63);
  });

  test('takes the voltage itself where no preferred rating bears it', () => {
    expect(completed({ type: 'al-electrolytic-wet' }, 'bulk-rail', 1e5).ratedVoltage).toBe(1e5);
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
