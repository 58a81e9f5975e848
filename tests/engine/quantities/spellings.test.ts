import { describe, expect, test } from 'vitest';
import {
  formatValue,
  parseQuantity,
  UNITS,
  type Unit,
} from '../../../src/engine/quantities/index.ts';

// Sizes: SI Brochure, 9th edition, tables 3 (prefixes of the coherent units), 7 (prefixes) and 8
// (minute, hour, day, litre); NIST SP 811, appendix B, for inch, mil and degree Fahrenheit; the year
// of 365.25 days is the Julian one. All from memory, the pages not seen.
// Spellings: common practice of the trade, no source.
const MINUTE = 60;
const HOUR = 3600;
const DAY = 86_400;
const YEAR = 31_557_600;
const INCH = 0.0254;

/** What one of each written unit is in the SI unit. */
const spellings: [unit: Unit, one: number, written: string[]][] = [
  ['F', 1e-15, ['fF', 'femtofarad']],
  ['F', 1e-12, ['pF', 'picofarads', 'pfd', 'uuF', 'uufd', 'µµfd', 'mmfds', 'micromicrofarad']],
  ['F', 1e-12, ['micromicrofarads', 'micro-microfarad', 'MMF', 'm.m.f.', 'P']],
  ['F', 1e-9, ['nF', 'nanofarad', 'nfd', 'kpF', 'N']],
  ['F', 1e-6, ['µF', 'mf', 'Mf', 'MF', 'mfd', 'mfds', 'ufd', 'ufds', 'mfarad', 'Mfarad', 'U']],
  ['F', 1e-3, ['mF', 'millifarads', 'm']],
  ['F', 1, ['F', 'f', 'farad', 'farads', 'FARADS']],
  ['F', 1 / 9e8, ['jar', 'jars']],
  ['V', 1e-12, ['pV', 'picovolts']],
  ['V', 1e-3, ['mV', 'millivolts', 'mVrms', 'm']],
  ['V', 1, ['V', 'volt', 'volts', 'V=', 'V~', 'VW', 'WV', 'WVDC', 'VDCW', 'DCWV', 'WVAC', 'VAC']],
  ['V', 1, ['V r.m.s.', 'V d.c.', 'V DC', 'VDC']],
  ['V', 1e3, ['kV', 'kilovolts', 'KV', 'kVdc', 'k']],
  ['A', 1e-15, ['fA', 'femtoamps']],
  ['A', 1e-9, ['nA', 'nanoamperes']],
  ['A', 1e-3, ['mA', 'milliamps', 'mA rms', 'mAdc', 'm']],
  ['A', 1, ['A', 'amp', 'amps', 'ampere', 'amperes', 'Arms', 'A dc', 'Aac']],
  ['A', 1e3, ['kA', 'kiloamps']],
  ['ohm', 1e-6, ['µΩ', 'microohms', 'u']],
  ['ohm', 1, ['Ω', 'ohm', 'ohms', 'OHMS', 'R', 'r']],
  ['ohm', 1e3, ['kΩ', 'kilohm', 'kilohms', 'kiloohm', 'kR', 'K']],
  ['ohm', 1e6, ['MΩ', 'MOHM', 'MOHMS', 'meg', 'Megs', 'megohm', 'megohms', 'MEG', 'megaohm']],
  ['ohm', 1e9, ['GΩ', 'gigohm', 'gigohms', 'G', 'g']],
  ['ohm', 1e12, ['TΩ', 'teraohms', 'T']],
  ['s', 1e-15, ['fs']],
  ['s', 1e-6, ['µs', 'usec', 'microseconds', 'Ω·µF', 'ohm·µF', 'ohm uF']],
  ['s', 1e-3, ['ms', 'msec', 'milliseconds']],
  ['s', 1, ['s', 'sec', 'secs', 'second', 'seconds', 'MΩ·µF', 'MΩ µF', 'Mohm uF', 'Ω·F', 'ohm F']],
  ['s', MINUTE, ['min', 'mins', 'minute', 'minutes']],
  ['s', HOUR, ['h', 'hr', 'hrs', 'hour', 'hours', 'Hours']],
  ['s', DAY, ['d', 'day', 'days']],
  ['s', YEAR, ['a', 'y', 'yr', 'yrs', 'year', 'years']],
  ['Hz', 1e-6, ['µHz']],
  ['Hz', 1e-3, ['mHz', 'millihertz']],
  ['Hz', 1, ['Hz', 'hertz', 'c/s', 'cps', 'cycle', 'cycles']],
  ['Hz', 1e3, ['kHz', 'kc', 'kcs', 'kc/s', 'kilocycles', 'KC']],
  ['Hz', 1e6, ['MHz', 'mhz', 'MHZ', 'mc', 'Mc', 'MC', 'mcs', 'Mcs', 'mc/s', 'MC/S', 'megacycles']],
  ['Hz', 1e9, ['GHz', 'gigahertz']],
  ['degC', 1, ['°C', '℃', 'C', 'degC', 'degrees C', 'degrees celsius', '°', 'deg', 'celsius']],
  ['degC', 1, ['centigrade', 'deg. C', 'Degrees Celsius']],
  // 1 °F is 31 of its degrees below the freezing point of water.
  ['degC', (-31 * 5) / 9, ['°F', 'F', 'degF', 'fahrenheit', 'deg F']],
  ['K', 1, ['K', 'kelvin', 'kelvins', '°C', '℃', 'C', 'degC', '°', 'deg']],
  ['K', 5 / 9, ['°F', 'F', 'degF']],
  ['fraction', 1e-2, ['%', 'percent', 'per cent', 'pct', '% per decade', '%/decade', '%/dec']],
  ['fraction', 1e-3, ['‰', 'permille']],
  ['fraction', 1e-6, ['ppm']],
  ['fraction', 1, ['fraction']],
  ['H', 1e-12, ['pH']],
  ['H', 1e-6, ['µH', 'microhenries', 'uHy', 'u']],
  ['H', 1e-3, ['mH', 'millihenrys', 'mHy']],
  ['H', 1, ['H', 'henry', 'henries', 'henrys', 'Hy']],
  ['m', 1e-6, ['µm', 'micrometres']],
  ['m', 1e-3, ['mm', 'millimetre', 'millimeters']],
  ['m', 1e-2, ['cm']],
  ['m', 1, ['m', 'metre', 'metres', 'meter', 'meters']],
  ['m', INCH, ['in', 'in.', 'inch', 'inches', '"', '″']],
  ['m', INCH / 1000, ['mil', 'mils', 'thou']],
  ['W', 1e-3, ['mW', 'milliwatts', 'm']],
  ['W', 1, ['W', 'watt', 'watts', 'WATTS']],
  ['W', 1e3, ['kW', 'kilowatt', 'k']],
  ['J', 1e-3, ['mJ', 'millijoules', 'mWs', 'm']],
  ['J', 1, ['J', 'joule', 'joules', 'Ws', 'W s']],
  ['J', 1e3, ['kJ', 'kWs', 'k']],
  ['C', 1e-12, ['pC', 'picocoulombs', 'pAs']],
  ['C', 1, ['C', 'coulomb', 'coulombs', 'As', 'A s']],
  ['S', 1e-6, ['µS', 'µmho', 'micromhos', 'µA/V', 'microsiemens']],
  ['S', 1e-3, ['mS', 'millisiemens', 'mmho', 'mA/V']],
  ['S', 1, ['S', 'siemens', 'mho', 'mhos', 'A/V']],
  ['deg', 1, ['°', 'deg', 'degree', 'degrees']],
  ['1/K', 1e-6, ['ppm/K', 'ppm/°C', 'ppm/℃', 'ppm/C', 'ppm/degC', 'ppm', 'ppm per °C']],
  ['1/K', 1e-2, ['%/K', '%/°C', '%/℃', '%/C', '%/degC', '% per K']],
  ['1/K', 1, ['/K', '/°C', 'K⁻¹']],
  ['V/s', 1e-6, ['µV/s', 'µV per second']],
  ['V/s', 1e-3, ['mV/s', 'mV/sec']],
  ['V/s', 1, ['V/s', 'V/sec', 'volt/second', 'volts per second', 'mV/ms']],
  ['V/s', 1e3, ['kV/s', 'V/ms', 'mV/µs']],
  ['V/s', 1e6, ['V/µs', 'V/usec', 'volts per microsecond', 'kV/ms', 'mV/ns']],
  ['V/s', 1e9, ['V/ns', 'kV/µs']],
  ['V/octave', 1, ['V/octave', 'V/oct', 'volt  per  octave', 'volts per octave', 'V per oct.']],
  ['V/octave', 1e-3, ['mV/octave', 'mV/oct']],
  ['cents', 1, ['cents', 'cent', 'ct', 'c']],
  ['cents', 100, ['semitone', 'semitones']],
  ['dB', 1, ['dB', 'decibel', 'decibels', 'DB']],
  ['grade', 1, ['grade']],
  ['ratio', 1, ['x', '×', 'times', 'fold', 'ratio']],
  ['ratio', 1e-2, ['%', 'percent']],
  ['number', 1, ['turn', 'turns']],
  ['m3', 1e-9, ['mm³', 'mm3']],
  ['m3', 1e-6, ['cm³', 'cc', 'ml', 'cm3', 'c.c.']],
  ['m3', 1, ['m³']],
  // A microfarad in a cubic centimetre is a farad in a cubic metre.
  ['F*V/m3', 1, ['µF·V/cm³', 'uFV/cm³', 'F·V/m³', 'FV/m³', 'uF*V/cm3']],
];

