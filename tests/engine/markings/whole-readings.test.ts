import { describe, expect, test } from 'vitest';
import { readMarking, type Hints, type Reading } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

/** What a reading says, save what a meter would say, with its evidence as text, place and meaning. */
interface Told extends Omit<
  Reading,
  'evidence' | 'measured' | 'sure' | 'notUnderstood' | 'settleBy'
> {
  sure?: Reading['sure'];
  evidence: [text: string, at: number, means: string][];
  notUnderstood?: string[];
  settleBy?: string[];
}

/** Numbers without the noise of binary fractions, however deep they stand. */
const rounded = (value: unknown): unknown => {
  if (typeof value === 'number') return Number(value.toPrecision(9));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
};

/** Readings with everything that is said of them. */
const readAs = (text: string, hints?: Hints): unknown[] =>
  readMarking(catalogue, text, hints).map((reading) => {
    const evidence = reading.evidence.map(({ text: own, at, means }) => [own, at, means]);
    const told = Object.entries({ ...reading, evidence }).filter(([key]) => key !== 'measured');
    return rounded(Object.fromEntries(told));
  });

const n = 1e-9;
const u = 1e-6;
const p = 1e-12;

const exactly = (typ: number) => ({ min: typ, typ, max: typ });
const about = (typ: number, share: number) => ({
  min: typ * (1 - share),
  typ,
  max: typ * (1 + share),
});
const within = (share: number) => ({ minus: share, plus: share, unit: 'fraction' as const });

