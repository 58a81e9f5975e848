import { describe, expect, test } from 'vitest';
import { readMarking } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

const p = 1e-12;

/** What a trimmer bears, and its ends in F. */
const ranges: [string, number, number][] = [
  ['3-30', 3 * p, 30 * p],
  ['3-30 pF', 3 * p, 30 * p],
  ['5-65', 5 * p, 65 * p],
  ['6-25', 6 * p, 25 * p],
  ['10-60', 10 * p, 60 * p],
  ['5-30 N470', 5 * p, 30 * p],
  ['7-100pF', 7 * p, 100 * p],
  ['1.8-10 pF', 1.8 * p, 10 * p],
];

describe('the range of a trimmer', () => {
  test.each(ranges)('%s', (text, low, high) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.notUnderstood).toEqual([]);
    expect((best?.capacitance?.min ?? NaN) / low).toBeCloseTo(1, 9);
    expect((best?.capacitance?.max ?? NaN) / high).toBeCloseTo(1, 9);
  });

  test('3-30 may be microfarads and volts as well', () => {
    const values = readMarking(catalogue, '3-30').map(({ capacitance }) => capacitance?.typ ?? 0);
    expect(values.some((value) => Math.abs(value / 3e-6 - 1) < 1e-9)).toBe(true);
  });

  test.each(['10-450', '8-8-450', '22/16', '88-12', '20-20/350'])('%s is none', (text) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.evidence.map(({ means }) => means).join()).not.toContain('adjustable');
  });
});
