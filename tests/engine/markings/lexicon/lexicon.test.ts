import { describe, expect, test } from 'vitest';
import type { Hints } from '../../../../src/engine/markings/index.ts';
import { namesFrom, namesWithin } from '../../../../src/engine/markings/lexicon/names.ts';
import {
  othersFoundAt,
  unitsFoundAt,
  voltsFoundAt,
  wordsFoundAt,
} from '../../../../src/engine/markings/lexicon/scan.ts';
import { inOrderOfUse, rarer } from '../../../../src/engine/markings/meanings/use.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { lexiconFor, scanFor, scanWithLookAlikes } from '../scans.ts';

describe('names with a bit for each', () => {
  const names = namesFrom(['film', 'mica', 'film', 'paper']);

  test.each<[some: string[], bits: number]>([
    [['film'], 1],
    [['mica'], 2],
    [['paper'], 4],
    [['film', 'paper'], 5],
    // A row that names none is tied to all; a name that is not known has no bit.
    [[], 7],
    [['glass'], 0],
    [['glass', 'mica'], 2],
  ])('%j', (some, bits) => {
    expect(names.bitsOf(some)).toBe(bits);
  });

  test.each<[bits: number, some: string[]]>([
    [5, ['film', 'paper']],
    [2, ['mica']],
    [0, []],
    [7, []],
  ])('%d', (bits, some) => {
    expect(names.namesOf(bits)).toEqual(some);
    expect(names.all).toBe(7);
  });

  test('within some of them: a row that names none is tied to those', () => {
    const some = namesWithin(names, ['mica', 'paper']);
    expect(some.bitsOf([])).toBe(6);
    expect(some.bitsOf(['film'])).toBe(1);
    expect(some.all).toBe(7);
  });

  test('are thirty at most', () => {
    const many = Array.from({ length: 30 }, (_, index) => `n${index}`);
    expect(namesFrom(many).all).toBe(2 ** 30 - 1);
    expect(namesFrom(many).bitsOf(['n29'])).toBe(2 ** 29);
    expect(() => namesFrom([...many, 'n30'])).toThrow(RangeError);
  });
});

describe('uses', () => {
  test('stand with the usual first, those alike as they stood', () => {
    const rows = [
      { use: 'rare', id: 1 },
      { use: 'usual', id: 2 },
      { use: 'other', id: 3 },
      { use: 'usual', id: 4 },
    ] as const;
    expect(inOrderOfUse(rows).map(({ id }) => id)).toEqual([2, 4, 3, 1]);
  });

  test.each([
    ['usual', 'other', 'other'],
    ['rare', 'other', 'rare'],
    ['usual', 'usual', 'usual'],
    ['other', 'usual', 'other'],
  ] as const)('of %s and %s the less usual is %s', (a, b, wanted) => {
    expect(rarer(a, b)).toBe(wanted);
  });
});

