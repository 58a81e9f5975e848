import { describe, expect, test } from 'vitest';
import { pulseRatingOf } from '../../../src/engine/sizes/pulse-of.ts';
import { knowing, known } from '../assessment/setting.ts';
import { madeEdge, sized } from './setting.ts';

const table = knowing(
  sized({
    pulseRatings: [
      madeEdge({ c_min: 1e-9, c_max: 2.2e-9, dvdt: 100 }),
      madeEdge({ c_min: 3.3e-9, c_max: 6.8e-9, dvdt: 50 }),
      madeEdge({ c_min: 1e-9, c_max: 2.2e-9, voltage: 250, dvdt: 200 }),
      madeEdge({ style: 'chip', c_min: 1e-9, c_max: 2.2e-9, dvdt: 20 }),
    ],
  }),
  'glass',
  { dvdt: known({ min: 1e6, typ: 2e6, max: 3e6 }) },
);

const at = (capacitance: number, ratedVoltage: number, style?: string) => {
  const found = pulseRatingOf(table, { type: 'glass', capacitance, ratedVoltage, style });
  return found?.by === 'value' ? found.range.typ / 1e6 : found?.by;
};

describe('the steepest edge', () => {
  test.each([
    ['of a value inside a span', 1.5e-9, 100, 100],
    ['of a value between two spans, as the larger', 2.7e-9, 100, 50],
    ['of a voltage between two, as the lower', 1e-9, 160, 100],
    ['of a higher voltage', 1e-9, 250, 200],
    ['of a value that the higher voltage lacks, as the lower voltage', 4.7e-9, 250, 50],
  ])('%s', (_what, farads, volts, edge) => {
    expect(at(farads, volts, 'axial')).toBe(edge);
  });

  test.each([
    ['a value below the spans', 4.7e-10, 100, 'axial'],
    ['a value above the spans', 1e-8, 100, 'axial'],
    ['a voltage below the rows', 1e-9, 63, 'axial'],
    ['a style without rows', 1e-9, 100, 'box'],
  ])('is that of the type for %s', (_what, farads, volts, style) => {
    expect(at(farads, volts, style)).toBe('type');
  });

  test('spans all styles where the style is open', () => {
    const found = pulseRatingOf(table, { type: 'glass', capacitance: 1e-9, ratedVoltage: 100 });
    expect(found?.range).toMatchObject({ min: 20e6, max: 100e6 });
  });
});
