import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  parseQuantity,
  UNITS,
  type Range,
  type Unit,
} from '../../../src/engine/quantities/index.ts';

const read = (text: string, unit: Unit, bare?: string): Range => {
  const result = parseQuantity(text, unit, bare);
  if (!result.ok) throw new Error(`${text}: ${result.fault.message}`);
  return result.value;
};

const near = (value: number): unknown =>
  expect.closeTo(value, 12 - Math.floor(Math.log10(Math.abs(value) || 1)));

describe('single values', () => {
  const cases: [unit: Unit, value: number, texts: string[]][] = [
    ['F', 4.7e-9, ['4n7', '4N7', '4,7 nF', '4.7nF', '4.7 n', '4700 pF', '4700', '0.0047 µF']],
    [
      'F',
      4.7e-9,
      ['0.0047 μF', '.0047', ',0047', '4n7F', '4n7 F', '4700 mmf', '4.7 kpF', '4.7e-9'],
    ],
    ['F', 4.7e-9, ['0.0047e-6 F', '4.7 nanofarads', ' 4.7\u00a0nF ', '4.7\u202fnF', '~4n7']],
    [
      'F',
      1e-8,
      ['0.01MFD', '.01', '.01 mfd', '.01 MF', '0.01 Mfd.', '.01 M.F.D.', '.01uF', '.01 UF'],
    ],
    ['F', 1e-8, ['10 000 pF', "10'000 pF", '10 000', '10000 pfd', '0.01 microfarad']],
    ['F', 1e-6, ['1 MFD', '1 mf', '1 MF', '1 µF', '1u0', '1µ0', '1 u', '1 ufd']],
    ['F', 1e-3, ['1 mF', '1 millifarad', '1m0']],
    [
      'F',
      1e-10,
      ['100 mmfd', '100 MMFD', '100 µµF', '100 uuF', '100 uuf', '100 mmf', '100 pf', 'n1'],
    ],
    ['F', 1e-10, ['100 micro-microfarads', '100 P', '0n1']],
    ['F', 4.7e-13, ['p47', '0p47', '0.47 pF']],
    ['F', 1, ['1 F', '1 farad', '1F0']],
    ['F', 0, ['0', '0 pF', '0.0']],
    // A point before three digits stays a decimal sign, and so does a comma that parts no thousands.
    ['F', 1e-11, ['10.0 pF', '10,0 pF', '10,00 pF', '10,0000 pF']],
    ['ohm', 2687, ['2.687 k', '2,687 k']],
    ['ohm', 0.1, ['0,100', '0.100']],
    ['F', 1e-6, ['1,000,000 pF', '1.000.000 pF', '1 000 000 pF']],
    ['ohm', 1000.5, ['1,000.5', '1.000,5', '1 000.5', '1k0005']],
    [
      'ohm',
      1500,
      ['1k5', '1K5', '1.5k', '1.5 K', '1500', '1500 Ω', '1500 \u2126', '1.5 kΩ', '1k5 ohm'],
    ],
    ['ohm', 4.7, ['4R7', '4r7', '4.7 R', '4.7 Ohms', '4.7 ohm', '4700 mΩ', '4700 mohm']],
    ['ohm', 2.2e6, ['2M2', '2.2M', '2.2 meg', '2.2 Megohms', '2.2 MΩ', '2.2 Mohm', '2.2 MOHM']],
    ['ohm', 0.47, ['R47', '0R47', '.47']],
    ['ohm', 1e13, ['10 T', '10 TΩ', '10000 G']],
    [
      'V',
      600,
      ['600', '600 V', '600V', '600 VDC', '600 V DC', '600 WV', '600 W.V.D.C.', '.6 kV', '+600'],
    ],
    ['V', -12, ['-12 V', '−12 V', '- 12', '\uff0d12']],
    ['V', 3.3, ['3V3', '3.3 volts']],
    ['V', 4.3e-3, ['4m3', '4.3 mV']],
    ['A', 3e-5, ['30 µA', '30u', '0.03 mA', '30 uA', '30 microamps', '0.03 MA']],
    ['fraction', 0.1, ['10 %', '10', '10%', '10 percent', '10 per cent', '100 ‰', '100 000 ppm']],
    ['degC', -40, ['-40', '−40 °C', '-40C', '-40 deg C', '-40 ºC', '-40 °F', '-40 ℃']],
    ['degC', 25, ['25', '77 °F', '25 degrees Celsius']],
    ['K', 10, ['10', '10 K', '10 °C', '18 °F']],
    ['1/K', 1e-4, ['100 ppm/K', '100', '100 ppm/°C', '100 ppm per K', '0.01 %/K', '100 ppm']],
    ['1/K', -7.5e-4, ['-750', '−750 ppm/K']],
    ['V/s', 5e6, ['5 V/us', '5 V/µs', '5', '5 volts per microsecond', '5000 V/ms', '5e6 V/s']],
    ['S', 9.6e-3, ['9.6', '9.6 mS', '9600 µS', '9600 umho', '9.6 mA/V']],
    ['V/octave', 1, ['1', '1 V/octave', '1 V per octave', '1000 mV/oct']],
    ['Hz', 1e6, ['1 MHz', '1M', '1 mhz', '1000 kc/s', '1 Mc', '1e6', '1000 kcs', '1M0']],
    ['Hz', 1e-3, ['1 mHz', '0.001']],
    ['s', 3600, ['3600', '3600 s', '60 min', '1 h', '1 hour', '3600 MΩ·µF', '3600 Mohm*uF']],
    ['s', 1e-5, ['10 µs', '10 usec', '0.01 ms']],
    ['H', 1e-8, ['10', '10 nH', '0.01 µH', '10n']],
    ['m', 0.0254, ['25.4', '25.4 mm', '1 inch', '1"', '1000 mil', '2.54 cm']],
    ['cents', 100, ['100', '100 cents', '1 semitone']],
    ['ratio', 1.5, ['1.5', '1.5 x', '1.5×', '150 %']],
    ['dB', -3, ['-3', '−3 dB']],
    ['grade', 0.5, ['0.5', ',5', '.5']],
    ['m3', 2e-6, ['2', '2 cm³', '2 cm3', '2 cc', '2000 mm3']],
    ['F*V/m3', 100, ['100', '100 µF·V/cm³', '100 uF*V/cm3', '100 µFV/cm³']],
    [
      'W',
      0.25,
      ['.25', '250 mW', '1/4', '¼', '1/4 W', '¼ watt', '1\u20444 W', '0,25 Вт', '250 мВт'],
    ],
    ['W', 1.5, ['1 1/2 W', '1½', '1 ½ W', '3/2']],
    ['W', 0.125, ['1/8', '⅛ W']],
    ['W', 0.1, ['1/10 W']],
    // Units as Cyrillic letters write them.
    ['F', 4.7e-9, ['4н7', '4,7 нФ', '4700 пФ', '4700 пф', '0,0047 мкФ', '0,0047 мк', '4,7н']],
    ['F', 1e-4, ['100 мкФ', '100мк', '100 МКФ']],
    ['ohm', 4700, ['4к7', '4К7', '4,7 кОм', '4,7 ком', '4700 Ом', '4,7К', '4,7 к']],
    ['ohm', 2.2e6, ['2М2', '2,2 МОм', '2,2М']],
    ['ohm', 2.2e-3, ['2,2 мОм']],
    ['V', 1500, ['1,5 кВ', '1500 В', '1500 в']],
    ['A', 0.02, ['20 мА', '20000 мкА']],
    ['Hz', 1.07e7, ['10,7 МГц', '10700 кГц']],
    ['H', 1e-4, ['100 мкГн']],
    ['s', 7200, ['2 ч', '120 мин', '7200 с', '7200 сек']],
    ['degC', 25, ['25 °С', '25°С']],
    ['J', 0.025, ['25 mJ', '.025 Ws']],
  ];
  for (const [unit, value, texts] of cases)
    test.each(texts)(`%s as ${unit} is ${String(value)}`, (text) => {
      const { min, typ, max } = read(text, unit);
      expect(typ).toEqual(near(value));
      expect([min, max]).toEqual([typ, typ]);
    });

  test('the same value is the same number however it is written', () => {
    const writings = ['4.7n', '4n7', '4700 pF', '0.0047 µF', '.0047 MFD', '4700 mmf', '4,7 nF'];
    expect(new Set(writings.map((text) => read(text, 'F').typ))).toEqual(new Set([4.7e-9]));
  });

  test('the old units of capacitance that are no power of ten away', () => {
    // 1 cm is 1.113 pF, 1 jar is 1.111 nF: collectors' tables of old French and naval units.
    expect(read('1000 cm', 'F').typ).toBeCloseTo(1.11265e-9, 14);
    expect(read('1 jar', 'F').typ).toBeCloseTo(1.1111e-9, 13);
  });

  test('a number without a unit is in the unit that the caller names', () => {
    expect(read('10', 's', 'years').typ).toBe(315_576_000);
    expect(read('10 s', 's', 'years').typ).toBe(10);
    expect(read('10..20', 'V', 'mV')).toEqual({ min: 0.01, typ: 0.015, max: 0.02 });
    expect(read('470', 'F', 'nF').typ).toBe(4.7e-7);
  });
});

