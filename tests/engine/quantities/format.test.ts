import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatCode,
  formatQuantity,
  formatValue,
  parseQuantity,
  UNITS,
  type Habit,
  type Range,
  type Unit,
} from '../../../src/engine/quantities/index.ts';
import { UNIT_FACTS } from '../../../src/engine/quantities/unit-facts.ts';

/** With plain spaces, which are easier to read in a table of cases. */
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('one value', () => {
  const cases: [value: number, unit: Unit, printed: string, habit?: Habit][] = [
    [4.7e-9, 'F', '4.7 nF'],
    [1e-9, 'F', '1 nF'],
    [9.99e-10, 'F', '999 pF'],
    [9.999e-10, 'F', '1 nF'],
    [999.99e-9, 'F', '1 µF'],
    [4.7e-13, 'F', '0.47 pF'],
    [4.7e-3, 'F', '4700 µF'],
    [4.7e-2, 'F', '47 000 µF'],
    [0.068, 'F', '68 000 µF'],
    [0.1, 'F', '0.1 F'],
    [0.15, 'F', '0.15 F'],
    [0.22, 'F', '0.22 F'],
    [1, 'F', '1 F'],
    [0, 'F', '0 F'],
    [4.7654e-9, 'F', '4.77 nF'],
    [4.7654e-9, 'F', '4.765 nF', { digits: 4 }],
    [4.7654e-9, 'F', '5 nF', { digits: 1 }],
    [4.7654e-9, 'F', '5 nF', { digits: 0 }],
    [4.7654e-9, 'F', '4.77 nF', { digits: NaN }],
    [4.7e-9, 'F', '4,7 nF', { decimal: 'comma' }],
    [4.7e-9, 'F', '4700 pF', { capacitance: 'pF-uF' }],
    [9.999e-9, 'F', '0.01 µF', { capacitance: 'pF-uF' }],
    [1e-8, 'F', '0.01 µF', { capacitance: 'pF-uF' }],
    [4.7e-8, 'F', '0,047 µF', { capacitance: 'pF-uF', decimal: 'comma' }],
    [4700, 'ohm', '4.7 kΩ'],
    [4700, 'ohm', '4k7', { ohm: 'letter' }],
    [0.22, 'ohm', '0.22 Ω'],
    [0.1, 'ohm', '0.1 Ω'],
    [0.0999, 'ohm', '99.9 mΩ'],
    [1e10, 'ohm', '10 GΩ'],
    [-40, 'degC', '−40 °C'],
    [-0, 'degC', '0 °C'],
    [-1e-30, 'degC', '−1e-30 °C'],
    [125, 'degC', '125 °C'],
    // An angle has no space before its sign.
    [59.4, 'deg', '59.4°'],
    [600, 'V', '600 V'],
    [-0.0015, 'V', '−1.5 mV'],
    [0.99999, 'V', '1 V'],
    [2e-12, 'A', '2 pA'],
    [0.05, 'fraction', '5 %'],
    [0.00001, 'fraction', '0.001 %'],
    [12.5, 'fraction', '1250 %'],
    [-7.5e-4, '1/K', '−750 ppm/K'],
    [5e6, 'V/s', '5 V/µs'],
    [0.002, 'V/s', '2 mV/s'],
    [59.996, 's', '60 s'],
    [119, 's', '119 s'],
    [306, 's', '5.1 min'],
    [3299.999999996997, 's', '1 h', { digits: 1 }],
    [3300, 's', '1 h', { digits: 1 }],
    [3299.9, 's', '50 min', { digits: 1 }],
    [1800, 's', '30 min'],
    [3599.9, 's', '1 h'],
    [36000, 's', '10 h'],
    [864000, 's', '10 days'],
    [315576000, 's', '10 years'],
    [31557600, 's', '1 year'],
    [172332, 's', '47.9 h'],
    [172780, 's', '2 days'],
    [1, 'cents', '1 cent'],
    [1e6, 'Hz', '1 MHz'],
    [16.07, 'Hz', '16.1 Hz'],
    [1e-8, 'H', '10 nH'],
    [0.005, 'm', '5 mm'],
    [1.5, 'ratio', '1.5 ×'],
    [0.5, 'grade', '0.5'],
    [33, 'cents', '33 cents'],
    [0.025, 'J', '25 mJ'],
    [NaN, 'F', '–'],
    [Infinity, 'V', '–'],
  ];
  test.each(cases)('%s %s is printed %s', (value, unit, printed, habit) => {
    expect(spaced(formatValue(value, unit, habit))).toBe(printed);
  });

  test('number and unit never part at the end of a line', () => {
    expect(formatValue(4.7e-9, 'F')).toBe('4.7\u00a0nF');
    expect(formatValue(4.7e-2, 'F')).toBe('47\u00a0000\u00a0µF');
  });
});

