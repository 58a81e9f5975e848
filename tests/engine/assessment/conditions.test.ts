import { describe, expect, test } from 'vitest';
import {
  resolveSituation,
  type ResolvedCondition,
} from '../../../src/engine/assessment/conditions.ts';
import type { Request } from '../../../src/engine/assessment/parts.ts';
import type { Catalogue } from '../../../src/engine/catalogue.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given } from './setting.ts';

const resolved = (request: Request, id: string, from: Catalogue = catalogue): ResolvedCondition => {
  const found = resolveSituation(from, request).conditions.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no condition ${id}`);
  return found;
};

const coupling: Request = {
  original: {
    type: 'ceramic-z5u',
    capacitance: exactly(10e-9),
    ratedVoltage: exactly(50),
  },
  position: 'interstage-coupling',
};

describe('conditions come from', () => {
  test('the visitor, where given, just as given', () => {
    const range = { min: 40e3, typ: 47e3, max: 56e3 };
    expect(resolved({ ...coupling, conditions: { load: range } }, 'load')).toMatchObject({
      range,
      from: 'given',
    });
  });

  test('the position, where it has a default', () => {
    expect(resolved(coupling, 'frequency')).toMatchObject({ range: exactly(20), from: 'default' });
  });

  test('the old part, where the position says how', () => {
    expect(resolved(coupling, 'vdc')).toMatchObject({ range: exactly(25), from: 'derived' });
    expect(resolved(coupling, 'load')).toMatchObject({ range: exactly(1e6), from: 'derived' });
  });

  test('nowhere else: every row of the position, and no other', () => {
    for (const position of Object.keys(catalogue.positions)) {
      const { conditions } = resolveSituation(catalogue, {
        original: { type: 'pet-metallized' },
        position,
      });
      const rows = catalogue.conditions.filter((row) => row.position === position);
      expect(conditions.map(({ id }) => id)).toEqual(rows.map(({ condition }) => condition));
      expect(conditions.map(({ row }) => row)).toEqual(rows);
    }
  });

  test('not from a condition that the position does not have', () => {
    const { conditions } = resolveSituation(catalogue, {
      ...coupling,
      conditions: given({ 'esr-min': 1 }),
    });
    expect(conditions.map(({ id }) => id)).not.toContain('esr-min');
  });
});

describe('what follows from the old part', () => {
  test.each([
    [10e-9, 1e6],
    [100e-9, 100e3],
    [4.7e-9, 2.2e6],
    [22e-9, 470e3],
  ])('a load for %d F is a preferred value: %d ohm', (farad, ohm) => {
    const original = { ...coupling.original, capacitance: exactly(farad) };
    expect(resolved({ ...coupling, original }, 'load').range.typ).toBeCloseTo(ohm, 0);
  });

  test.each([
    // Paper is rated near its circuit; a disc of less than 2 kV sits as often in one of 25 V.
    ['paper-wax', 400, 200, 360],
    ['paper-wax', 600, 300, 540],
    ['ceramic-z5u', 1000, 25, 45],
    ['ceramic-z5u', 2000, 1000, 1800],
    ['silvered-mica', 1000, 500, 900],
    // A film of 160 V sits in a circuit of 25 V too; one of 400 V was paid for because valves ask it.
    ['pet-metallized', 160, 50, 90],
    ['pet-metallized', 400, 200, 360],
    ['ceramic-z5u', 25, 12.5, 22.5],
  ])('for %s of %d V, %d V across it and %d V at switch-on', (type, rated, direct, surge) => {
    const original = { ...coupling.original, type, ratedVoltage: exactly(rated) };
    expect(resolved({ ...coupling, original }, 'vdc').range.typ).toBe(direct);
    expect(resolved({ ...coupling, original }, 'v-surge').range.typ).toBe(surge);
  });

  test('a current goes with the value', () => {
    const request: Request = {
      original: { type: 'ps-film-foil', capacitance: exactly(1e-9) },
      position: 'vco-timing',
    };
    expect(resolved(request, 'charge-current').range.typ).toBeCloseTo(80e-9, 15);
  });

  test('follows a given value no more', () => {
    const conditions = given({ vdc: 7 });
    expect(resolved({ ...coupling, conditions }, 'vdc').from).toBe('given');
    expect(resolved({ ...coupling, conditions }, 'v-surge').from).toBe('derived');
  });
});

describe('units become SI', () => {
  test.each([
    ['integrator', 'years', 10 * 365.25 * 24 * 3600],
    ['sample-hold', 'room', 0.01],
    ['sample-hold', 't-max', 45],
    ['snubber', 'edge', 200e6],
    ['sample-hold', 'hold-time', 0.01],
    ['speaker-crossover', 'load', 8],
  ])('%s: %s', (position, id, value) => {
    const { range } = resolved({ original: { type: 'pet-metallized' }, position }, id);
    expect(range.typ / value).toBeCloseTo(1, 3);
  });

  test('a spread keeps its ends', () => {
    const { range } = resolved(
      { original: { type: 'paper-x-safety' }, position: 'mains-x' },
      'vac',
    );
    expect(range).toEqual({ min: 207, typ: 230, max: 253 });
  });

  test('every default is a range in order', () => {
    for (const position of Object.keys(catalogue.positions)) {
      const request = { original: { type: 'al-electrolytic-wet' }, position };
      for (const { range } of resolveSituation(catalogue, request).conditions) {
        expect(range.min).toBeLessThanOrEqual(range.typ);
        expect(range.typ).toBeLessThanOrEqual(range.max);
        expect(Number.isFinite(range.min) && Number.isFinite(range.max)).toBe(true);
      }
    }
  });
});

describe('an impossible request', () => {
  test.each([
    [{ original: { type: 'unobtainium' }, position: 'sample-hold' }],
    [{ original: { type: 'pet-metallized' }, position: 'nowhere' }],
    [{ original: { type: 'toString' }, position: 'sample-hold' }],
    [{ original: { type: 'pet-metallized' }, position: 'constructor' }],
  ])('%j is refused by a RangeError', (request) => {
    expect(() => resolveSituation(catalogue, request)).toThrow(RangeError);
  });
});
