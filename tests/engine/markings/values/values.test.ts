import { describe, expect, test } from 'vitest';
import { figureValuesAt } from '../../../../src/engine/markings/values/figure-values.ts';
import type { Hints } from '../../../../src/engine/markings/index.ts';
import { letterValuesAt } from '../../../../src/engine/markings/values/letter-values.ts';
import type { Token } from '../../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import {
  expected,
  inShort,
  lexiconFor,
  scanFor,
  scanWithLookAlikes,
  type Short,
} from '../scans.ts';

const {
  value: { usual, other, rare },
  coarseSeries: coarse,
  fineSeries: fine,
  oldValue: old,
  noSeries,
  precisionSeries: precision,
  eraDiffers,
  wornFigure,
  worn,
  completedTo,
  letterOfOhms: ohms,
  noughtBeforeLetter,
  preciseFigures,
} = weights;

const figuresAt = (text: string, at: number, hints: Hints = {}): Token[] =>
  figureValuesAt(scanFor(text, hints), at);

describe('a value in figures alone', () => {
  test.each<[text: string, at: number, found: Short[], hints?: Hints]>([
    [
      '104',
      0,
      [
        [3, '100 nF', usual + coarse],
        [3, '104 pF', other + precision.bare],
        [3, '104 pF', other + precision.bare],
        [3, '104 µF', other + precision.bare],
      ],
    ],
    [
      '470',
      0,
      [
        [3, '47 pF', usual + coarse],
        [3, '47 µF', rare + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 µF', other + coarse],
      ],
    ],
    // Counting the noughts began about 1965, printing them ended about 1975, in Britain in 1972.
    [
      '470',
      0,
      [
        [3, '47 pF', usual + coarse + eraDiffers],
        [3, '47 µF', rare + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 µF', other + coarse],
      ],
      { era: { from: 1950, to: 1964 } },
    ],
    [
      '470',
      0,
      [
        [3, '47 pF', usual + coarse],
        [3, '47 µF', rare + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 pF', other + coarse + eraDiffers],
        [3, '470 µF', other + coarse],
      ],
      { era: { from: 1975, to: 1980 } },
    ],
    [
      '470',
      0,
      [
        [3, '47 pF', usual + coarse],
        [3, '47 µF', rare + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 pF', other + coarse],
        [3, '470 µF', other + coarse],
      ],
      { era: { from: 1960, to: 1965 } },
    ],
    // A last figure of 9 stands for a tenth, of 8 for a hundredth, of 7 for ten million.
    [
      '479',
      0,
      [
        [3, '4.7 pF', other + coarse],
        [3, '479 pF', other + noSeries.bare],
        [3, '479 pF', other + noSeries.bare],
        [3, '479 µF', other + noSeries.bare],
      ],
    ],
    [
      '107',
      0,
      [
        [3, '100 µF', other + coarse],
        [3, '107 pF', other + precision.bare],
        [3, '107 pF', other + precision.bare],
        [3, '107 µF', other + precision.bare],
      ],
    ],
    [
      '1001',
      0,
      [
        [4, '1 nF', other + coarse],
        [4, '1.001 nF', usual + noSeries.bare],
        [4, '1001 µF', other + noSeries.bare],
      ],
    ],
    [
      '1062',
      0,
      [
        [4, '10.6 nF', other + precision.precise],
        [4, '1.062 nF', usual + noSeries.bare],
        [4, '1062 µF', other + noSeries.bare],
      ],
    ],
    [
      '47',
      0,
      [
        [2, '47 pF', usual + coarse],
        [2, '47 µF', rare + coarse],
      ],
    ],
    ['.022', 0, [[4, '22 nF', usual + coarse]]],
    [
      '2.2',
      0,
      [
        [1, '2 pF', rare + fine],
        [1, '2 µF', rare + fine],
        [3, '2.2 µF', other + coarse],
        [3, '2.2 pF', usual + coarse],
      ],
    ],
    [
      '0.5',
      0,
      [
        [3, '500 nF', usual + old],
        [3, '0.5 pF', rare + old],
      ],
    ],
    // Figures with a nought before them are a code, and not printed in full; thousands set apart are.
    ['0101', 0, [[4, '100 pF', other + coarse]]],
    [
      '10 000',
      0,
      [
        [2, '10 pF', usual + coarse],
        [2, '10 µF', rare + coarse],
        [6, '10 nF', usual + coarse],
        [6, '10000 µF', other + coarse],
      ],
    ],
    ['000', 0, []],
    ['123456', 0, []],
  ])('%s at %d: %j', (text, at, found, hints) => {
    expect(inShort(figuresAt(text, at, hints))).toEqual(expected(found));
  });

  test('with a worn figure is one that a series has', () => {
    // 43 of E24, 47 of E3, 40 of old; no other two figures 4x are in a series of few.
    expect(inShort(figuresAt('4?3', 0))).toEqual(
      expected([
        [1, '4 pF', rare + old],
        [1, '4 µF', rare + old],
        [3, '40 nF', usual + old + completedTo.old + wornFigure],
        [3, '43 nF', usual + fine + completedTo.E24 + wornFigure],
        [3, '47 nF', usual + coarse + completedTo.E3 + wornFigure],
      ]),
    );
  });

  test.each<[text: string, source: string, bodies: string[], voltsFrom: number | undefined]>([
    ['104', 'antentop-code', [], 1],
    ['479', 'oriedza-table', ['ceramic', 'ceramic-chip', 'mica', 'glass'], 50],
    ['107', 'samsung-pn', ['ceramic-chip', 'tantalum', 'aluminium'], 1],
  ])('%s is told by %s, and is met on %j', (text, source, bodies, voltsFrom) => {
    const [first] = figuresAt(text, 0);
    const { bodiesOfKind, bodies: names } = lexiconFor();
    expect(first?.meaning.source).toBe(source);
    expect(first?.meaning.voltsFrom).toBe(voltsFrom);
    expect(first?.meaning.bodies).toBe(
      bodies.length === 0 ? bodiesOfKind.capacitor : names.bitsOf(bodies),
    );
  });

  test('in microfarads is likelier with volts beside it, and says what settles it', () => {
    const [, large] = figuresAt('47', 0);
    expect(large?.meaning).toMatchObject({
      voltsBeside: true,
      settle: 'a polar part or a film of some size with a voltage beside it counts in uF',
      content: { says: 'capacitance', figures: '47', withUnit: false },
    });
    expect(figuresAt('104', 0)[0]?.meaning.voltsBeside).toBeUndefined();
  });
});

const lettersAt = (text: string, at = 0): Short[] => inShort(letterValuesAt(scanFor(text), at));

describe('a value with a letter for its point or unit', () => {
  test.each<[text: string, found: Short[]]>([
    ['4n7', [[3, '4.7 nF', usual + coarse]]],
    ['47n', [[3, '47 nF', usual + coarse]]],
    ['47F', [[3, '47 F', rare + coarse]]],
    ['9999n', [[5, '9.999 µF', usual + noSeries.precise]]],
    ['n47', [[3, '470 pF', usual + coarse]]],
    // Precise enough to tell more values apart.
    ['4n75', [[4, '4.75 nF', usual + precision.precise]]],
    ['4n73', [[4, '4.73 nF', usual + noSeries.precise]]],
    // R of ohms, of picofarads on ceramics, of microfarads on film.
    [
      '4R7',
      [
        [3, '4.7 pF', usual + coarse],
        [3, '4.7 µF', other + coarse],
        [3, '4.7 Ω', usual + coarse],
      ],
    ],
    [
      'R22',
      [
        [3, '0.22 pF', rare + coarse],
        [3, '220 nF', other + coarse],
        [3, '0.22 Ω', usual + coarse + ohms],
      ],
    ],
    ['47R', [[3, '47 Ω', usual + coarse + ohms]]],
    // A nought before the letter is a resistor's.
    [
      '0R22',
      [
        [4, '0.22 pF', rare + coarse + noughtBeforeLetter],
        [4, '220 nF', other + coarse + noughtBeforeLetter],
        [4, '0.22 Ω', usual + coarse],
      ],
    ],
    ['0n22', [[4, '220 pF', usual + coarse]]],
    [
      '47K',
      [
        [3, '47 nF', usual + coarse],
        [3, '47 kΩ', usual + coarse + ohms + weights.ohmsRather],
      ],
    ],
    [
      '4K7',
      [
        [3, '4.7 nF', usual + coarse],
        [3, '4.7 kΩ', usual + coarse + ohms],
      ],
    ],
    [
      '4K73',
      [
        [4, '4.73 nF', usual + noSeries.bare + preciseFigures],
        [4, '4.73 kΩ', usual + noSeries.precise + ohms],
      ],
    ],
    // Below one there is no K of capacitors.
    ['0K5', [[3, '500 Ω', usual + old + ohms]]],
    // A unit in full is taken whole, and figures that run on are none of the value.
    ['47nF', []],
    ['47nFX', [[3, '47 nF', usual + coarse]]],
    // Four figures together at most, three on either side.
    ['1n234', [[5, '1.234 nF', usual + noSeries.precise]]],
    ['12n345', []],
    ['123n45', []],
    ['1n2345', []],
    ['1234n', [[5, '1.234 µF', usual + noSeries.precise]]],
    ['1234n5', []],
    ['n001', []],
    ['0n0', []],
    ['n', []],
    ['47x', []],
    ['10 000n', []],
  ])('%s', (text, found) => {
    expect(lettersAt(text)).toEqual(expected(found));
  });

  test.each<[text: string, found: Short[]]>([
    // Two of the three characters cannot be read.
    ['?n? K1', []],
    [
      '4n?',
      [
        [3, '4 nF', usual + old + completedTo.old + wornFigure],
        [3, '4.3 nF', usual + fine + completedTo.E24 + wornFigure],
        [3, '4.7 nF', usual + coarse + completedTo.E3 + wornFigure],
      ],
    ],
  ])('%s with a worn figure', (text, found) => {
    expect(lettersAt(text)).toEqual(expected(found));
  });

  test('may stand behind something else', () => {
    expect(lettersAt('4 n47', 2)).toEqual(expected([[5, '470 pF', usual + coarse]]));
  });

  test.each<[text: string, found: Short[], assumed: Token['assumed']]>([
    // A y may be a micro sign that was misread, within the figures or behind them.
    ['2y2', [[3, '2.2 µF', usual + coarse - 0.8]], [{ at: 1, as: 'µ', why: 'look-alike' }]],
    ['22y', [[3, '22 µF', usual + coarse - 0.8]], [{ at: 2, as: 'µ', why: 'look-alike' }]],
    ['4x7', [], []],
  ])('%s with a character taken for another', (text, found, assumed) => {
    const tokens = letterValuesAt(scanWithLookAlikes(text), 0).filter(({ end }) => end === 3);
    expect(inShort(tokens)).toEqual(expected(found));
    for (const token of tokens) expect(token.assumed).toEqual(assumed);
  });

  test('a worn figure before the letter is one that a series has', () => {
    const tokens = letterValuesAt(scanFor('4?n'), 0).filter(({ end }) => end === 3);
    expect(inShort(tokens)).toEqual(
      expected([
        [3, '40 nF', usual + old + completedTo.old + wornFigure],
        [3, '43 nF', usual + fine + completedTo.E24 + wornFigure],
        [3, '47 nF', usual + coarse + completedTo.E3 + wornFigure],
      ]),
    );
    expect(tokens[2]?.assumed).toEqual([{ at: 1, as: '7', why: 'worn' }]);
  });

  test('with a worn letter is every one that there is, Cyrillic ones beside others only', () => {
    const letters = (text: string): string[] => [
      ...new Set(
        letterValuesAt(scanFor(text), 0)
          .filter(({ end }) => end === 3)
          .flatMap(({ assumed }) => assumed.map(({ as }) => as)),
      ),
    ];
    expect(letters('4?7').toSorted().join('')).toBe('EFGKLMNPRTUjkmnpruµμ');
    expect(letters('4?7 пк').join('')).toMatch(/[ПпНМ]/);
    const found = letterValuesAt(scanFor('4?7'), 0).find(
      ({ meaning, assumed }) => assumed[0]?.as === 'n' && meaning.means() === '4.7 nF',
    );
    expect(found?.weight).toBeCloseTo(usual + coarse + worn + completedTo.E3, 9);
    expect(found?.assumed).toEqual([{ at: 1, as: 'n', why: 'worn' }]);
  });

  test('tells a resistor by itself where its letter does', () => {
    const tells = (text: string): unknown[] =>
      letterValuesAt(scanFor(text), 0)
        .filter(({ meaning }) => meaning.content.says === 'resistance')
        .map(({ meaning }) => meaning.tellsKind);
    expect(tells('47R')).toEqual([true]);
    expect(tells('4R7')).toEqual([false]);
    expect(tells('4?7 K2').every((each) => each === false)).toBe(true);
  });
});
