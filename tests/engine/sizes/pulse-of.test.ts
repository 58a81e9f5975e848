import { describe, expect, test } from 'vitest';
import { pulseRatingOf } from '../../../src/engine/sizes/pulse-of.ts';
import { knowing, known, notKnown } from '../assessment/setting.ts';
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

describe('the steepest edge of two parts', () => {
  const weak = { type: 'glass', capacitance: 4.7e-9, ratedVoltage: 100, style: 'axial' };
  const strong = { ...weak, capacitance: 1e-9, ratedVoltage: 250 };
  const unknown = { ...weak, type: 'no-such-type' };
  const edgeOf = (...parts: (typeof weak)[]): number | undefined => {
    const found = pulseRatingOf(table, { ...weak, made: { parts } as never });
    return found && found.range.typ / 1e6;
  };

  test.each([
    ['is that of the weaker', [strong, weak], 50],
    ['in either order', [weak, strong], 50],
    ['is not known where one is not', [strong, unknown], undefined],
    ['nor where the other is not', [unknown, strong], undefined],
    ['is that of the one where there is one', [strong], 200],
  ])('%s', (_what, parts, edge) => {
    expect(edgeOf(...parts)).toBe(edge);
  });
});

describe('an edge comes with where it is from', () => {
  const from = (source: string, basis: 'published' | 'memory', row: object) =>
    madeEdge({ source, basis, ...row });
  const rows = sized({
    pulseRatings: [
      from('far', 'memory', { c_max: 9e-9, dvdt: 10 }),
      from('near', 'published', { c_max: 2e-9, dvdt: 100 }),
      from('boxes', 'memory', { style: 'box', dvdt: 40 }),
      from('low', 'memory', { voltage: 63, c_min: 1e-10, dvdt: 5 }),
    ],
  });
  const of = (capacitance: number, style?: string) =>
    pulseRatingOf(rows, { type: 'glass', capacitance, ratedVoltage: 100, style });

  test('of the smallest span that reaches up to the value', () => {
    expect(of(1.5e-9, 'axial')).toMatchObject({
      ...{ range: { typ: 100e6 }, sources: ['near'], bases: ['published'] },
    });
    expect(of(1.5e-9)).toMatchObject({
      ...{ sources: ['near', 'boxes'], bases: ['published', 'memory'] },
    });
  });

  test('and not of a lower voltage whose spans begin further down', () => {
    expect(of(5e-10, 'axial')?.by).not.toBe('value');
  });

  test('of the type where no row speaks', () => {
    const whole = knowing(rows, 'glass', { dvdt: known(7e6) });
    const found = pulseRatingOf(whole, { type: 'glass', capacitance: 1, ratedVoltage: 100 });
    expect(found?.bases).toHaveLength(1);
    const none = knowing(rows, 'glass', { dvdt: notKnown });
    expect(
      pulseRatingOf(none, { type: 'glass', capacitance: 1, ratedVoltage: 100 }),
    ).toBeUndefined();
  });
});
