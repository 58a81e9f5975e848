import { describe, expect, test } from 'vitest';
import { say, sayNumber, sayTolerance } from '../../../../src/engine/markings/meanings/say.ts';

describe('a value in words', () => {
  // The largest step of the unit that the value reaches, in four significant figures.
  test.each<[value: number, unit: 'F' | 'V' | 'Ω' | 'W', said: string]>([
    [4.7e-8, 'F', '47 nF'],
    [1e-9, 'F', '1 nF'],
    [9.99e-10, 'F', '999 pF'],
    [1e-6, 'F', '1 µF'],
    // A thousandth of a farad is said as thousands of microfarads.
    [2.2e-3, 'F', '2200 µF'],
    [0.999, 'F', '999000 µF'],
    [1, 'F', '1 F'],
    [1500, 'F', '1500 F'],
    [5e-13, 'F', '0.5 pF'],
    [0, 'F', '0 F'],
    [5.563254e-10, 'F', '556.3 pF'],
    // What binary fractions leave just below a step is at the step.
    [0.99999999999e-9, 'F', '1 nF'],
    [999, 'V', '999 V'],
    [1000, 'V', '1 kV'],
    [1e7, 'V', '10000 kV'],
    [6.3, 'V', '6.3 V'],
    [0.5, 'V', '0.5 V'],
    [0, 'V', '0 V'],
    [0.22, 'Ω', '0.22 Ω'],
    [0.001, 'Ω', '1 mΩ'],
    [0.0005, 'Ω', '0.5 mΩ'],
    [4700, 'Ω', '4.7 kΩ'],
    [1e6, 'Ω', '1 MΩ'],
    [1e9, 'Ω', '1 GΩ'],
    [1e12, 'Ω', '1 TΩ'],
    [0, 'Ω', '0 Ω'],
    [0.125, 'W', '0.125 W'],
    [2000, 'W', '2000 W'],
  ])('%d %s is %s', (value, unit, said) => {
    expect(say(value, unit)).toBe(said);
  });
});

describe('a tolerance in words', () => {
  test.each<[minus: number, plus: number, unit: '%' | 'pF', said: string]>([
    [10, 10, '%', '±10 %'],
    [0.25, 0.25, 'pF', '±0.25 pF'],
    [20, 80, '%', '−20/+80 %'],
    // Nothing below nought is not less than nought.
    [0, 100, '%', '0/+100 %'],
    [0.5, 0, 'pF', '−0.5/+0 pF'],
  ])('−%d +%d %s', (minus, plus, unit, said) => {
    expect(sayTolerance(minus, plus, unit)).toBe(said);
  });
});

describe('a number in words', () => {
  test.each([
    [-55, '−55'],
    [0, '0'],
    [125, '125'],
    [0.00012346, '0.0001235'],
    [-2200.4, '−2200'],
  ])('%d', (value, said) => {
    expect(sayNumber(value)).toBe(said);
  });
});
