import { DERIVED_UNIT_FACTS } from './derived-unit-facts.ts';
import { DAY, HOUR, MINUTE, YEAR } from './si.ts';
import {
  alike,
  fromTenths,
  printed,
  printedWith,
  unprefixed,
  type Unit,
  type UnitFacts,
} from './unit.ts';

/** Speed of light in vacuum, m/s, exact by definition. */
const LIGHT = 299_792_458;
/** One centimetre of capacitance in the electrostatic system, in F: 1.11265e-12. */
const ELECTROSTATIC_CENTIMETRE = 1e5 / LIGHT ** 2;
/** The Royal Navy's unit: 9e8 jars to the farad. */
const JAR = 1 / 9e8;
const INCH = 0.0254;

/**
 * Every unit with the ways in which people write it. Keys of `words` are as `unitKey` leaves them:
 * no spaces or full stops, `u` for the micro sign, `ohm` for the omega; any mixture of small and
 * capital letters is understood that is no unit itself.
 *
 * The capacitance words MFD, MF, mf are the old microfarad and MMF, MMFD, uuF the old picofarad;
 * `mF` in its modern spelling is the millifarad. Sources: SI Brochure for the modern units, common
 * practice of the trade for the old ones.
 */
export const UNIT_FACTS: Readonly<Record<Unit, UnitFacts>> = {
  F: {
    kind: 'a capacitance',
    signed: false,
    suggest: 'pF, nF or µF',
    prefixed: ['F', 'farad', 'farads'],
    prefixes: 'fpnum',
    prefixAlone: true,
    words: {
      ...alike({ power: -6 }, 'mf', 'mfd', 'mfds', 'ufd', 'ufds', 'mfarad'),
      ...alike({ power: -12 }, 'mmf', 'mmfd', 'mmfds', 'uuf', 'uufd', 'pfd', 'micromicrofarad'),
      ...alike({ power: -12 }, 'micromicrofarads', 'micro-microfarad', 'micro-microfarads'),
      ...alike({ power: -9 }, 'kpF', 'nfd'),
      ...alike({ power: 0, factor: ELECTROSTATIC_CENTIMETRE }, 'cm'),
      ...alike({ power: 0, factor: JAR }, 'jar', 'jars'),
    },
    // The trade writes 4700 µF rather than 4.7 mF, whose letters meant microfarad on old parts, and
    // 68 000 µF on the largest cans; farads are for double-layer parts, from 0.1 F.
    print: [...printedWith('F', 'pnu'), printed('F', 0, 0.1)],
  },
  V: {
    kind: 'a voltage',
    signed: true,
    usual: 'V',
    suggest: 'mV, V or kV',
    prefixed: ['V', 'volt', 'volts', 'Vdc', 'Vac', 'Vrms'],
    prefixes: 'pnumk',
    prefixAlone: true,
    words: alike({ power: 0 }, 'V=', 'V~', 'WV', 'WVdc', 'Vdcw', 'dcWV', 'Wvac', 'VW'),
    print: printedWith('V', 'pnum_k'),
  },
  A: {
    kind: 'a current',
    signed: true,
    usual: 'A',
    suggest: 'µA, mA or A',
    prefixed: ['A', 'amp', 'amps', 'ampere', 'amperes', 'Arms', 'Adc', 'Aac'],
    prefixes: 'fpnumk',
    prefixAlone: true,
    words: {},
    print: printedWith('A', 'fpnum_k'),
  },
  ohm: {
    kind: 'a resistance',
    signed: false,
    usual: 'ohm',
    suggest: 'Ω, kΩ or MΩ',
    prefixed: ['ohm', 'ohms', 'R'],
    prefixes: 'umkMGT',
    prefixAlone: true,
    words: {
      ...alike({ power: 3 }, 'kilohm', 'kilohms'),
      ...alike({ power: 6 }, 'meg', 'megs', 'megohm', 'megohms'),
      ...alike({ power: 9 }, 'gigohm', 'gigohms'),
    },
    // Bodies, meters and shops write 0.33 Ω; milliohms begin where that has noughts behind the point.
    print: fromTenths('Ω', printedWith('Ω', 'um_kMGT')),
  },
  s: {
    kind: 'a time',
    signed: false,
    usual: 's',
    suggest: 'µs, ms, s, min, h or years',
    prefixed: ['s', 'sec', 'secs', 'second', 'seconds'],
    prefixes: 'fpnum',
    // A lone m would be a millisecond to one reader and a minute to the next.
    prefixAlone: false,
    words: {
      ...alike({ power: 0, factor: MINUTE }, 'min', 'mins', 'minute', 'minutes'),
      ...alike({ power: 0, factor: HOUR }, 'h', 'hr', 'hrs', 'hour', 'hours'),
      ...alike({ power: 0, factor: DAY }, 'd', 'day', 'days'),
      ...alike({ power: 0, factor: YEAR }, 'a', 'y', 'yr', 'yrs', 'year', 'years'),
      // Insulation is stated as resistance times capacitance, which is a time.
      ...alike({ power: 0 }, 'Mohm*uF', 'MohmuF', 'ohm*F', 'ohmF'),
      ...alike({ power: -6 }, 'ohm*uF', 'ohmuF'),
    },
    print: [
      ...printedWith('s', 'fpnum_'),
      { symbol: 'min', power: 0, factor: MINUTE, from: 2 * MINUTE },
      { symbol: 'h', power: 0, factor: HOUR, from: HOUR },
      { symbol: 'days', power: 0, factor: DAY, from: 2 * DAY },
      { symbol: 'years', one: 'year', power: 0, factor: YEAR, from: YEAR },
    ],
  },
  Hz: {
    kind: 'a frequency',
    signed: false,
    usual: 'Hz',
    suggest: 'Hz, kHz or MHz',
    prefixed: ['Hz', 'hertz', 'c/s', 'cps', 'cycle', 'cycles'],
    prefixes: 'umkMG',
    prefixAlone: true,
    words: {
      ...alike({ power: 3 }, 'kc', 'kcs'),
      // Only mHz in full SI spelling is the millihertz: mhz is MHz typed in haste.
      ...alike({ power: 6 }, 'mhz', 'mc', 'mcs', 'mc/s'),
    },
    print: printedWith('Hz', 'um_kMG'),
  },
  degC: {
    kind: 'a temperature',
    signed: true,
    usual: '°C',
    suggest: '°C or °F',
    ...unprefixed,
    words: {
      ...alike(
        { power: 0 },
        '°C',
        '℃',
        'C',
        'degC',
        'degreesC',
        'degreescelsius',
        '°',
        'deg',
        'degrees',
      ),
      ...alike({ power: 0 }, 'celsius', 'centigrade'),
      ...alike({ power: 0, factor: 5 / 9, offset: -160 / 9 }, '°F', 'F', 'degF', 'fahrenheit'),
    },
    print: [printed('°C', 0)],
  },
  K: {
    kind: 'a temperature difference',
    signed: true,
    usual: 'K',
    suggest: 'K',
    ...unprefixed,
    words: {
      ...alike({ power: 0 }, 'K', 'kelvin', 'kelvins', '°C', '℃', 'C', 'degC', '°', 'deg'),
      ...alike({ power: 0, factor: 5 / 9 }, '°F', 'F', 'degF'),
    },
    print: [printed('K', 0)],
  },
  fraction: {
    kind: 'a percentage',
    signed: true,
    usual: '%',
    suggest: '%',
    ...unprefixed,
    words: {
      ...alike({ power: -2 }, '%', 'percent', 'pct', '%/decade', '%/dec'),
      ...alike({ power: -3 }, '‰', 'permille'),
      ...alike({ power: -6 }, 'ppm'),
      ...alike({ power: 0 }, 'fraction'),
    },
    print: [printed('%', -2)],
  },
  H: {
    kind: 'an inductance',
    signed: false,
    usual: 'nH',
    suggest: 'nH, µH, mH or H',
    prefixed: ['H', 'henry', 'henries', 'henrys', 'Hy'],
    prefixes: 'pnum',
    prefixAlone: true,
    words: {},
    print: printedWith('H', 'pnum_'),
  },
  m: {
    kind: 'a length',
    signed: false,
    usual: 'mm',
    suggest: 'mm',
    prefixed: ['m', 'metre', 'metres', 'meter', 'meters'],
    prefixes: 'um',
    prefixAlone: false,
    words: {
      ...alike({ power: -2 }, 'cm'),
      ...alike({ power: 0, factor: INCH }, 'in', 'inch', 'inches', '"', '″'),
      ...alike({ power: -3, factor: INCH }, 'mil', 'mils', 'thou'),
    },
    print: [printed('mm', -3)],
  },
  W: {
    kind: 'a power',
    signed: false,
    usual: 'W',
    suggest: 'mW or W',
    prefixed: ['W', 'watt', 'watts'],
    prefixes: 'numk',
    prefixAlone: true,
    words: {},
    // Likewise a quarter watt.
    print: fromTenths('W', printedWith('W', 'num_k')),
  },
  J: {
    kind: 'an energy',
    signed: false,
    usual: 'J',
    suggest: 'mJ or J',
    prefixed: ['J', 'joule', 'joules', 'Ws'],
    prefixes: 'numk',
    prefixAlone: true,
    words: {},
    print: printedWith('J', 'num_k'),
  },
  cents: {
    kind: 'a pitch interval',
    signed: true,
    usual: 'cents',
    suggest: 'cents',
    ...unprefixed,
    words: {
      ...alike({ power: 0 }, 'cents', 'cent', 'ct', 'c'),
      ...alike({ power: 2 }, 'semitone', 'semitones'),
    },
    print: [{ ...printed('cents', 0), one: 'cent' }],
  },
  dB: {
    kind: 'a level',
    signed: true,
    usual: 'dB',
    suggest: 'dB',
    ...unprefixed,
    words: alike({ power: 0 }, 'dB', 'decibel', 'decibels'),
    print: [printed('dB', 0)],
  },
  grade: {
    kind: 'a grade',
    signed: true,
    usual: 'grade',
    suggest: 'a plain number',
    ...unprefixed,
    words: alike({ power: 0 }, 'grade'),
    print: [printed('', 0)],
  },
  ratio: {
    kind: 'a ratio',
    signed: false,
    usual: 'x',
    suggest: '× or %',
    ...unprefixed,
    words: {
      ...alike({ power: 0 }, 'x', '×', 'times', 'fold', 'ratio'),
      ...alike({ power: -2 }, '%', 'percent'),
    },
    print: [printed('×', 0)],
  },
  number: {
    kind: 'a plain number',
    signed: true,
    usual: '1',
    suggest: 'no unit at all',
    ...unprefixed,
    words: alike({ power: 0 }, '1', 'turn', 'turns'),
    print: [printed('', 0)],
  },
  ...DERIVED_UNIT_FACTS,
};

/** Every unit that the engine calculates in. */
export const UNITS = Object.keys(UNIT_FACTS) as Unit[];