describe('a range', () => {
  const cases: [range: [number, number, number], unit: Unit, printed: string, habit?: Habit][] = [
    [[4.7e-9, 4.7e-9, 4.7e-9], 'F', '4.7 nF'],
    [[4.5e-9, 4.7e-9, 4.9e-9], 'F', '4.5–4.9 nF'],
    [[9e-10, 1e-9, 1.1e-9], 'F', '0.9–1.1 nF'],
    [[2.6e-9, 1e-8, 14.6e-9], 'F', '2.6–14.6 nF'],
    [[2.6e-9, 1e-8, 14.6e-9], 'F', '0.0026–0.0146 µF', { capacitance: 'pF-uF' }],
    [[4.5e-9, 4.7e-9, 4.9e-9], 'F', '4,5–4,9 nF', { decimal: 'comma' }],
    [[1e-12, 1e-9, 1e-5], 'F', '1 pF to 10 µF'],
    [[0, 1e-9, 1e-5], 'F', '0–10 µF'],
    [[4.7e-9, 4.7001e-9, 4.7002e-9], 'F', '4.7 nF'],
    [[15, 25, 45], 'degC', '15–45 °C'],
    [[-40, 25, 85], 'degC', '−40 to 85 °C'],
    [[-55, -40, -10], 'degC', '−55 to −10 °C'],
    [[-0.1, 0, 0.1], 'fraction', '±10 %'],
    [[-0.56, 0, 0.22], 'fraction', '−56 to 22 %'],
    [[4465, 4700, 4935], 'ohm', '4.47–4.94 kΩ'],
    [[4500, 4700, 4900], 'ohm', '4k5–4k9', { ohm: 'letter' }],
    [[0.1, 0.5, 1], 'grade', '0.1–1'],
  ];
  test.each(cases)('%s %s is printed %s', ([min, typ, max], unit, printed, habit) => {
    expect(spaced(formatQuantity({ min, typ, max }, unit, habit))).toBe(printed);
  });
});

