import { describe, expect, test } from 'vitest';
import type { Hints } from '../../../../src/engine/markings/index.ts';
import { powersAt } from '../../../../src/engine/markings/ratings/powers.ts';
import {
  chipResistorsAt,
  resistorFiguresAt,
} from '../../../../src/engine/markings/values/resistor-values.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { expected, inShort, saying, scanFor, scanWithLookAlikes, type Short } from '../scans.ts';

const {
  value: { usual, rare },
  coarseSeries: coarse,
  fineSeries: fine,
  noSeries,
  precisionSeries: precision,
  completedTo,
  wornFigure,
  worn,
  mantissaLetter,
  chipCode,
  chipCodeAlone,
  chipKnown,
  letterFirstCode,
  power,
} = weights;

describe('a resistance in figures alone', () => {
  test.each<[text: string, found: Short[]]>([
    [
      '473',
      [
        [3, '47 kΩ', usual + coarse],
        [3, '473 Ω', rare + noSeries.bare],
      ],
    ],
    [
      '4702',
      [
        [4, '47 kΩ', usual + coarse],
        [4, '4.702 kΩ', rare + noSeries.precise],
      ],
    ],
    [
      '470',
      [
        [3, '47 Ω', usual + coarse],
        [3, '470 Ω', rare + coarse],
      ],
    ],
    [
      '1072',
      [
        [4, '10.7 kΩ', usual + precision.precise],
        [4, '1.072 kΩ', rare + noSeries.precise],
      ],
    ],
    // At most 100 Mohm by three figures, 1 Gohm by four.
    [
      '107',
      [
        [3, '100 MΩ', usual + coarse],
        [3, '107 Ω', rare + precision.bare],
      ],
    ],
    ['108', [[3, '108 Ω', rare + noSeries.bare]]],
    [
      '1007',
      [
        [4, '1 GΩ', usual + coarse],
        [4, '1.007 kΩ', rare + noSeries.precise],
      ],
    ],
    ['1008', [[4, '1.008 kΩ', rare + noSeries.precise]]],
    ['10', [[2, '10 Ω', rare + coarse]]],
    ['9', []],
    // Five are plain ohms, or end in the zeros of accurate wire up to 10 Mohm.
    ['12345', [[5, '12.35 kΩ', rare + noSeries.precise]]],
    ['12345678', []],
    // Links, and figures that begin with a nought and are none.
    ['000', [[3, '0 Ω', usual, 'whole-word']]],
    ['0', [[1, '0 Ω', usual, 'whole-word']]],
    ['00000', []],
    ['010', []],
    // A decimal, of which the watts beside it tell that it is ohms.
    ['4.7', [[3, '4.7 Ω', rare + coarse]]],
    [
      '10 000',
      [
        [2, '10 Ω', rare + coarse],
        [6, '10 kΩ', rare + coarse],
      ],
    ],
    // A worn figure is one that a series has.
    [
      '4?3',
      [
        [3, '40 kΩ', usual + completedTo.old + wornFigure],
        [3, '43 kΩ', usual + fine + completedTo.E24 + wornFigure],
        [3, '47 kΩ', usual + coarse + completedTo.E3 + wornFigure],
      ],
    ],
  ])('%s', (text, found) => {
    expect(inShort(resistorFiguresAt(scanFor(text), 0))).toEqual(expected(found));
  });

  test.each<[text: string, from: number | undefined, upTo: number | undefined, line?: number]>([
    ['473', 0.01, 0.05, 1],
    ['4702', undefined, 0.02],
    ['10', undefined, undefined],
  ])('%s is for tolerances from %s to %s', (text, from, upTo, line) => {
    const [first] = resistorFiguresAt(scanFor(text), 0);
    expect(first?.meaning.toleranceFrom).toBe(from);
    expect(first?.meaning.toleranceUpTo).toBe(upTo);
    expect(first?.meaning.underlinedPercent).toBe(line);
    expect(first?.meaning.content).toMatchObject({ says: 'resistance', withUnit: false });
  });

  test('is told by its significant figures', () => {
    const figures = saying(resistorFiguresAt(scanFor('4702'), 0), 'resistance').map(
      ({ content }) => content.figures,
    );
    expect(figures).toEqual(['47', '4702']);
  });
});

const CODE = mantissaLetter.usual + chipCode;

