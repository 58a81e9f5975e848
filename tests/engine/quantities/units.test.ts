import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import {
  formatValue,
  parseQuantity,
  UNITS,
  type Unit,
} from '../../../src/engine/quantities/index.ts';

interface UnitLine {
  unit: string;
  si: string;
  factor: string;
}

const table = new URL('../../../data/units.csv', import.meta.url);
const lines: UnitLine[] = parse(readFileSync(table, 'utf8'), { columns: true });

describe('the units of the tables', () => {
  test.each(lines)('the engine reckons in $si, for $unit', ({ si }) => {
    expect(UNITS).toContain(si);
  });

  test.each(lines)('$unit can be typed, and is what the table says', ({ unit, si, factor }) => {
    const result = parseQuantity(`1 ${unit}`, si as Unit);
    if (!result.ok) throw new Error(result.fault.message);
    expect(result.value.typ / Number(factor)).toBeCloseTo(1, 12);
  });

  test.each(lines)('$unit can name the unit of numbers without one', ({ unit, si, factor }) => {
    const result = parseQuantity('3', si as Unit, unit);
    if (!result.ok) throw new Error(result.fault.message);
    expect(result.value.typ / Number(factor)).toBeCloseTo(3, 12);
  });
});

test.each(UNITS)('what is printed in %s can be typed', (unit) => {
  for (const value of [0, 1e-6, 0.02, 1, 40, 5e4]) {
    const result = parseQuantity(formatValue(value, unit), unit);
    if (!result.ok) throw new Error(result.fault.message);
    // To the three digits that are printed.
    expect(Math.abs(result.value.typ - value)).toBeLessThanOrEqual(0.005 * value);
  }
});
