import { describe, expect, test } from 'vitest';
import { readMarking } from '../../../../src/engine/markings/index.ts';
import { catalogue } from '../tables.ts';

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

const µ = 1e-6;

describe('between which values a part is', () => {
  test.each<[text: string, low: number, high: number, volts?: number]>([
    ['88-108 MFD 125VAC', 88, 108, 125],
    ['88-108 MFD 110 VAC motor start', 88, 108, 110],
    ['88-108uF', 88, 108],
    ['189-227MFD 330VAC', 189, 227, 330],
    ['145 µF – 174 µF 220 V~', 145, 174, 220],
    ['430-516 MFD 115 VAC 60Hz', 430, 516, 115],
    ['40-50 µF 220V~', 40, 50, 220],
    ['100-120 µF 125 V~', 100, 120, 125],
    ['161-193 MFD 125V', 161, 193, 125],
  ])('%s', (text, low, high, volts) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.types).toEqual(['al-motor-start']);
    expect((best?.capacitance?.typ ?? NaN) / (low * µ)).toBeCloseTo(1, 9);
    expect(best?.capacitance?.min).toBe(best?.capacitance?.typ);
    expect((best?.capacitance?.max ?? NaN) / (high * µ)).toBeCloseTo(1, 9);
    expect(best?.ratedVoltage?.typ).toBe(volts);
  });

  test.each([
    '40-50 MFD 450 VDC',
    '40-50 MFD 150V',
    '100-120 MFD 350V',
    '40-40 µF 350 V',
    '50-100 µF 350 V',
    '32+32 µF 350 V',
  ])('%s is of a can with two sections', (text) => {
    expect(readMarking(catalogue, text)[0]?.sections).toHaveLength(2);
  });
});
