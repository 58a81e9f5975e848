import { describe, expect, test } from 'vitest';
import { fromSi, toSi } from '../../../src/engine/quantities/decimal.ts';
import {
  formatQuantity,
  formatValue,
  parseQuantity,
  UNITS,
  writeQuantity,
  type Habit,
  type Unit,
} from '../../../src/engine/quantities/index.ts';

const read = (text: string, unit: Unit, bare?: string): [number, number, number] => {
  const result = parseQuantity(text, unit, bare);
  if (!result.ok) throw new Error(`${text}: ${result.fault.message}`);
  const { min, typ, max } = result.value;
  return [min, typ, max];
};

const faultOf = (text: string, unit: Unit): string => {
  const result = parseQuantity(text, unit);
  return result.ok ? 'read' : `${String(result.fault.at)}: ${result.fault.message}`;
};

describe('values below zero', () => {
  // Differences, levels, charges of a sign and slopes may be; sizes of things may not.
  const may = ['V', 'A', 'degC', 'K', '1/K', 'fraction', 'V/s', 'V/octave', 'cents', 'dB', 'deg'];
  test.each(UNITS)('in %s are read only where they make sense', (unit) => {
    const isRead = [...may, 'grade', 'number'].includes(unit);
    const fault = faultOf('-1', unit);
    if (isRead) expect(fault).toBe('read');
    else expect(fault).toMatch(/^0: An? .* cannot be below zero\.$|^2: The unit is missing/);
  });

  test('are named by what they would be', () => {
    expect(faultOf('-5 nF', 'F')).toBe('0: A capacitance cannot be below zero.');
    expect(Object.is(read('-0', 'V')[1], 0)).toBe(true);
  });
});

describe('a number without a unit', () => {
  // Usual units of the trade: common practice, no source.
  const usual: Record<Unit, number> = {
    ...{ V: 1, A: 1, ohm: 1, s: 1, Hz: 1, degC: 1, K: 1, W: 1, J: 1, deg: 1, cents: 1, dB: 1 },
    ...{ grade: 1, ratio: 1, number: 1, 'V/octave': 1, 'F*V/m3': 1 },
    ...{ fraction: 1e-2, H: 1e-9, m: 1e-3, C: 1e-12, S: 1e-3, '1/K': 1e-6, 'V/s': 1e6, m3: 1e-6 },
    // A whole number of a capacitance is in picofarad.
    F: 1e-12,
  };
  test.each(UNITS)('in %s', (unit) => {
    expect(read('1', unit)[1] / usual[unit]).toBeCloseTo(1, 12);
  });
});

describe('ranges in odd writings', () => {
  const cases: [text: string, unit: Unit, range: [number, number, number], bare?: string][] = [
    // Numbers in groups of three; a point or comma before the last three alone stays a decimal sign.
    ['1 000.55', 'V', [1000.55, 1000.55, 1000.55]],
    ['1 234 567.25', 'V', [1234567.25, 1234567.25, 1234567.25]],
    ['12,345,678', 'V', [12345678, 12345678, 12345678]],
    ['1,234,567.25', 'V', [1234567.25, 1234567.25, 1234567.25]],
    ['12,345.67', 'V', [12345.67, 12345.67, 12345.67]],
    ['1,234,567.5 V', 'V', [1234567.5, 1234567.5, 1234567.5]],
    ['12.345.678', 'V', [12345678, 12345678, 12345678]],
    ['1.234.567,25', 'V', [1234567.25, 1234567.25, 1234567.25]],
    ['12.345,67', 'V', [12345.67, 12345.67, 12345.67]],
    ['1.234.567,5 V', 'V', [1234567.5, 1234567.5, 1234567.5]],
    ['10. V', 'V', [10, 10, 10]],
    ['12.', 'V', [12, 12, 12]],
    // Signs of other keyboards.
    ['１０ Ｖ', 'V', [10, 10, 10]],
    ['5 V⁄s', 'V/s', [5, 5, 5]],
    ['5 V∕s', 'V/s', [5, 5, 5]],
    ['2 cm3 ±5 %', 'm3', [1.9e-6, 2e-6, 2.1e-6]],
    ['5 volts  per  second', 'V/s', [5, 5, 5]],
    ['3v3', 'V', [3.3, 3.3, 3.3]],
    // Tolerances.
    ['10 ±1 mV', 'V', [0.009, 0.01, 0.011]],
    ['10 nF ±100 %', 'F', [0, 1e-8, 2e-8]],
    ['±5', 'V', [-0.005, 0, 0.005], 'mV'],
    ['100 nF +20/-0 %', 'F', [1e-7, 1e-7, 1.2e-7]],
    // Limits.
    ['<0', 'V', [0, 0, 0]],
    ['≈ 5 V', 'V', [5, 5, 5]],
    // The middle of a range that is too wide to add up.
    ['1e308..1.5e308', 'V', [1e308, 1.25e308, 1.5e308]],
    // Capacitances without a unit.
    ['1', 'F', [1e-12, 1e-12, 1e-12]],
    ['0..10', 'F', [0, 5e-12, 1e-11]],
    ['0..0.5', 'F', [0, 2.5e-7, 5e-7]],
    ['1e-9..2e-9', 'F', [1e-9, 1.5e-9, 2e-9]],
    ['1 nF..2..3', 'F', [1e-9, 2e-9, 3e-9]],
    ['32 °F', 'degC', [0, 0, 0]],
    [`${' '.repeat(199)}5`, 'V', [5, 5, 5]],
  ];
  test.each(cases)('%s as %s', (text, unit, range, bare) => {
    read(text, unit, bare).forEach((end, i) => {
      const wanted = range[i] as number;
      expect(Math.abs(end - wanted)).toBeLessThanOrEqual(1e-12 * Math.abs(wanted));
    });
  });
});