describe('ranges and tolerances', () => {
  const cases: [text: string, unit: Unit, min: number, typ: number, max: number][] = [
    ['10–20 V', 'V', 10, 15, 20],
    ['10 V – 20 V', 'V', 10, 15, 20],
    ['10..20 V', 'V', 10, 15, 20],
    ['10...20', 'V', 10, 15, 20],
    ['10…20', 'V', 10, 15, 20],
    ['10 to 20 V', 'V', 10, 15, 20],
    ['10 TO 20', 'V', 10, 15, 20],
    ['10-20', 'V', 10, 15, 20],
    ['20..10', 'V', 10, 15, 20],
    ['10 mV..20', 'V', 0.01, 0.015, 0.02],
    ['800 pF..1.2 nF', 'F', 8e-10, 1e-9, 1.2e-9],
    ['4k5–4k9', 'ohm', 4500, 4700, 4900],
    ['.01..0.02', 'F', 1e-8, 1.5e-8, 2e-8],
    ['100..200', 'F', 1e-10, 1.5e-10, 2e-10],
    ['-40..85', 'degC', -40, 22.5, 85],
    ['-40-85', 'degC', -40, 22.5, 85],
    ['−40 to −10 °C', 'degC', -40, -25, -10],
    ['-40 - -10', 'degC', -40, -25, -10],
    ['10..12..20', 'V', 10, 12, 20],
    ['9.5..10..12n', 'F', 9.5e-9, 1e-8, 1.2e-8],
    ['<5', 'fraction', 0, 0.025, 0.05],
    ['<= 5 V', 'V', 0, 2.5, 5],
    ['≤5 V', 'V', 0, 2.5, 5],
    ['10 nF ±5 %', 'F', 9.5e-9, 1e-8, 1.05e-8],
    ['10 nF +/- 5%', 'F', 9.5e-9, 1e-8, 1.05e-8],
    ['10n±5%', 'F', 9.5e-9, 1e-8, 1.05e-8],
    ['10 nF (±5 %)', 'F', 9.5e-9, 1e-8, 1.05e-8],
    ['100 nF +80/-20 %', 'F', 8e-8, 1e-7, 1.8e-7],
    ['100 nF +80 % −20 %', 'F', 8e-8, 1e-7, 1.8e-7],
    ['100 nF -20/+80%', 'F', 8e-8, 1e-7, 1.8e-7],
    ['100 nF -0/+100 %', 'F', 1e-7, 1e-7, 2e-7],
    ['4.7 pF ±0.5 pF', 'F', 4.2e-12, 4.7e-12, 5.2e-12],
    ['10 ±1 V', 'V', 9, 10, 11],
    ['10 ±1', 'V', 9, 10, 11],
    ['-12 V ±5 %', 'V', -12.6, -12, -11.4],
    ['±15 V', 'V', -15, 0, 15],
    ['±10 %', 'fraction', -0.1, 0, 0.1],
    ['+22/-56 %', 'fraction', -0.56, 0, 0.22],
    // Points of a percentage, not a share of it.
    ['5 % ±1 %', 'fraction', 0.04, 0.05, 0.06],
    ['25 °C ±5 K', 'degC', 20, 25, 30],
    ['25 ±5', 'degC', 20, 25, 30],
    ['25 °C ±9 °F', 'degC', 20, 25, 30],
    ['-750 ±120 ppm/K', '1/K', -8.7e-4, -7.5e-4, -6.3e-4],
  ];
  test.each(cases)('%s as %s', (text, unit, min, typ, max) => {
    expect(read(text, unit)).toEqual({ min: near(min), typ: near(typ), max: near(max) });
  });
});

