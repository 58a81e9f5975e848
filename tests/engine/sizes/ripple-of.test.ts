import { describe, expect, test } from 'vitest';
import type { RippleFrequencyRow, RippleTemperatureRow } from '../../../src/schemas/sizes.ts';
import { frequencyFactor, temperatureFactor } from '../../../src/engine/sizes/ripple-factors.ts';
import { listedRipple } from '../../../src/engine/sizes/ripple-of.ts';
import { madeResistance, sized } from './setting.ts';

const provenance = { source: 'trade', locator: '', basis: 'common-practice', note: '' } as const;

const byFrequency = (frequency_hz: number, factor: number): RippleFrequencyRow => ({
  type: 'glass',
  v_min: 50,
  v_max: 100,
  c_min: 1e-6,
  c_max: 1e-4,
  frequency_hz,
  factor,
  ...provenance,
});

const byTemperature = (temperature_c: number, factor: number): RippleTemperatureRow => ({
  type: 'glass',
  temperature_c,
  factor,
  ...provenance,
});

const table = sized({
  seriesResistance: [
    madeResistance({ capacitance: 1e-5, ripple_a: 1, ripple_c: 105 }),
    madeResistance({ capacitance: 1e-6, ripple_a: 0.1, ripple_c: 105 }),
    madeResistance({ capacitance: 1e-5, frequency_hz: 120, ripple_a: 0.4, ripple_c: 85 }),
    madeResistance({ capacitance: 1e-4, frequency_hz: 120 }),
  ],
  rippleByFrequency: [byFrequency(1e5, 1), byFrequency(120, 0.5), byFrequency(1e3, 0.7)],
  rippleByTemperature: [byTemperature(105, 1), byTemperature(65, 2), byTemperature(85, 1.6)],
});

const part = (capacitance: number, ratedVoltage = 63, type = 'glass') => ({
  type,
  capacitance,
  ratedVoltage,
});

describe('a listed ripple current', () => {
  test('is what a row says, with the frequency and temperature that it is for', () => {
    expect(listedRipple(table, part(1e-5), 1e5)).toMatchObject({
      current: 1,
      frequency: 1e5,
      temperature: 105,
    });
  });

  test('lies between two rows on logarithmic scales', () => {
    const found = listedRipple(table, part(Math.sqrt(10) * 1e-6), 1e5);
    expect(found?.current).toBeCloseTo(Math.sqrt(0.1), 9);
  });

  test('is taken from the rows of the nearest frequency that cover the value', () => {
    expect(listedRipple(table, part(1e-5), 100)?.frequency).toBe(120);
    expect(listedRipple(table, part(1e-6), 100)?.frequency).toBe(1e5);
  });

  test.each([
    ['a value below the rows', part(4.7e-7)],
    ['a value whose row has none', part(1e-4)],
    ['a voltage outside the band', part(1e-5, 160)],
    ['a type without rows', part(1e-5, 63, 'silvered-mica')],
  ])('is not known of %s', (_what, one) => {
    expect(listedRipple(table, one, 1e5)).toBeUndefined();
  });
});

describe('the factor for frequency', () => {
  const times = (from: number, to: number, one = part(1e-5)): number | undefined =>
    frequencyFactor(table, one, from, to)?.factor;

  test.each([
    ['at a row', 1e5, 120, 0.5],
    ['from one row to another', 120, 1e3, 1.4],
    ['between two rows, half-way on a logarithmic scale', 1e5, 1e4, 0.85],
    ['above the highest', 1e5, 1e6, 1],
    ['a little below the lowest, by equal heat in a steady loss', 1e5, 60, 0.5 * Math.sqrt(0.5)],
  ])('%s', (_what, from, to, expected) => {
    expect(times(from, to)).toBeCloseTo(expected, 9);
  });

  test('is not known far below the lowest, outside a band or of another type', () => {
    expect(times(1e5, 40)).toBeUndefined();
    expect(times(1e5, 120, part(1e-4))).toBeUndefined();
    expect(times(1e5, 120, part(1e-5, 160))).toBeUndefined();
    expect(times(1e5, 120, part(1e-5, 63, 'silvered-mica'))).toBeUndefined();
  });
});

describe('the factor for temperature', () => {
  const times = (from: number, to: number, type = 'glass'): number | undefined =>
    temperatureFactor(table, { type }, from, to)?.factor;

  test.each([
    ['at a row', 105, 85, 1.6],
    ['between two rows', 105, 95, 1.3],
    ['from a temperature between rows', 75, 105, 1 / 1.8],
    ['in the cool below the lowest', 105, 20, 2],
  ])('%s', (_what, from, to, expected) => {
    expect(times(from, to)).toBeCloseTo(expected, 9);
  });

  test('is not known above the highest', () => {
    expect(times(105, 110)).toBeUndefined();
  });

  test('earns nothing in the cool where no row speaks of the type, and no leave in the heat', () => {
    expect(times(40, 20, 'silvered-mica')).toBe(1);
    expect(times(40, 41, 'silvered-mica')).toBeUndefined();
  });
});
