import { describe, expect, test } from 'vitest';
import { findTolerance, type Deviation } from '../../../src/engine/quantities/tolerance.ts';
import type { Unit } from '../../../src/engine/quantities/unit.ts';

const share = (value: number): Deviation => ({ kind: 'share', value });
/** An amount, with the power of ten of its unit where one is written. */
const amount = (value: number, power?: number): Deviation =>
  power === undefined ? { kind: 'amount', value } : { kind: 'amount', value, scale: { power } };

const found = (text: string, unit: Unit, from = 0) => {
  const result = findTolerance(text, from, unit);
  if (result === undefined || !result.ok) return result;
  const plain = (side: Deviation): Deviation =>
    side.kind === 'share' || side.scale === undefined ? side : amount(side.value, side.scale.power);
  const { minus, plus, bare, at, end } = result.value;
  return { minus: plain(minus), plus: plain(plus), bare, at, end };
};

describe('a tolerance behind a value', () => {
  const cases: [text: string, unit: Unit, minus: Deviation, plus: Deviation, bare: boolean][] = [
    // One for both sides, in each way of writing the sign.
    ['±5 %', 'F', share(0.05), share(0.05), false],
    ['± 5%', 'F', share(0.05), share(0.05), false],
    ['+/-5 %', 'F', share(0.05), share(0.05), false],
    ['+ / - 5 %', 'F', share(0.05), share(0.05), false],
    ['+-5 %', 'F', share(0.05), share(0.05), false],
    ['(±5 %)', 'F', share(0.05), share(0.05), false],
    ['( ±5 % )', 'F', share(0.05), share(0.05), false],
    ['±0.5 pF', 'F', amount(0.5, -12), amount(0.5, -12), false],
    ['±0.5', 'F', amount(0.5), amount(0.5), true],
    // A side each, the upper or the lower one first.
    ['+80/-20 %', 'F', share(0.2), share(0.8), false],
    ['-20/+80 %', 'F', share(0.2), share(0.8), false],
    ['-20 % +80 %', 'F', share(0.2), share(0.8), false],
    ['+80 %, -20 %', 'F', share(0.2), share(0.8), false],
    ['+80;-20 %', 'F', share(0.2), share(0.8), false],
    ['( +80 / -20 % )', 'F', share(0.2), share(0.8), false],
    ['+80 %/-20', 'F', share(0.2), share(0.8), false],
    ['-0/+100 %', 'F', share(0), share(1), false],
    ['+1 pF/-0.5', 'F', amount(0.5, -12), amount(1, -12), false],
    ['+1/-0.5 pF', 'F', amount(0.5, -12), amount(1, -12), false],
    ['+1/-0.5', 'F', amount(0.5), amount(1), true],
    // Sides in different units keep their own.
    ['+1 nF/-500 pF', 'F', amount(500, -12), amount(1, -9), false],
    ['-500 pF/+1 nF', 'F', amount(500, -12), amount(1, -9), false],
    ['+20 %/-1 pF', 'F', amount(1, -12), share(0.2), false],
    ['+1 pF/-20 %', 'F', share(0.2), amount(1, -12), false],
    // Of a share, per cent are points.
    ['±1 %', 'fraction', amount(1, -2), amount(1, -2), false],
    // Kelvin beside a temperature.
    ['±5 K', 'degC', amount(5, 0), amount(5, 0), false],
    ['+5/-2 K', 'degC', amount(2, 0), amount(5, 0), false],
    ['±5  %', 'F', share(0.05), share(0.05), false],
  ];
  test.each(cases)('%s of %s', (text, unit, minus, plus, bare) => {
    expect(found(text, unit)).toEqual({ minus, plus, bare, at: 0, end: text.length });
  });

  test('begins where it stands and ends before what follows', () => {
    expect(found('10 nF  ±5 % 63 V', 'F', 5)).toMatchObject({ at: 7, end: 11 });
    expect(found('10 nF  +80/-20 % 63 V', 'F', 5)).toMatchObject({ at: 7, end: 16 });
    expect(found('10 nF (±5 %) 63 V', 'F', 5)).toMatchObject({ at: 6, end: 12 });
    expect(found('10 nF ±5 % (63 V)', 'F', 5)).toMatchObject({ at: 6, end: 10 });
    expect(found('10 nF (+80/-20 %)63', 'F', 5)).toMatchObject({ at: 6, end: 17 });
  });

  test.each([
    ['both sides of one sign', '+5/+5 %'],
    ['one side alone', '+5 %'],
    ['a sign before no number', '+ x'],
    ['a second side without a number', '+5/-x'],
    ['a point for a number', '+.'],
    ['something else before it', 'x ±5 %'],
    ['something else before two sides', 'x +5/-2 %'],
    ['something else between the sides', '+5 % x -2 %'],
    ['nothing', ''],
  ])('%s is none', (_, text) => {
    expect(findTolerance(text, 0, 'F')).toBeUndefined();
  });

  test('kelvin belong to no time', () => {
    expect(found('±5 K', 's')).toMatchObject({ bare: true, end: 2 });
  });

  test('what is wrong is said, and where', () => {
    expect(findTolerance('  ± x', 0, 'F')).toMatchObject({
      ok: false,
      fault: { message: 'A number is missing behind “±”.', at: 2 },
    });
    expect(findTolerance('±-5 %', 0, 'F')).toMatchObject({ ok: false });
    for (const text of ['±5 %', '+5/-2 %', '+5 %/-2 K', '+5 K/-2 %'])
      expect(findTolerance(` ${text}`, 0, 'degC')).toMatchObject({
        ok: false,
        fault: { message: expect.stringContaining('percentage of a temperature'), at: 1 },
      });
  });

  test('the unit of the whole is that of the upper side, of the lower where that has none', () => {
    const scaleOf = (text: string): unknown => {
      const result = findTolerance(text, 0, 'F');
      return result?.ok === true ? result.value.scale?.power : 'none';
    };
    expect(scaleOf('+1 nF/-500 pF')).toBe(-9);
    expect(scaleOf('-500 pF/+1 nF')).toBe(-9);
    expect(scaleOf('+20 %/-1 pF')).toBe(-12);
    expect(scaleOf('±5 %')).toBeUndefined();
  });
});