describe('one of a written unit', () => {
  test.each(spellings)('as %s is %s, however it is spelt', (unit, one, written) => {
    for (const spelling of written) {
      const result = parseQuantity(`1 ${spelling}`, unit);
      if (!result.ok) throw new Error(`${spelling}: ${result.fault.message}`);
      expect(result.value.typ / one, spelling).toBeCloseTo(1, 12);
    }
  });

  test('every unit has its spellings here', () => {
    expect(new Set(spellings.map(([unit]) => unit))).toEqual(new Set(UNITS));
  });
});

describe('a unit that is not one', () => {
  // What a person is told to write is what can be written.
  test.each(UNITS)('as %s is answered with one that is', (unit) => {
    const result = parseQuantity('3 qq', unit);
    if (result.ok) throw new Error('taken for a unit');
    const suggested = /; write (.+)\.$/u.exec(result.fault.message)?.[1] ?? '';
    expect(suggested).not.toBe('');
    for (const name of suggested.split(/, | or /u)) {
      const text = /number|no unit/u.test(name) ? '3' : `3 ${name}`;
      expect(parseQuantity(text, unit).ok, text).toBe(true);
    }
  });

  const others: [text: string, unit: Unit, kind: string][] = [
    ['5 farads', 'V', 'a capacitance'],
    ['5 volts', 'F', 'a voltage'],
    ['5 amps', 'F', 'a current'],
    ['5 ohms', 'V', 'a resistance'],
    ['5 hours', 'F', 'a time'],
    ['5 Hz', 's', 'a frequency'],
    ['5 °F', 's', 'a temperature'],
    ['5 kelvin', 's', 'a temperature difference'],
    ['5 %', 'V', 'a percentage'],
    ['5 mH', 'F', 'an inductance'],
    ['5 inches', 'F', 'a length'],
    ['5 W', 'V', 'a power'],
    ['5 J', 'V', 'an energy'],
    ['5 coulombs', 'V', 'a charge'],
    ['5 siemens', 'V', 'a conductance'],
    ['5 ppm/K', 'V', 'a temperature coefficient'],
    ['5 V/µs', 'F', 'a rate of voltage change'],
    ['5 V/oct', 'F', 'a pitch scale'],
    ['5 cm³', 'V', 'a volume'],
    ['5 FV/m³', 'V', 'a capacitance times voltage per volume'],
    ['5 semitones', 'V', 'a pitch interval'],
    ['5 dB', 'V', 'a level'],
    ['5 turns', 'V', 'a plain number'],
    ['5 times', 'V', 'a ratio'],
  ];
  test.each(others)('%s as %s: that is %s', (text, unit, kind) => {
    const result = parseQuantity(text, unit);
    expect(result.ok ? 'read' : result.fault.message).toMatch(`That is ${kind}; `);
  });
});