describe('faults', () => {
  const cases: [text: string, unit: Unit, at: number, message: RegExp][] = [
    ['', 'F', 0, /^Nothing is written/],
    ['   ', 'F', 0, /^Nothing is written/],
    ['abc', 'F', 0, /no number in “abc”/],
    ['nF', 'F', 0, /no number in “nF”/],
    ['10 nX', 'F', 3, /“nX” is not a unit of capacitance; write pF, nF or µF/],
    ['10 V', 'F', 3, /That is a voltage; a capacitance is wanted/],
    ['10 kΩ', 'F', 3, /That is a resistance; a capacitance is wanted/],
    ['10 nF', 'V', 3, /That is a capacitance; a voltage is wanted/],
    ['10 °C', 's', 3, /That is a temperature; a time is wanted/],
    ['10 mm', 'Hz', 3, /That is a length; a frequency is wanted/],
    ['47 K', 'F', 3, /“K” is not a unit of capacitance/],
    ['10 M', 'V', 3, /“M” is not a unit of voltage/],
    ['5 m', 's', 2, /“m” is not a unit of time/],
    ['5 m', 'fraction', 2, /^“m” does not belong behind a percentage; write %\.$/],
    ['3 q', 'number', 2, /^“q” does not belong behind a plain number; write no unit at all\.$/],
    ['3 q', 'dB', 2, /^“q” does not belong behind a level; write dB\.$/],
    ['10 20', 'V', 3, /two numbers/],
    ['100 nF 630', 'F', 7, /two numbers/],
    ['100 nF 630 V', 'F', 7, /two numbers/],
    ['1,5,7', 'V', 3, /only one decimal sign/],
    ['1.2.3', 'V', 3, /only one decimal sign/],
    ['4k7 kΩ', 'ohm', 4, /two units/],
    ['4.7', 'F', 3, /unit is missing; write pF, nF or µF/],
    ['.5..2', 'F', 2, /unit is missing/],
    // A comma before three digits that end in a nought rather parts thousands: neither is taken.
    ['10,000 pF', 'F', 0, /^“10,000” may be 10 or 10000; write it one of these ways\.$/],
    ['4,700 µF', 'F', 0, /“4,700” may be 4\.7 or 4700/],
    ['-1,250', 'degC', 0, /“1,250” may be 1\.25 or 1250/],
    ['10.000 µF', 'F', 0, /^“10\.000” may be 10 or 10000; write it one of these ways\.$/],
    ['4.700', 'ohm', 0, /“4\.700” may be 4\.7 or 4700/],
    ['1..2,000', 'V', 3, /“2,000” may be 2 or 2000/],
    ['10 nF ±5', 'F', 6, /percentage or an amount/],
    ['10 nF ±', 'F', 6, /number is missing behind “±”/],
    ['10 nF..', 'F', 7, /number is missing here/],
    ['10 to', 'V', 5, /number is missing here/],
    ['10..x', 'V', 4, /no number in “x”/],
    ['10..20..30..40', 'V', 10, /cannot be understood/],
    ['10..40..20', 'V', 4, /middle figure/],
    ['10–12–20', 'V', 5, /cannot be understood/],
    ['10 nF..20 nF ±5 %', 'F', 13, /cannot be understood/],
    ['10 nF ±5 % x', 'F', 11, /“x” is not a unit/],
    ['±5 % ?', 'fraction', 5, /cannot be understood/],
    ['±10 %', 'F', 0, /number that this tolerance belongs to is missing/],
    ['±10 %', 'V', 0, /number that this tolerance belongs to is missing/],
    ['10 °C ±5 %', 'degC', 6, /means nothing/],
    ['10 nF ±200 %', 'F', 6, /below zero/],
    ['-5 nF', 'F', 0, /capacitance cannot be below zero/],
    ['5..-5', 'ohm', 3, /resistance cannot be below zero/],
    ['> 5', 'V', 0, /no upper end/],
    ['≥5', 'V', 0, /no upper end/],
    ['<5..7', 'V', 0, /before one number/],
    ['<5', 'degC', 0, /no lower end/],
    ['<-5', 'V', 0, /no lower end/],
    ['1e999', 'V', 0, /too large/],
    ['Infinity', 'V', 0, /no number/],
    ['1e308 ±1000 %', 'V', 6, /too large/],
    ['1e-400', 'V', 0, /too small/],
    ['10/63 W', 'W', 2, /cannot be understood/],
    ['1'.repeat(201), 'V', 200, /too long/],
  ];
  test.each(cases)('%s as %s is blamed at %i', (text, unit, at, message) => {
    const result = parseQuantity(text, unit);
    expect(result).toEqual({
      ok: false,
      fault: { at, message: expect.stringMatching(message) as string },
    });
  });
});