const best: [text: string, told: Told, hints?: Hints][] = [
  [
    '103M 1KV Z5U',
    {
      kind: 'capacitor',
      tolerance: within(0.2),
      capacitance: about(10 * n, 0.2),
      temperatureCharacteristic: {
        code: 'Z5U',
        class: 2,
        capacitanceChange: { min: -0.56, max: 0.22 },
        spreadKnown: true,
        tReference: 25,
        tMin: 10,
        tMax: 85,
      },
      // 10 nF · 0.8 · 0.44 and 10 nF · 1.2 · 1.22.
      capacitanceOverTemperature: { min: 3.52 * n, typ: 10 * n, max: 14.64 * n },
      ratedVoltage: exactly(1000),
      types: ['ceramic-z5u'],
      sure: 'sure',
      evidence: [
        ['103', 0, '10 nF'],
        ['M', 3, '±20 %'],
        ['1KV', 5, 'rated 1 kV'],
        ['Z5U', 9, 'class 2, −56/+22 % over 10 to 85 °C'],
      ],
    },
  ],
  [
    'MKP 0u22 M 275~ X2',
    {
      kind: 'capacitor',
      tolerance: within(0.2),
      capacitance: about(220 * n, 0.2),
      ratedVoltage: exactly(275),
      voltageKind: 'ac',
      types: ['film-x2', 'pp-metallized'],
      safetyClass: 'X2',
      sure: 'sure',
      evidence: [
        ['MKP', 0, 'metallised film, polypropylene'],
        ['0u22', 4, '220 nF'],
        ['M', 9, '±20 %'],
        ['275~', 11, 'rated 275 V ac'],
        ['X2', 16, 'class X2: across the line, pulses to 2.5 kV'],
      ],
    },
  ],
  [
    // A part of two classes is good for the lower of its voltages.
    '4n7 X1 400V~ Y2 250V~',
    {
      kind: 'capacitor',
      capacitance: exactly(4.7 * n),
      ratedVoltage: exactly(250),
      voltageKind: 'ac',
      types: ['film-y2', 'ceramic-y-safety'],
      safetyClass: 'X1/Y2',
      sure: 'sure',
      evidence: [
        ['4n7', 0, '4.7 nF'],
        ['X1', 4, 'class X1: across the line, pulses to 4 kV'],
        ['400V~', 7, 'rated 400 V ac'],
        ['Y2', 13, 'class Y2: line to earth, basic insulation'],
        ['250V~', 16, 'rated 250 V ac'],
      ],
    },
  ],
  [
    // An X3 has no impulse test; volts of a mains part are alternating where nothing else is said.
    '104 X3 275V',
    {
      kind: 'capacitor',
      capacitance: exactly(100 * n),
      ratedVoltage: exactly(275),
      voltageKind: 'ac',
      types: ['film-x2', 'paper-x-safety'],
      safetyClass: 'X3',
      sure: 'sure',
      evidence: [
        ['104', 0, '100 nF'],
        ['X3', 4, 'class X3: across the line, pulses to 1.2 kV'],
        ['275V', 7, 'rated 275 V'],
      ],
    },
  ],
  [
    '▲ 40 MFD 450V\n■ 20 MFD 25V',
    {
      kind: 'capacitor',
      sections: [
        { capacitance: exactly(40 * u), symbol: 'triangle', ratedVoltage: exactly(450) },
        { capacitance: exactly(20 * u), symbol: 'square', ratedVoltage: exactly(25) },
      ],
      types: ['al-electrolytic-wet'],
      sure: 'sure',
      evidence: [
        ['▲', 0, 'the section with the sign triangle'],
        ['40 MFD', 2, '40 µF (microfarad, old American writing)'],
        ['450V', 9, 'rated 450 V'],
        ['■', 14, 'the section with the sign square'],
        ['20 MFD', 16, '20 µF (microfarad, old American writing)'],
        ['25V', 23, 'rated 25 V'],
      ],
    },
  ],
  [
    '16+16µF 450V',
    {
      kind: 'capacitor',
      sections: [
        { capacitance: exactly(16 * u), ratedVoltage: exactly(450) },
        { capacitance: exactly(16 * u), ratedVoltage: exactly(450) },
      ],
      ratedVoltage: exactly(450),
      types: ['al-electrolytic-wet'],
      sure: 'sure',
      evidence: [
        ['16+16µF', 0, '2 sections: 16 µF and 16 µF (microfarad)'],
        ['450V', 8, 'rated 450 V'],
      ],
    },
  ],
  [
    'RN55C1002F',
    {
      kind: 'resistor',
      construction: 'metal film',
      tolerance: within(0.01),
      resistance: about(10e3, 0.01),
      temperatureCoefficient: { min: -50e-6, typ: 0, max: 50e-6 },
      power: exactly(0.125),
      types: [],
      sure: 'sure',
      evidence: [
        ['RN55C', 0, 'metal film, 0.125 W, at most 200 V, within ±50 ppm/K'],
        ['1002', 5, '10 kΩ'],
        ['F', 9, '±1 %'],
      ],
    },
  ],
  [
    // A style is of a resistor, though it has no value.
    'RN55D',
    {
      kind: 'resistor',
      construction: 'metal film',
      temperatureCoefficient: { min: -100e-6, typ: 0, max: 100e-6 },
      power: exactly(0.125),
      types: [],
      sure: 'possible',
      evidence: [['RN55D', 0, 'metal film, 0.125 W, at most 200 V, within ±100 ppm/K']],
    },
  ],
  [
    '10W 4K7 J',
    {
      kind: 'resistor',
      tolerance: within(0.05),
      resistance: about(4700, 0.05),
      power: exactly(10),
      types: [],
      sure: 'sure',
      evidence: [
        ['10W', 0, 'rated 10 W'],
        ['4K7', 4, '4.7 kΩ'],
        ['J', 8, '±5 %'],
      ],
    },
  ],
  [
    '4-20 pF',
    {
      kind: 'capacitor',
      capacitance: { min: 4 * p, typ: 12 * p, max: 20 * p },
      types: ['air-variable'],
      sure: 'sure',
      evidence: [['4-20 pF', 0, 'adjustable from 4 pF to 20 pF']],
    },
  ],
  [
    '47n K 40/085/21 8923',
    {
      kind: 'capacitor',
      tolerance: within(0.1),
      capacitance: about(47 * n, 0.1),
      types: [],
      date: '1989-W23',
      sure: 'sure',
      evidence: [
        ['47n', 0, '47 nF'],
        ['K', 4, '±10 %'],
        ['40/085/21', 6, '−40 to 85 °C, 21 days of damp heat'],
        ['8923', 16, 'made 1989-W23'],
      ],
    },
  ],
  [
    'BP 10uF 50V',
    {
      kind: 'capacitor',
      capacitance: exactly(10 * u),
      ratedVoltage: exactly(50),
      types: ['al-electrolytic-bipolar'],
      polarity: 'none',
      // The letters are those of a temperature characteristic too, but not on so large a part.
      sure: 'sure',
      settleBy: [],
      evidence: [
        ['BP', 0, 'bipolar: no polarity'],
        ['10uF', 3, '10 µF (microfarad)'],
        ['50V', 8, 'rated 50 V'],
      ],
    },
  ],
  [
    '47  µH QQX 5 A',
    {
      kind: 'capacitor',
      types: [],
      notRead: '47 µH, an inductance; 5 A, a current',
      others: ['an inductance', 'a current'],
      sure: 'possible',
      notUnderstood: ['QQX'],
      // The 5 might be picofarads.
      settleBy: ['only the smallest ceramics'],
      evidence: [
        ['47  µH', 0, 'an inductance: microhenry, a millionth of a henry: the part is a coil'],
        [
          '5 A',
          11,
          'a current: ampere: the rating of a fuse, a switch or a choke, or the ripple of a capacitor',
        ],
      ],
    },
  ],
  [
    '250 mW',
    {
      kind: 'resistor',
      power: exactly(0.25),
      types: [],
      notRead: '250 mW, a power',
      sure: 'possible',
      evidence: [['250 mW', 0, 'rated 0.25 W']],
    },
  ],
  [
    'X7R 50V',
    {
      kind: 'capacitor',
      temperatureCharacteristic: {
        code: 'X7R',
        class: 2,
        capacitanceChange: { min: -0.15, max: 0.15 },
        spreadKnown: true,
        tReference: 25,
        tMin: -55,
        tMax: 125,
      },
      ratedVoltage: exactly(50),
      types: ['ceramic-x7r'],
      sure: 'possible',
      evidence: [
        ['X7R', 0, 'class 2, −15/+15 % over −55 to 125 °C'],
        ['50V', 4, 'rated 50 V'],
      ],
    },
  ],
];

describe('everything that is said of the best reading', () => {
  test.each(best)('%j', (text, told, hints) => {
    expect(readAs(text, hints)[0]).toEqual(rounded({ notUnderstood: [], settleBy: [], ...told }));
  });
});