describe('what is printed', () => {
  // By the SI Brochure, 5.4.3: a space between number and unit, capital letters as the SI has them.
  const printed: [unit: Unit, value: number, text: string][] = [
    ['F', 1e-12, '1 pF'],
    ['F', 2.2e-6, '2.2 µF'],
    ['V', 1e-12, '1 pV'],
    ['V', 2.5e3, '2.5 kV'],
    ['V', 2.5e-6, '2.5 µV'],
    ['A', 1e-15, '1 fA'],
    ['A', 2.5e3, '2.5 kA'],
    ['A', 2.5e-9, '2.5 nA'],
    ['ohm', 1e-6, '1 µΩ'],
    ['ohm', 3, '3 Ω'],
    ['ohm', 2e12, '2 TΩ'],
    ['ohm', 2e6, '2 MΩ'],
    ['s', 1e-15, '1 fs'],
    ['s', 0.02, '20 ms'],
    ['s', 119, '119 s'],
    ['s', 120, '2 min'],
    ['s', 47 * 3600, '47 h'],
    ['s', 48 * 3600, '2 days'],
    ['s', 364 * 86_400, '364 days'],
    ['s', 365 * 86_400, '365 days'],
    ['s', 365.25 * 86_400, '1 year'],
    ['Hz', 1e-6, '1 µHz'],
    ['Hz', 2e9, '2 GHz'],
    ['Hz', 440, '440 Hz'],
    ['K', -10, '−10 K'],
    ['H', 1e-12, '1 pH'],
    ['H', 2, '2 H'],
    ['W', 1e-9, '1 nW'],
    ['W', 2e3, '2 kW'],
    ['J', 1e-9, '1 nJ'],
    ['J', 2e3, '2 kJ'],
    ['C', 1e-15, '1 fC'],
    ['C', 2, '2 C'],
    ['S', 1e-9, '1 nS'],
    ['S', 2, '2 S'],
    ['deg', -90, '−90°'],
    ['V/s', 0.999, '999 mV/s'],
    ['V/s', 9990, '9990 V/s'],
    ['V/s', 1e4, '0.01 V/µs'],
    ['V/octave', 1, '1 V/octave'],
    ['dB', -3, '−3 dB'],
    ['number', 20, '20'],
    ['cents', -1200, '−1200 cents'],
    ['m3', 2e-6, '2 cm³'],
    ['F*V/m3', 100, '100 µF·V/cm³'],
  ];
  test.each(printed)('in %s, %s is %s', (unit, value, text) => {
    expect(formatValue(value, unit).replaceAll('\u00a0', ' ')).toBe(text);
  });
});