describe('how readily something is believed', () => {
  test('what costs is below nought', () => {
    const costs = [
      'noughtBeforeLetter',
      'toleranceForUnit',
      'toleranceBeforeFigures',
      'unusualTolerance',
      'furtherSection',
      'voltageOfRange',
      'shorterVolts',
      'testBelowRating',
      'voltagePair',
      'voltageCodeForPoint',
      'voltageCodeForPower',
      'figureForLetter',
      'voltageForCode',
      'dateForVoltage',
      'taperBesideCode',
      'taperOfPrecisePart',
      'otherForCode',
      'otherCase',
      'otherCaseOfUnit',
      'gap',
      'wornFigure',
      'worn',
      'wornLeft',
      'completedUnit',
      'completedVoltage',
      'beyondSeriesOfTolerance',
      'notUnderstood',
      'notUnderstoodCharacter',
      'notUnderstoodFigures',
      'notUnderstoodMost',
      'restOfWord',
      'outsideBody',
      'toleranceAboveValue',
      'voltageTooLow',
      'noughtsBehindPoint',
      'bodiesClash',
      'originsClash',
      'bodyDiffers',
      'originDiffers',
      'kindDiffers',
      'eraDiffers',
      'resistor',
      'noValue',
    ] as const;
    expect(costs.filter((name) => weights[name] >= 0)).toEqual([]);
  });

  test('the usual is believed more than another use, and that more than a rare one', () => {
    const ofUses = Object.entries(weights).flatMap(([name, weight]) =>
      typeof weight === 'object' && 'usual' in weight ? [{ name, weight }] : [],
    );
    expect(ofUses.map(({ name }) => name)).toEqual([
      'value',
      'mantissaLetter',
      'valueWithUnit',
      'tolerance',
      'voltageWithUnit',
      'power',
      'voltageCode',
      'voltageFigures',
      'voltageLetter',
      'voltageLetterBehind',
      'temperature',
      'temperatureLetter',
      'word',
      'safety',
      'mark',
      'date',
      'taper',
      'otherUnit',
      'otherShape',
    ]);
    for (const { name, weight } of ofUses) {
      expect(weight.usual, name).toBeGreaterThan(weight.other);
      expect(weight.other, name).toBeGreaterThan(weight.rare);
    }
  });

  test('a made-up letter that is met often is believed more, and a value of a coarse series', () => {
    const { often, sometimes, seldom } = weights.completedLetter;
    expect([often, sometimes, seldom]).toEqual([often, sometimes, seldom].sort((a, b) => b - a));
    expect(often).toBeLessThan(0);
    const { E3, E6, E12, E24, E48, E96, E192, old } = weights.completedTo;
    const falling = [E3, E6, E12, E24, E48, E96, E192, old];
    expect(falling).toEqual(falling.toSorted((a, b) => b - a));
    expect(new Set(falling).size).toBe(8);
    expect(E24).toBe(0);
    const { bare, precise, unit } = weights.noSeries;
    expect(bare < precise && precise < unit && unit < 0).toBe(true);
    expect(weights.precisionSeries.bare).toBeLessThan(weights.precisionSeries.precise);
  });
});

describe('what is known of the part', () => {
  test.each<[hints: Hints, wanted: Hints]>([
    [{}, {}],
    [{ origin: 'soviet' }, { origin: 'soviet' }],
    [{ body: 'film' }, { body: 'film' }],
    // A type stands for the first body of its family, unless one is named.
    [{ type: 'ceramic-x7r' }, { type: 'ceramic-x7r', body: 'ceramic' }],
    [{ type: 'ta-mno2-solid' }, { type: 'ta-mno2-solid', body: 'tantalum' }],
    [
      { type: 'ceramic-x7r', body: 'ceramic-chip' },
      { type: 'ceramic-x7r', body: 'ceramic-chip' },
    ],
    [{ type: 'no-such-type' }, { type: 'no-such-type' }],
  ])('%j', (hints, wanted) => {
    expect(lexiconFor(hints).hints).toEqual(wanted);
  });
});