describe('a code of small chip resistors', () => {
  // By EIA-96, 68 is 499, 18 is 150 and 47 is 301; with the letter first, 18 is 510 at 2 %, 25 is 100 at 5 %.
  test.each<[text: string, at: number, found: Short[], hints?: Hints]>([
    ['68C', 0, [[3, '49.9 kΩ', CODE + chipCodeAlone, 'whole-word']]],
    ['68X', 0, [[3, '49.9 Ω', CODE + chipCodeAlone, 'whole-word']]],
    ['68C 1', 0, [[3, '49.9 kΩ', CODE, 'whole-word']]],
    ['1 68C', 2, [[5, '49.9 kΩ', CODE, 'whole-word']]],
    [
      '68C',
      0,
      [[3, '49.9 kΩ', CODE + chipCodeAlone + chipKnown, 'whole-word']],
      { body: 'resistor-chip' },
    ],
    // A letter that lists differ about is no better for standing alone.
    [
      '47S',
      0,
      [
        [3, '30.1 Ω', mantissaLetter.rare + chipCode, 'whole-word'],
        [3, '3.01 Ω', mantissaLetter.rare + chipCode, 'whole-word'],
      ],
    ],
    [
      '18H',
      0,
      [
        [3, '1.5 GΩ', mantissaLetter.other + chipCode, 'whole-word'],
        [3, '1.5 kΩ', mantissaLetter.rare + chipCode, 'whole-word'],
      ],
    ],
    ['C18', 0, [[3, '51 kΩ', mantissaLetter.usual + letterFirstCode, 'whole-word']]],
    [
      'C18',
      0,
      [[3, '51 kΩ', mantissaLetter.usual + letterFirstCode + chipKnown, 'whole-word']],
      { body: 'resistor-chip' },
    ],
    ['68c', 0, []],
    ['68', 0, []],
    ['97C', 0, []],
    ['00C', 0, []],
    ['C00', 0, []],
    ['C1', 0, []],
    ['C', 0, []],
    ['x68C', 1, []],
    ['168C', 1, []],
  ])('%s at %d', (text, at, found, hints) => {
    expect(inShort(chipResistorsAt(scanFor(text, hints), at))).toEqual(expected(found));
  });

  test.each<[text: string, share: number, figures: string, source: string, settle: string]>([
    ['68C', 0.01, '499', 'zh-wikipedia-e-series', ''],
    ['18A', 0.01, '15', 'raelectrical-marking', ''],
    ['C18', 0.02, '51', 'wikipedia-smd-resistor', ''],
    ['C25', 0.05, '1', 'wikipedia-smd-resistor', ''],
    // The letter is what one would have to check.
    ['18G', 0.01, '15', 'rnd-chip-marking', ''],
    ['47S', 0.01, '301', 'wikipedia-smd-resistor', 'lists differ about this letter; measure'],
  ])('%s is for ±%d', (text, share, figures, source, settle) => {
    const [first] = chipResistorsAt(scanFor(text), 0);
    expect(first?.meaning).toMatchObject({
      implies: { minus: share, plus: share, unit: 'fraction' },
      content: { says: 'resistance', figures },
      source,
      settle,
    });
    const { lexicon } = scanFor(text);
    expect(first?.meaning.bodies).toBe(lexicon.bodies.bitsOf(['resistor-chip']));
    expect(first?.meaning.origins).toBe(lexicon.origins.all);
  });

  test('with a letter that cannot be read is every one that is met', () => {
    const ohms = (text: string): (number | string)[][] =>
      saying(chipResistorsAt(scanFor(text), 0), 'resistance').map(({ token, content }) => [
        token.assumed[0]?.as ?? '',
        content.value,
        Number(token.weight.toFixed(9)),
      ]);
    expect(chipResistorsAt(scanFor('68?'), 0)[2]?.assumed).toEqual([
      { at: 2, as: 'C', why: 'worn' },
    ]);
    const at = (use: 'usual' | 'other'): number =>
      Number(
        (mantissaLetter[use] + chipCode + worn + (use === 'usual' ? chipCodeAlone : 0)).toFixed(9),
      );
    expect(ohms('68?')).toEqual([
      ['A', 499, at('usual')],
      ['B', 4990, at('usual')],
      ['C', 49.9e3, at('usual')],
      ['D', 499e3, at('usual')],
      ['E', 4.99e6, at('usual')],
      ['F', 49.9e6, at('usual')],
      ['G', 499e6, at('other')],
      ['H', 4.99e9, at('other')],
      ['X', 49.9, at('usual')],
      ['Y', 4.99, at('usual')],
      ['Z', 0.499, at('other')],
    ]);
    expect(
      ohms('?18')
        .map(([as, value]) => [as, value])
        .slice(0, 2),
    ).toEqual([
      ['A', 510],
      ['B', 5100],
    ]);
    // With a figure that cannot be read it is every one from 60 to 69.
    expect(
      ohms('6?C')
        .map(([as]) => as)
        .join(''),
    ).toBe('0123456789');
    expect(ohms('6?C')[8]?.[2]).toBeCloseTo(CODE + chipCodeAlone + wornFigure, 9);
  });

  test('one of its characters may have been taken for another', () => {
    const found = chipResistorsAt(scanWithLookAlikes('S8C'), 0);
    expect(found.map(({ assumed }) => assumed)).toContainEqual([
      { at: 0, as: '5', why: 'look-alike' },
    ]);
    const behind = chipResistorsAt(scanWithLookAlikes('68А'), 0).filter(({ assumed }) =>
      assumed.every(({ at }) => at === 2),
    );
    expect(behind[0]?.assumed).toEqual([{ at: 2, as: 'A', why: 'look-alike' }]);
    expect(inShort(behind)).toEqual(
      expected([[3, '499 Ω', CODE + chipCodeAlone - 0.3, 'whole-word']]),
    );
    for (const { assumed } of chipResistorsAt(scanWithLookAlikes('SBB'), 0))
      expect(assumed.length).toBeLessThan(2);
  });
});

