import { describe, expect, test } from 'vitest';
import {
  readTemperatureCharacteristic,
  sayCharacteristic,
  type TemperatureCharacteristic,
} from '../../../../src/engine/markings/index.ts';
import {
  slopeLetters,
  type TemperatureMeaning,
} from '../../../../src/engine/markings/lexicon/temperatures.ts';
import { markings } from '../tables.ts';

/** What a system of codes has for all of them: class, and temperatures in degC. */
const systems = {
  'eia-1': { class: 1, tReference: 25, tMin: -55, tMax: 125 },
  industry: { class: 1, tReference: 25, tMin: -55, tMax: 85 },
  'jis-1': { class: 1, tReference: 20, tMin: -25, tMax: 85 },
  'iec-1': { class: 1, tReference: 20, tMin: -55, tMax: 125 },
  'british-1': { class: 1, tReference: 20, tMin: -40, tMax: 85 },
  'soviet-1': { class: 1, tReference: 20, tMin: -60, tMax: 85 },
  mica: { class: 1, tReference: 25, tMin: -55, tMax: 85 },
  'eia-2': { class: 2, tReference: 25, tMin: -55, tMax: 85 },
  'jis-2': { class: 2, tReference: 20, tMin: -25, tMax: 85 },
  'iec-2': { class: 2, tReference: 20, tMin: -55, tMax: 125 },
} as const;

type System = keyof typeof systems;

const CERAMIC = ['ceramic', 'ceramic-chip'];

/** Least, usual and greatest coefficient in ppm/K. */
type Ppm = [min: number, typ: number, max: number];
/** Least and greatest change in per cent over a span in degC. */
interface Change {
  percent: [min: number, max: number];
  span: [from: number, to: number];
}

const shortOf = ({ characteristic, system, source, use, byRule, alone }: TemperatureMeaning) => {
  const { coefficient, capacitanceChange, spreadKnown, code, ...rest } = characteristic;
  const { tMin, tMax } = rest;
  const ppm = (value: number): number => Number((value * 1e6).toPrecision(9));
  const percent = (value: number): number => Number((value * 100).toPrecision(9));
  return {
    code,
    system,
    source,
    use,
    byRule,
    alone,
    spreadKnown,
    ...(coefficient && {
      ppm: [coefficient.min, coefficient.typ, coefficient.max].map(ppm),
      rest,
    }),
    ...(capacitanceChange && {
      change: {
        percent: [capacitanceChange.min, capacitanceChange.max].map(percent),
        span: [tMin, tMax],
      },
      rest: { class: rest.class, tReference: rest.tReference },
    }),
  };
};

interface Wanted {
  system: System;
  source: string;
  ppm?: Ppm;
  change?: Change;
  use?: TemperatureMeaning['use'];
  /** Whether it stands whole in a table. */
  named?: true;
  /** Whether it is read so only beside a value. */
  beside?: true;
  spreadKnown?: false;
}

const inFull = (code: string, wanted: Wanted) => {
  const { system, source, use = 'usual', named, beside, spreadKnown = true } = wanted;
  const { class: its, tReference, tMin, tMax } = systems[system];
  return {
    code,
    system,
    source,
    use,
    byRule: named === undefined,
    alone: beside === undefined,
    spreadKnown,
    ...(wanted.ppm && { ppm: wanted.ppm, rest: { class: its, tReference, tMin, tMax } }),
    ...(wanted.change && { change: wanted.change, rest: { class: its, tReference } }),
  };
};

const X = [-55, 125] as [number, number];

