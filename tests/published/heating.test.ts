import { describe, expect, test } from 'vitest';
import type { SeriesResistanceRow } from '../../src/schemas/sizes.ts';
import { currentFor, thermalOf } from '../../src/engine/findings/heating.ts';
import { exactly, type Range } from '../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, given } from '../engine/assessment/setting.ts';

/** Kelvin that makers let the core of a part warm at its highest temperature: their own notes. */
const RISES = { 85: 10, 105: 5 };

/** Current (A) that is estimated to warm a listed part as much as its maker lets it. */
const estimate = (row: SeriesResistanceRow, rise: number): Range => {
  const circumstances = circumstancesOf({
    original: {
      type: row.type,
      capacitance: exactly(row.capacitance),
      ratedVoltage: exactly(row.v_min),
    },
    position: 'reservoir',
    conditions: given({ 'f-work': row.frequency_hz }),
  });
  const thermal = thermalOf(circumstances.original, circumstances);
  if (Array.isArray(thermal)) throw new Error('size or resistance not known');
  return currentFor(thermal, rise);
};

const rowsOf = (source: string): SeriesResistanceRow[] =>
  catalogue.seriesResistance.filter((row) => row.ripple_a !== undefined && row.source === source);

const ratios = (rows: readonly SeriesResistanceRow[], rise: number): number[] =>
  rows.map((row) => estimate(row, rise).typ / (row.ripple_a ?? NaN)).toSorted((a, b) => a - b);

const median = (rising: readonly number[]): number => rising[Math.floor(rising.length / 2)] ?? NaN;

describe('the estimate of heat against ripple currents that sheets print', () => {
  test('general parts of 85 °C: each printed current lies in the span, the usual one within a tenth', () => {
    const rows = rowsOf('vishay-038rsu-table');
    expect(rows).toHaveLength(15);
    for (const row of rows) {
      const { min, max } = estimate(row, RISES[85]);
      expect(row.ripple_a).toBeGreaterThan(min * 0.95);
      expect(row.ripple_a).toBeLessThan(max * 1.05);
    }
    const found = ratios(rows, RISES[85]);
    expect(median(found)).toBeGreaterThan(0.9);
    expect(median(found)).toBeLessThan(1.1);
  });

  test('low-impedance parts of 105 °C: the same with half the rise', () => {
    const rows = rowsOf('panasonic-fc');
    expect(rows.length).toBeGreaterThan(40);
    const found = ratios(rows, RISES[105]);
    expect(median(found)).toBeGreaterThan(0.9);
    expect(median(found)).toBeLessThan(1.1);
    expect(found.at(0)).toBeGreaterThan(0.75);
    expect(found.at(-1)).toBeLessThan(1.25);
  });

  test('twice the rise would not pass', () => {
    expect(median(ratios(rowsOf('vishay-038rsu-table'), 2 * RISES[85]))).toBeGreaterThan(1.1);
  });
});
