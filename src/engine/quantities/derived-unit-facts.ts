import { SLOPES } from './slopes.ts';
import { alike, printed, printedWith, unprefixed, type Unit, type UnitFacts } from './unit.ts';

type DerivedUnit = Extract<Unit, 'C' | 'S' | 'deg' | '1/K' | 'V/s' | 'V/octave' | 'm3' | 'F*V/m3'>;

/** Units made of others, with the ways in which people write them. */
export const DERIVED_UNIT_FACTS: Readonly<Record<DerivedUnit, UnitFacts>> = {
  C: {
    kind: 'a charge',
    signed: false,
    usual: 'pC',
    suggest: 'pC or nC',
    prefixed: ['C', 'As', 'coulomb', 'coulombs'],
    prefixes: 'fpnum',
    prefixAlone: false,
    words: {},
    print: printedWith('C', 'fpnum_'),
  },
  S: {
    kind: 'a conductance',
    signed: false,
    usual: 'mS',
    suggest: 'mS or µS',
    prefixed: ['S', 'siemens', 'A/V', 'mho', 'mhos'],
    prefixes: 'num',
    prefixAlone: false,
    words: {},
    print: printedWith('S', 'num_'),
  },
  deg: {
    kind: 'an angle',
    signed: true,
    usual: '°',
    suggest: '°',
    ...unprefixed,
    words: alike({ power: 0 }, '°', 'deg', 'degree', 'degrees'),
    print: [printed('°', 0)],
  },
  '1/K': {
    kind: 'a temperature coefficient',
    signed: true,
    usual: 'ppm/K',
    suggest: 'ppm/K',
    ...unprefixed,
    words: {
      ...alike({ power: -6 }, 'ppm/K', 'ppm/°C', 'ppm/℃', 'ppm/C', 'ppm/degC', 'ppm'),
      ...alike({ power: -2 }, '%/K', '%/°C', '%/℃', '%/C', '%/degC'),
      ...alike({ power: 0 }, '/K', '/°C', 'K⁻¹'),
    },
    print: [printed('ppm/K', -6)],
  },
  'V/s': {
    kind: 'a rate of voltage change',
    signed: true,
    usual: 'V/us',
    suggest: 'V/µs or V/s',
    ...unprefixed,
    words: SLOPES,
    print: [printed('mV/s', -3), printed('V/s', 0), printed('V/µs', 6, 1e4)],
  },
  'V/octave': {
    kind: 'a pitch scale',
    signed: true,
    usual: 'V/octave',
    suggest: 'V/octave',
    ...unprefixed,
    words: {
      ...alike({ power: 0 }, 'V/octave', 'V/oct', 'volt/octave', 'volts/octave'),
      ...alike({ power: -3 }, 'mV/octave', 'mV/oct'),
    },
    print: [printed('V/octave', 0)],
  },
  m3: {
    kind: 'a volume',
    signed: false,
    usual: 'cm³',
    suggest: 'cm³',
    ...unprefixed,
    words: {
      ...alike({ power: -6 }, 'cm³', 'cc', 'ml'),
      ...alike({ power: -9 }, 'mm³'),
      ...alike({ power: 0 }, 'm³'),
    },
    print: [printed('cm³', -6)],
  },
  'F*V/m3': {
    kind: 'a capacitance times voltage per volume',
    signed: false,
    usual: 'uF*V/cm³',
    suggest: 'µF·V/cm³',
    ...unprefixed,
    words: { ...alike({ power: 0 }, 'uF*V/cm³', 'uFV/cm³', 'F*V/m³', 'FV/m³') },
    print: [printed('µF·V/cm³', 0)],
  },
};
