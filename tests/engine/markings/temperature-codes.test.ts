import { describe, expect, test } from 'vitest';
import type { TemperatureCharacteristic } from '../../../src/engine/markings/index.ts';
import {
  readTemperatureCharacteristic,
  sayCharacteristic,
} from '../../../src/engine/markings/index.ts';
import { slopeLetters } from '../../../src/engine/markings/temperatures.ts';
import type { TemperatureMeaning } from '../../../src/engine/markings/temperatures.ts';
import { temperaturesAt } from '../../../src/engine/markings/temperature-tokens.ts';
import { wordsFoundAt } from '../../../src/engine/markings/scan.ts';
import type { Token } from '../../../src/engine/markings/token.ts';
import { weights } from '../../../src/engine/markings/weights.ts';
import { saying, scanFor, scanWithLookAlikes } from './scans.ts';
import { markings } from './tables.ts';

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
          source: 'sanderson-tol',
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
          source: 'sanderson-tol',
          change: { percent: [-22, 22], span: [-55, 105] },
        },
      ],
    ],
    [
      'Z4V',
      [
        {
          system: 'eia-2',
          source: 'sanderson-tol',
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

const { temperature, temperatureLetter, otherCase, figureForLetter, voltageForCode, worn } =
  weights;

type Short = [code: string, end: number, weight: number, needs: string];

const shorts = (tokens: readonly Token[]): Short[] =>
  saying(tokens, 'temperature').map(({ token: { end, weight, needs }, content }) => [
    content.characteristic.code,
    end,
    Number(weight.toFixed(9)),
    needs.join(' '),
  ]);

const near = (rows: Short[]): Short[] =>
  rows.map(([code, end, weight, needs]) => [code, end, Number(weight.toFixed(9)), needs]);

describe('a code by rule in a marking', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['104 X6S 50V', 4, [['X6S', 7, temperature.usual, '']]],
    ['104 X8L', 4, [['X8L', 7, temperature.other, '']]],
    ['104 x6s', 4, [['X6S', 7, temperature.usual + otherCase, '']]],
    ['104 M7G', 4, [['M7G', 7, temperature.usual, '']]],
    ['104 2F4', 4, [['2F4', 7, temperature.other, '']]],
    // Class 2 codes that begin with a letter may touch figures; the others are whole words.
    ['104X6S', 3, [['X6S', 6, temperature.usual, '']]],
    ['104M7G', 3, []],
    ['M2F4', 1, []],
    ['X6S104', 0, [['X6S', 3, temperature.usual, '']]],
    // Letters or figures run on.
    ['104KX6S', 4, []],
    ['104 X6SX', 4, []],
    ['104 X6', 4, []],
    // Named ones are words of a table.
    ['104 X7R', 4, []],
    ['104 XXR', 4, []],
    ['104 X66', 4, []],
  ])('%j at %d', (text, at, found) => {
    expect(shorts(temperaturesAt(scanFor(text), at))).toEqual(near(found));
  });

  test('with a character that cannot be read is every one that there is', () => {
    const found = shorts(temperaturesAt(scanFor('104 X?S'), 4));
    expect(found).toEqual(
      near([...'2456789'].map((figure) => [`X${figure}S`, 7, temperature.usual + worn, ''])),
    );
    const letters = shorts(temperaturesAt(scanFor('104 ?6S'), 4)).map(([code]) => code);
    expect(letters).toEqual(['X6S', 'Y6S', 'Z6S']);
    // With two that cannot be read there is nothing to go by.
    expect(shorts(temperaturesAt(scanFor('104 X??'), 4))).toEqual([]);
  });

  test('says what was made up', () => {
    const [token] = temperaturesAt(scanFor('104 X6?'), 4);
    expect(token).toMatchObject({
      at: 4,
      end: 7,
      assumed: [{ at: 6, as: 'A', why: 'worn' }],
      meaning: { slot: 'temperature' },
    });
    expect(token?.meaning.means()).toBe('class 2, −1/+1 % over −55 to 105 °C');
  });

  test.each<[text: string, found: Short[]]>([
    // Figures taken for letters and letters for figures, at what the table of look-alikes has.
    ['104 XGS', [['X6S', 7, temperature.usual - 0.8, '']]],
    [
      '104 26S',
      [
        ['Z6S', 7, temperature.usual - 0.7 + figureForLetter, ''],
        ['Z5S', 7, temperature.usual - 0.7 - 2.6 + figureForLetter, ''],
        ['Z8S', 7, temperature.usual - 0.7 - 2.6 + figureForLetter, ''],
      ],
    ],
    // 26 volts as they stand are no code that was misread.
    [
      '104 26V',
      [
        ['Z6V', 7, temperature.usual - 0.7 + voltageForCode, ''],
        ['Z8V', 7, temperature.usual - 0.7 - 2.6 + voltageForCode, ''],
      ],
    ],
  ])('%s with characters taken for others', (text, found) => {
    expect(shorts(temperaturesAt(scanWithLookAlikes(text), 4))).toEqual(near(found));
  });
});