describe('faults in odd writings', () => {
  const cases: [text: string, unit: Unit, fault: RegExp][] = [
    ['10\u00a020', 'V', /^3: There are two numbers/],
    ['10\u300020', 'V', /^3: There are two numbers/],
    ['10 \u2126', 'F', /^3: That is a resistance/],
    ['10 \u00ba', 'V', /^3: That is a temperature/],
    ['10..5..20', 'V', /^4: The middle figure/],
    ['1e308 +1000/-0 %', 'V', /^6: That number is too large/],
    ['4.7 ±5', 'F', /^3: The unit is missing/],
    ['-5 nF ±1 %', 'F', /^0: A capacitance cannot be/],
    ['+5 %/-1 V', 'V', /^0: The number that this tolerance belongs to/],
    ['+1 V/-5 %', 'V', /^0: The number that this tolerance belongs to/],
    ['5 > 3', 'V', /^2: “> 3” cannot be understood/],
    ['5 < 6', 'V', /^2: “< 6” cannot be understood/],
    ['5 ~ 6', 'V', /^2: “~ 6” cannot be understood/],
    ['10 x..20', 'V', /^3: “x\.\.” is not a unit/],
    ['1e-9..2', 'F', /^4: The unit is missing/],
    ['1..2.5', 'F', /^1: The unit is missing/],
    ['4n7 cm', 'F', /^4: There are two units/],
    ['5 V V', 'V', /^4: There are two units/],
    ['5 kV mV', 'V', /^5: There are two units/],
    ['10..  ', 'V', /^6: A number is missing/],
    ['abc  ', 'V', /^0: There is no number in “abc”/],
    ['5 ?  ', 'V', /^2: “\?” cannot be understood/],
    ['x5', 'V', /^0: There is no number in “x5”/],
    ['5 1,000,000', 'V', /^2: There are two numbers/],
    ['5 1.000.000', 'V', /^2: There are two numbers/],
    ['5 1,000.5', 'V', /^2: There are two numbers/],
    ['5 1.000,5', 'V', /^2: There are two numbers/],
    ['1,234,567,89', 'V', /^5: A number has only one decimal sign/],
    ['1.234.567.89', 'V', /^5: A number has only one decimal sign/],
    ['5%x', 'fraction', /^2: “x” does not belong/],
    ['5 Vx', 'V', /^2: “Vx” is not a unit of voltage/],
    // Letters that are no prefix of the unit do not stand for its point.
    ['4m7', 's', /^1: “m” is not a unit of time/],
    ['4f7', 'A', /^1: “f” is not a unit of current/],
    ['4M7', 'V', /^1: “M” is not a unit of voltage/],
    ['5 f', 'A', /^2: “f” is not a unit of current/],
    ['5 MFD', 'V', /^2: That is a capacitance/],
    ['5 KHZ', 'V', /^2: That is a frequency/],
    ['5 W', 'V', /^2: That is a power/],
    ['5 w', 'V', /^2: “w” is not a unit of voltage/],
    // One letter says too little of what was meant.
    ['5 c', 'V', /^2: “c” is not a unit of voltage/],
    ['5 C', 'V', /^2: “C” is not a unit of voltage/],
    ['5 a', 'V', /^2: “a” is not a unit of voltage/],
    ['5 d', 'V', /^2: “d” is not a unit of voltage/],
    ['5 x', 'V', /^2: “x” is not a unit of voltage/],
    ['5 n', 'C', /^2: “n” is not a unit of charge/],
    ['5 m', 'S', /^2: “m” is not a unit of conductance/],
  ];
  test.each(cases)('%s as %s', (text, unit, fault) => {
    expect(faultOf(text, unit)).toMatch(fault);
  });
});

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('odd values in print', () => {
  const values: [value: number, unit: Unit, printed: string, habit?: Habit][] = [
    [1e14, 'number', '100 000 000 000 000'],
    [1e15, 'number', '1e15'],
    [1e-9, 'number', '0.000000001'],
    [1e-10, 'number', '1e-10'],
    [-1, 'ohm', '−1 Ω', { ohm: 'letter' }],
    [0, 'ohm', '0R', { ohm: 'letter' }],
    [0, 's', '0 s'],
  ];
  test.each(values)('%d %s is %s', (value, unit, printed, habit) => {
    expect(spaced(formatValue(value, unit, habit))).toBe(printed);
  });

  const ranges: [min: number, typ: number, max: number, unit: Unit, text: string, Habit?][] = [
    [-1e-5, -1e-9, 0, 'V', '−10 to 0 µV'],
    [-10, 0, 1e-3, 'V', '−10 V to 1 mV'],
    [-1, 0, 1e-3, 'V', '−1 V to 1 mV'],
    [1e-3, 0.5, 1, 'V', '1 mV to 1 V'],
    [1.1e-3, 0.5, 1, 'V', '1.1 mV to 1 V'],
    [0.0315, 0.278, 4.44, 'V', '31.5 mV to 4.44 V'],
    [0.1, 0.5, 4.44, 'V', '0.1–4.44 V'],
    [-4.44, 0, 0.0315, 'V', '−4.44 V to 31.5 mV'],
    [0.0468, 0.1, 0.187, 'ohm', '0.0468–0.187 Ω'],
    [0.0468, 0.1, 1.87, 'ohm', '46.8 mΩ to 1.87 Ω'],
    [5e-9, 5e-8, 1e-7, 'F', '0.005–0.1 µF', { capacitance: 'pF-uF' }],
    // A per cent and a degree have no smaller unit.
    [1e-4, 5e-4, 1e-3, 'fraction', '0.01–0.1 %'],
    [0.02, 1, 5, 'degC', '0.02–5 °C'],
    [4701, 4701.5, 4702, 'ohm', '4k7', { ohm: 'letter' }],
    [4.5, 4.7, 4.9, 'V', '4.5–4.9 V', { ohm: 'letter' }],
    [10, 10, Infinity, 'V', '10 V to –'],
    [-Infinity, 10, 10, 'V', '– to 10 V'],
    [-0.1, 0.05, 0.1, 'fraction', '−10 to 10 %'],
  ];
  test.each(ranges)('%d, %d, %d %s is %s', (min, typ, max, unit, text, habit) => {
    expect(spaced(formatQuantity({ min, typ, max }, unit, habit))).toBe(text);
  });
});

describe('scales with another zero', () => {
  // Fixed points of water, and where both scales meet.
  const FAHRENHEIT = { power: 0, factor: 5 / 9, offset: -160 / 9 };
  test.each([
    [32, 0],
    [212, 100],
    [-40, -40],
  ])('%d °F is %d °C', (fahrenheit, celsius) => {
    expect(toSi(fahrenheit, FAHRENHEIT)).toBeCloseTo(celsius, 9);
    expect(fromSi(celsius, FAHRENHEIT)).toBeCloseTo(fahrenheit, 9);
    const range = { min: celsius, typ: celsius, max: celsius };
    expect(Number(writeQuantity(range, 'degC', '°F'))).toBeCloseTo(fahrenheit, 9);
  });

  test('powers go into the exponent, there and back', () => {
    expect(toSi(4.7, { power: -9 })).toBe(4.7e-9);
    expect(fromSi(4.7e-9, { power: -9 })).toBe(4.7);
    expect(toSi(0, { power: 3 })).toBe(0);
    expect(fromSi(Infinity, { power: 3 })).toBe(Infinity);
  });
});