describe('whatever is written', () => {
  const scraps = [
    ...[
      '1',
      '4',
      '7',
      '0',
      '000',
      '.',
      ',',
      '..',
      '…',
      '–',
      '-',
      '−',
      '+',
      '±',
      '/',
      '(',
      ')',
      ' ',
    ],
    ...['e', 'E', 'n', 'p', 'u', 'µ', 'm', 'k', 'M', 'R', 'F', 'V', 'Ω', 'A', 's', 'Hz', '%', '°C'],
    ...['<', '>', '~', 'to', 'per', 'ppm', 'MFD', 'mmf', '\u00a0', "'", '"', '×', '\u0000', '😀'],
  ];
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc.array(fc.constantFrom(...scraps), { maxLength: 14 }).map((parts) => parts.join('')),
  );
  const unit = fc.constantFrom(...UNITS);

  test('parsing never throws; a range is finite and in order, a fault has its place', () => {
    fc.assert(
      fc.property(text, unit, (written, wanted) => {
        const result = parseQuantity(written, wanted);
        if (result.ok) {
          const { min, typ, max } = result.value;
          expect([min, typ, max].every(Number.isFinite)).toBe(true);
          expect(min <= typ && typ <= max).toBe(true);
          expect([min, typ, max].some((value) => Object.is(value, -0))).toBe(false);
        } else {
          expect(result.fault.message).toMatch(/[.?]$/);
          expect(result.fault.at).toBeGreaterThanOrEqual(0);
          expect(result.fault.at).toBeLessThanOrEqual(written.length);
        }
      }),
      { numRuns: 3000 },
    );
  });
});