describe('a temperature code by itself', () => {
  test.each<[code: string, meanings: Wanted[]]>([
    // As they stand in their tables.
    ['C0G', [{ system: 'eia-1', source: 'tdk-faq51', ppm: [-30, 0, 30], named: true }]],
    [
      'N750',
      [
        {
          system: 'industry',
          source: 'camelcom-disc',
          ppm: [-750, -750, -750],
          named: true,
          spreadKnown: false,
        },
      ],
    ],
    // Midway between its ends where the table has no other.
    ['SL', [{ system: 'jis-1', source: 'murata-pn', ppm: [-1000, -325, 350], named: true }]],
    [
      'VK',
      [
        { system: 'jis-1', source: 'camelcom-disc', ppm: [-1250, -1000, -750], named: true },
        {
          system: 'iec-1',
          source: 'iec-60384-8',
          ppm: [-1750, -1500, -1250],
          named: true,
          use: 'rare',
        },
      ],
    ],
    [
      'X7R',
      [
        {
          system: 'eia-2',
          source: 'eia-class2-note',
          change: { percent: [-15, 15], span: X },
          named: true,
        },
      ],
    ],
    // A letter that a table of ceramics and one of mica have, the less rare first.
    [
      'B',
      [
        {
          system: 'jis-2',
          source: 'taiyo-pn',
          change: { percent: [-10, 10], span: [-25, 85] },
          named: true,
          use: 'other',
          beside: true,
        },
        {
          system: 'mica',
          source: 'retma-codes',
          ppm: [-500, 0, 500],
          named: true,
          use: 'rare',
          beside: true,
        },
      ],
    ],
    // By the rule of EIA class 1: a figure, what it is multiplied by, how far it may be off.
    ['M7G', [{ system: 'eia-1', source: 'barnes-2004', ppm: [70, 100, 130] }]],
    ['S2H', [{ system: 'eia-1', source: 'barnes-2004', ppm: [-390, -330, -270] }]],
    ['C1G', [{ system: 'eia-1', source: 'barnes-2004', ppm: [-30, 0, 30] }]],
    [
      'M4G',
      [
        { system: 'eia-1', source: 'barnes-2004', ppm: [-10030, -10000, -9970] },
        { system: 'eia-1', source: 'barnes-2004', ppm: [-29, 1, 31], use: 'rare' },
      ],
    ],
    // By that of JIS: a slope, how far it may be off.
    ['HH', [{ system: 'jis-1', source: 'dianzu-jis', ppm: [-90, -30, 30], use: 'other' }]],
    // By that of EIA class 2: lowest and highest temperature, change between them.
    [
      'X6S',
      [
        {
          system: 'eia-2',
          source: 'eia-class2-note',
          change: { percent: [-22, 22], span: [-55, 105] },
        },
      ],
    ],
    [
      'Z4V',
      [
        {
          system: 'eia-2',
          source: 'eia-class2-note',
          change: { percent: [-82, 22], span: [10, 65] },
        },
      ],
    ],
    [
      'X8L',
      [
        {
          system: 'eia-2',
          source: 'gh-rs198',
          change: { percent: [-40, 15], span: [-55, 150] },
          use: 'other',
        },
      ],
    ],
    // By that of IEC: a change, then a figure for the span.
    [
      '2F4',
      [
        {
          system: 'iec-2',
          source: 'iec-60384-9',
          change: { percent: [-80, 30], span: [-25, 85] },
          use: 'other',
        },
      ],
    ],
    [
      '2C6',
      [
        {
          system: 'iec-2',
          source: 'iec-60384-9',
          change: { percent: [-20, 20], span: [10, 85] },
          use: 'other',
        },
      ],
    ],
    ['X7', []],
    ['X7RR', []],
    ['XX7', []],
    ['X3R', []],
    ['W7R', []],
    ['2C9', []],
    ['2Z1', []],
    // A change of one standard with the span of another.
    ['R1', []],
    ['X72C', []],
    ['M7', []],
    ['M7X', []],
    ['G7G', []],
    ['HX', []],
    ['', []],
  ])('%s', (code, meanings) => {
    const found = readTemperatureCharacteristic(markings, code);
    expect(found.map(shortOf)).toEqual(meanings.map((wanted) => inFull(code, wanted)));
    for (const { byRule, bodies, origins } of found)
      if (byRule) expect({ bodies, origins }).toEqual({ bodies: CERAMIC, origins: [] });
  });

  test.each<[code: string, types: string[]]>([
    ['C0G', ['ceramic-c0g']],
    ['X7R', ['ceramic-x7r']],
    ['M7G', ['ceramic-class1-other']],
    ['C1G', ['ceramic-c0g']],
    ['CH', ['ceramic-c0g']],
    ['HH', ['ceramic-class1-other']],
    ['X6S', ['ceramic-x7r', 'ceramic-x5r']],
    ['2F4', ['ceramic-y5v']],
  ])('%s suggests %j', (code, types) => {
    expect(readTemperatureCharacteristic(markings, code)[0]?.types).toEqual(types);
  });

  test('of a table is for the bodies and origins that it has', () => {
    const [soviet] = readTemperatureCharacteristic(markings, 'М47');
    expect(soviet).toMatchObject({ bodies: CERAMIC, origins: ['soviet'] });
    const [, mica] = readTemperatureCharacteristic(markings, 'B');
    expect(mica).toMatchObject({ bodies: ['mica'], origins: [] });
    const [ceramic] = readTemperatureCharacteristic(markings, 'Н90');
    expect(ceramic).toMatchObject({ bodies: CERAMIC, origins: ['soviet'] });
  });
});

describe('a single letter for a slope', () => {
  test.each<[letter: string, meanings: Wanted[]]>([
    [
      'N',
      [
        { system: 'soviet-1', source: 'pretich-gost', ppm: [33, 33, 33], use: 'rare' },
        { system: 'british-1', source: 'snook-codes', ppm: [-750, -750, -750] },
      ],
    ],
    ['W', [{ system: 'british-1', source: 'snook-codes', ppm: [470, 470, 470] }]],
    // Those of JIS stand in pairs only.
    ['Z', []],
    ['', []],
  ])('%s', (letter, meanings) => {
    const found = slopeLetters(markings, letter);
    expect(found.map(shortOf)).toEqual(
      meanings.map((wanted) => inFull(letter, { ...wanted, beside: true, spreadKnown: false })),
    );
    for (const { bodies, origins, system } of found)
      expect({ bodies, origins }).toEqual({
        bodies: CERAMIC,
        origins: [system === 'british-1' ? 'british' : 'soviet'],
      });
  });
});

describe('a temperature characteristic in words', () => {
  test.each([
    ['Z5U', 'class 2, −56/+22 % over 10 to 85 °C'],
    ['X5B', 'class 2, −1.5/+1.5 % over −55 to 85 °C'],
    ['C0G', 'class 1, 0 ±30 ppm/K'],
    ['M7G', 'class 1, +100 ±30 ppm/K'],
    ['S2H', 'class 1, −330 ±60 ppm/K'],
    // Ends that are not alike are said one by one; so is a slope whose ends are not known.
    ['P350-N1000', 'class 1, −325 ±675 ppm/K'],
    ['E', 'class 1, −20 to +100 ppm/K'],
    ['N750', 'class 1, −750 ppm/K'],
    ['P100', 'class 1, +100 ppm/K'],
  ])('%s', (code, said) => {
    const found = readTemperatureCharacteristic(markings, code).map(({ characteristic }) =>
      sayCharacteristic(characteristic),
    );
    expect(found).toContain(said);
  });

  test('that says neither change nor slope', () => {
    const bare: TemperatureCharacteristic = {
      code: '-',
      class: 3,
      spreadKnown: false,
      tReference: 25,
      tMin: -25,
      tMax: 85,
    };
    expect(sayCharacteristic(bare)).toBe('class 3');
  });
});