describe('the letter code', () => {
  const codes: [number, 'F' | 'ohm', string][] = [
    [4.7e-9, 'F', '4n7'],
    [470e-12, 'F', '470p'],
    [2.2e-6, 'F', '2u2'],
    [1e-9, 'F', '1n0'],
    [1e-8, 'F', '10n'],
    [1e-7, 'F', '100n'],
    [9.999e-10, 'F', '1n0'],
    [4.75e-9, 'F', '4n75'],
    [4.7e-13, 'F', 'p47'],
    [4.7e-14, 'F', 'p047'],
    [4.7e-3, 'F', '4m7'],
    [1, 'F', '1F0'],
    [0, 'F', '0p'],
    [0.47, 'ohm', 'R47'],
    [4.7, 'ohm', '4R7'],
    [470, 'ohm', '470R'],
    [4700, 'ohm', '4k7'],
    [1e6, 'ohm', '1M0'],
    [1e13, 'ohm', '10T'],
    [1e16, 'ohm', '10000T'],
    [-1, 'ohm', ''],
    [NaN, 'F', ''],
  ];
  test.each(codes)('%s %s is %s', (value, unit, code) => {
    expect(formatCode(value, unit)).toBe(code);
  });

  test('is read back to its printed digits', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('F', 'ohm'),
        fc.integer({ min: 100, max: 999 }),
        fc.integer({ min: -15, max: 12 }),
        (unit, figures, decade) => {
          const value = Number(`${String(figures)}e${String(decade)}`);
          const result = parseQuantity(formatCode(value, unit), unit);
          // At this many digits before the letter no letter stands behind the number: 100F.
          expect(result).toEqual({ ok: true, value: { min: value, typ: value, max: value } });
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('a range of times', () => {
  const year = 31_557_600;
  test.each<[min: number, max: number, printed: string]>([
    // 115.5 days are 0.316 years and are printed 116 days: a thousandth of 316 years by one of
    // the two. What is printed is the same when it is read back.
    [9_979_199.999956757, 9_956_422_799.984205, '115 days to 316 years'],
    [115 * 86_400, 316 * year, '115 days to 316 years'],
    [116 * 86_400, 316 * year, '0.318–316 years'],
    [0.318 * year, 316 * year, '0.318–316 years'],
    [3.6, 3600, '3.6 s to 1 h'],
    // 0.001 h to the printed digits, but never printed in hours.
    [3.61, 3600, '3.61 s to 1 h'],
    // Nor does anybody count zeros after the point that a smaller unit spares.
    [3.62, 3600, '3.62 s to 1 h'],
    [330, 3600, '5.5 min to 1 h'],
    [720, 36_000, '0.2–10 h'],
  ])('%d to %d s: %s', (min, max, printed) => {
    const said = formatQuantity({ min, typ: (min + max) / 2, max }, 's');
    expect(said.replaceAll('\u00A0', ' ')).toBe(printed);
  });

  // 0.02 years are 7 days, but nobody printed years.
  test.each([
    [788_939.999_998_420_6, 473_363_999.998_420_6],
    [9 * 86_400, 20 * year],
  ])('%d to %d s to one digit: the days are not rounded as years', (min, max) => {
    const said = formatQuantity({ min, typ: (min + max) / 2, max }, 's', { digits: 1 });
    expect(said.replaceAll('\u00A0', ' ')).toMatch(/^9 days to [12]0 years$/u);
  });
});

describe('whatever is printed', () => {
  const unit = fc.constantFrom(...UNITS);
  const habit = fc.record<Habit>(
    {
      capacitance: fc.constantFrom('nF', 'pF-uF'),
      decimal: fc.constantFrom('point', 'comma'),
      digits: fc.integer({ min: 1, max: 6 }),
      ohm: fc.constantFrom('symbol', 'letter'),
    },
    { requiredKeys: [] },
  );
  const magnitude = fc
    .tuple(fc.double({ min: 1, max: 9.999999, noNaN: true }), fc.integer({ min: -14, max: 11 }))
    .map(([mantissa, decade]) => Number(`${String(mantissa)}e${String(decade)}`));

  const valueOf = (size: number, negative: boolean, wanted: Unit): number =>
    negative && UNIT_FACTS[wanted].signed ? -size : size;

  const reread = (text: string, wanted: Unit): Range => {
    const result = parseQuantity(text, wanted);
    if (!result.ok) throw new Error(`${text}: ${result.fault.message}`);
    return result.value;
  };

  test('is read back and printed the same, within half a digit of the value', () => {
    fc.assert(
      fc.property(unit, habit, magnitude, fc.boolean(), (wanted, liking, size, negative) => {
        const value = valueOf(size, negative, wanted);
        const printed = formatValue(value, wanted, liking);
        const { typ } = reread(printed, wanted);
        expect(formatValue(typ, wanted, liking)).toBe(printed);
        const digits = liking.digits ?? 3;
        // Rounded twice where the printed unit is no power of ten away, such as years.
        expect(Math.abs(typ - value)).toBeLessThanOrEqual(
          Math.abs(value) * 10 ** (1 - digits) * 1.0001,
        );
      }),
      { numRuns: 2000 },
    );
  });

  test('has no zeros that say nothing, no minus zero and never four digits where a prefix exists', () => {
    fc.assert(
      fc.property(magnitude, fc.constantFrom<Unit>('ohm', 'V', 'A', 'Hz', 'W'), (size, wanted) => {
        const printed = formatValue(size, wanted);
        expect(printed).not.toMatch(/\.\d*0\u00a0|^−?0\u00a0/);
        // From 1000 kV on there is no prefix that the trade uses.
        const end = wanted === 'ohm' || wanted === 'Hz' ? 1e9 : 9.99e5;
        if (size >= 1e-6 && size < end) expect(printed).toMatch(/^\d{1,3}(\.\d+)?\u00a0/);
      }),
      { numRuns: 1000 },
    );
  });

  test('a range is read back with both ends to the printed digits', () => {
    fc.assert(
      fc.property(unit, habit, magnitude, magnitude, (wanted, liking, one, other) => {
        const [min, max] = [Math.min(one, other), Math.max(one, other)];
        const printed = formatQuantity({ min, typ: (min + max) / 2, max }, wanted, liking);
        const range = reread(printed, wanted);
        expect(range.max / max).toBeCloseTo(1, (liking.digits ?? 3) - 2);
        expect(formatQuantity(range, wanted, liking)).toBe(printed);
      }),
      { numRuns: 2000 },
    );
  });
});