describe('what the tables come to', () => {
  const lexicon = lexiconFor();

  test('every body is one of a capacitor or of a resistor', () => {
    const { capacitor, resistor } = lexicon.bodiesOfKind;
    expect(capacitor).toBe(
      lexicon.bodies.bitsOf([
        'ceramic',
        'ceramic-chip',
        'film',
        'mica',
        'glass',
        'paper',
        'aluminium',
        'tantalum',
        'air',
        'double-layer',
      ]),
    );
    expect(resistor).toBe(
      lexicon.bodies.bitsOf(['resistor', 'resistor-chip', 'resistor-network', 'trimmer']),
    );
    expect(capacitor | resistor).toBe(lexicon.bodies.all);
  });

  test('usual voltages are those that parts bear without a unit', () => {
    expect([16, 63, 400, 450].map((volts) => lexicon.usualVolts.has(volts))).toEqual([
      true,
      true,
      true,
      true,
    ]);
    // Codes of a figure and a letter stand for others besides.
    expect([1.25, 3.15, 47, 12500].map((volts) => lexicon.usualVolts.has(volts))).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  test('letters that are a unit wherever they stand', () => {
    // Not N, seldom a unit; not m or П, which one origin has; not K and R, which few bodies bear.
    expect([...lexicon.unitLetters].toSorted()).toEqual(['P', 'U', 'n', 'p', 'u', 'µ', 'μ']);
  });

  test.each<[origin: string | undefined, written: string, as: [string, number][]]>([
    [
      undefined,
      '8',
      [
        ['B', -0.7],
        ['3', -2.5],
        ['6', -2.6],
        ['0', -2.7],
      ],
    ],
    [undefined, 'H', []],
    ['soviet', 'H', [['Н', -0.6]]],
    ['british', 'H', []],
    [
      'soviet',
      'O',
      [
        ['0', -0.5],
        ['О', -0.6],
      ],
    ],
    ['british', 'O', [['0', -0.5]]],
  ])('for %s, %s may be others', (origin, written, as) => {
    const others = lexicon.lookAlikes(origin).get(written) ?? [];
    expect(others.map((other) => [other.as, other.cost])).toEqual(as);
    // Made once for each origin.
    expect(lexicon.lookAlikes(origin)).toBe(lexicon.lookAlikes(origin));
  });
});

describe('words of the tables at an index', () => {
  const { capacitor, resistor } = lexiconFor().bodiesOfKind;
  const { all } = lexiconFor().bodies;

  /** A word of a quantity, with the bodies and origins that it is tied to. */
  test.each<[text: string, quantity: string, bodies: number, origins: string[]]>([
    ['pF', 'capacitance', capacitor, []],
    ['kΩ', 'resistance', resistor, []],
    ['W', 'power', resistor, []],
    ['%', 'fraction', all, []],
    ['кОм', 'resistance', resistor, ['soviet']],
    ['farad', 'capacitance', lexiconFor().bodies.bitsOf(['aluminium', 'double-layer']), []],
  ])('%s is a unit of %s', (text, quantity, bodies, origins) => {
    const scan = scanFor(text);
    const found = unitsFoundAt(scan, 0).filter(({ word }) => word === text);
    expect(found.map(({ item }) => item.row.quantity)).toEqual([quantity]);
    expect(found[0]?.item.bodies).toBe(bodies);
    expect(found[0]?.item.origins).toBe(scan.lexicon.origins.bitsOf(origins));
  });

  test.each<[text: string, at: number, volts: string[], others: string[]]>([
    // The shortest first.
    ['VDC', 0, ['V', 'VDC', 'VDC'], []],
    ['16 V- 4', 3, ['V', 'V-'], []],
    ['mA', 0, [], ['mA']],
    ['x', 0, [], []],
  ])('%s at %d has volts %j and others %j', (text, at, volts, others) => {
    const scan = scanFor(text);
    expect(voltsFoundAt(scan, at).map(({ word }) => word)).toEqual(volts);
    expect(othersFoundAt(scan, at).map(({ word }) => word)).toEqual(others);
    for (const { item } of voltsFoundAt(scan, at)) expect(item.bodies).toBe(capacitor);
  });

  test.each<[text: string, at: number, has: string[], hasNot: string[]]>([
    // At least half of a word can be read, from its first character on unless a word begins there.
    ['M?P', 0, ['MKP', 'MKP'], ['MPP?']],
    ['?KP', 0, ['MKP', 'FKP'], []],
    ['x?KP', 1, [], ['MKP', 'FKP']],
    ['xM?P', 1, ['MKP'], []],
    ['??P x', 0, [], ['MKP', 'FKP']],
    // Nothing of it can be read: only a tolerance letter is made up.
    ['104?', 3, ['K', 'J', 'M'], ['+']],
  ])('%s at %d has %j, and not %j', (text, at, has, hasNot) => {
    const words = wordsFoundAt(scanFor(text), at).map(({ word }) => word);
    expect(words).toEqual(expect.arrayContaining(has));
    for (const word of hasNot) expect(words).not.toContain(word);
  });

  test.each<[text: string, at: number, word: string, end: number, same: boolean, cost: number]>([
    ['mkp', 0, 'MKP', 3, false, 0],
    ['MKP', 0, 'MKP', 3, true, 0],
    ['МКP', 0, 'MKP', 3, true, -0.6],
    ['M?P', 0, 'MKP', 3, true, -1],
    ['m?P', 0, 'MKP', 3, false, -1],
  ])('%s at %d is %s', (text, at, word, end, sameCase, cost) => {
    const found = wordsFoundAt(scanWithLookAlikes(text), at).find((each) => each.word === word);
    expect(found).toMatchObject({ end, sameCase });
    expect(found?.cost).toBeCloseTo(cost, 9);
  });

  test('says what was assumed, letter by letter', () => {
    const found = wordsFoundAt(scanWithLookAlikes('МКP'), 0).find(({ word }) => word === 'MKP');
    expect(found?.assumed).toEqual([
      { at: 0, as: 'M', why: 'look-alike' },
      { at: 1, as: 'K', why: 'look-alike' },
    ]);
  });
});