const watts = (text: string, at = 0): Short[] => inShort(powersAt(scanFor(text), at));

describe('a power', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['5W', 0, [[2, 'rated 5 W', power.usual]]],
    ['0.25 W', 0, [[6, 'rated 0.25 W', power.usual]]],
    ['250mW', 0, [[5, 'rated 0.25 W', power.usual]]],
    ['2 watts', 0, [[7, 'rated 2 W', power.usual]]],
    ['½W', 0, [[2, 'rated 0.5 W', power.usual]]],
    ['¼ W', 0, [[3, 'rated 0.25 W', power.usual]]],
    ['⅛W', 0, [[2, 'rated 0.125 W', power.usual]]],
    ['¾W', 0, [[2, 'rated 0.75 W', power.usual]]],
    ['1/4W', 0, [[4, 'rated 0.25 W', power.usual]]],
    ['1/10 W', 0, [[6, 'rated 0.1 W', power.usual]]],
    ['11/2W', 1, []],
    ['1/100W', 0, []],
    ['1/0W', 0, []],
    ['0W', 0, []],
    ['1000W', 0, [[5, 'rated 1000 W', power.usual]]],
    ['3296W', 0, []],
    ['5w', 0, [[2, 'rated 5 W', power.other]]],
    // Behind the unit letters may run on where it is one letter, as of a tolerance.
    ['5WJ', 0, [[2, 'rated 5 W', power.usual]]],
    ['5mWX', 0, []],
    ['5V', 0, []],
    ['W', 0, []],
    ['', 0, []],
  ])('%j at %d', (text, at, found) => {
    expect(watts(text, at)).toEqual(expected(found));
  });

  test('in a unit of one letter may be something else; figures that are worn are none', () => {
    expect(powersAt(scanFor('5W'), 0)[0]?.withUsualUnit).toBe(false);
    expect(powersAt(scanFor('5mW'), 0)[0]?.withUsualUnit).toBe(true);
    expect(watts('1? W')).toEqual([]);
    const [found] = powersAt(scanFor('5 m?'), 0);
    expect(found).toMatchObject({
      withUsualUnit: false,
      assumed: [{ at: 3, as: 'W', why: 'worn' }],
    });
    expect(found?.weight).toBeCloseTo(power.usual + worn, 9);
  });

  test('is of a resistor', () => {
    const scan = scanFor('5W');
    const [found] = powersAt(scan, 0);
    expect(found?.meaning).toMatchObject({
      slot: 'power',
      content: { says: 'power', watts: 5 },
      bodies: scan.lexicon.bodiesOfKind.resistor,
      types: [],
    });
  });
});