describe('a letter behind a tolerance letter', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    [
      '470JN',
      4,
      [
        ['N', 5, temperatureLetter.rare, 'touching-tolerance'],
        ['N', 5, temperatureLetter.usual, 'touching-tolerance'],
      ],
    ],
    ['470JW DISC', 4, [['W', 5, temperatureLetter.usual, 'touching-tolerance']]],
    // One more may follow, but no two; behind a figure there is no tolerance letter.
    ['470JWe', 4, [['W', 5, temperatureLetter.usual, 'touching-tolerance']]],
    ['470JWee', 4, []],
    ['470W', 3, []],
    ['470JZ', 4, []],
  ])('%s at %d', (text, at, found) => {
    expect(shorts(temperaturesAt(scanFor(text), at))).toEqual(near(found));
  });
});

describe('a code of a table in a marking', () => {
  const wordsAt = (text: string, at: number, hints = {}, confused = false): Short[] => {
    const scan = (confused ? scanWithLookAlikes : scanFor)(text, hints);
    return shorts(
      wordsFoundAt(scan, at).flatMap((found) => found.item.take(scan, at, found) ?? []),
    );
  };

  test.each<[text: string, at: number, found: Short[], hints?: object]>([
    ['104 X7R', 4, [['X7R', 7, temperature.usual, '']]],
    ['104 x7r', 4, [['X7R', 7, temperature.usual + otherCase, '']]],
    ['104X7R', 3, [['X7R', 6, temperature.usual, '']]],
    ['100 CH', 4, [['CH', 6, temperature.usual, '']]],
    // Two small letters may be part of a name.
    ['100 ch', 4, []],
    ['100JCH', 4, []],
    ['100 CHX', 4, []],
    ['100 N750', 4, [['N750', 8, temperature.usual, '']]],
    ['100 N7500', 4, []],
    // A single letter stands alone, or before the value; one that is rare only on its body.
    ['104 B', 4, [['B', 5, temperatureLetter.other, 'whole-word']]],
    ['B104', 0, [['B', 1, temperatureLetter.other, 'touching-before-value']]],
    ['B1045', 0, [['B', 1, temperatureLetter.other, 'whole-word']]],
    [
      '104 B',
      4,
      [
        ['B', 5, temperatureLetter.other, 'whole-word'],
        ['B', 5, temperatureLetter.rare, 'whole-word'],
      ],
      { body: 'mica' },
    ],
  ])('%s at %d', (text, at, found, hints) => {
    expect(wordsAt(text, at, hints)).toEqual(near(found));
  });

  test.each<[text: string, found: Short[]]>([
    ['104 25U', [['Z5U', 7, temperature.usual - 0.7 + figureForLetter, '']]],
    ['104 25V', [['Z5V', 7, temperature.usual - 0.7 + voltageForCode, '']]],
    ['104 ХТR', []],
    ['104 Х7R', [['X7R', 7, temperature.usual - 0.3, '']]],
    // No code of two letters is read into others.
    ['104 СH', []],
  ])('%s with characters taken for others', (text, found) => {
    expect(wordsAt(text, 4, {}, true)).toEqual(near(found));
  });
});
