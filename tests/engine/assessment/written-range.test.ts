import { describe, expect, test } from 'vitest';
import { writtenRange } from '../../../src/engine/assessment/written-range.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import { catalogue } from './setting.ts';

/** What a finding writes into the field of a sum: what a person would, to four digits. */

const span = (min: number, typ: number, max: number): Range => ({ min, typ, max });

describe('a range in a field', () => {
  test.each<[string, Range | undefined, string, string | undefined]>([
    ['a tenth of a microfarad', exactly(1e-7), 'F', '100n'],
    ['the same from a table in microfarads', exactly(1e-7), 'uF', '100n'],
    ['five digits are too many', exactly(123.456e-9), 'F', '123.5n'],
    ['a whole number of a unit has it behind', exactly(5), 'V', '5 V'],
    ['ohms', exactly(4700), 'ohm', '4.7k'],
    ['an ohm', exactly(1), 'ohm', '1 ohm'],
    ['amperes', exactly(2e-3), 'mA', '2m'],
    ['seconds have their unit behind', exactly(5e-3), 's', '5ms'],
    ['hertz', exactly(1e3), 'Hz', '1k'],
    ['henries', exactly(47e-6), 'H', '47u'],
    ['coulombs likewise', exactly(3e-9), 'C', '3nC'],
    ['watts', exactly(0.25), 'W', '250m'],
    ['ten years, which are no round number of seconds', exactly(315_576_000), 'years', '10 years'],
    ['seven years and some weeks', exactly(7.1234 * 31_557_600), 'years', '7.123 years'],
    ['hours', exactly(1000 * 3600), 'h', '1000 h'],
    ['kelvin have no prefix', exactly(1500), 'K', '1500 K'],
    ['degrees', exactly(-40), 'degC', '-40 degC'],
    ['a share in percent', exactly(0.05), '%', '5 %'],
    ['a share', exactly(0.05), 'fraction', '0.05 fraction'],
    ['parts in a million', exactly(2e-4), 'ppm/K', '200 ppm/K'],
    ['millimetres', exactly(0.0125), 'mm', '12.5 mm'],
    ['nothing', undefined, 'V', undefined],
  ])('%s', (_what, range, word, text) => {
    expect(writtenRange(catalogue, range, word)).toBe(text);
  });

  test.each<[string, Range, string, string]>([
    ['from least to most', span(1e-3, 2e-3, 4e-3), 'A', '1..2..4m'],
    ['whose usual lies midway', span(1e-3, 2e-3, 3e-3), 'A', '1..3m'],
    ['in percent', span(0.01, 0.02, 0.04), '%', '1..2..4 %'],
    ['in volts', span(1, 2, 4), 'V', '1..2..4 V'],
  ])('%s', (_what, range, word, text) => {
    expect(writtenRange(catalogue, range, word)).toBe(text);
  });
});
