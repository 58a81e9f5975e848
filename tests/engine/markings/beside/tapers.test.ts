import { describe, expect, test } from 'vitest';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { expected, inShort, saying, scanFor, wordsOf, type Short } from '../scans.ts';

const { taper, taperBesideCode, otherCase } = weights;

const LINEAR = 'linear taper: 45 to 55 % of the whole at half travel';
const LOG = 'logarithmic taper: 10 to 30 % of the whole at half travel';

describe('a taper', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    [
      'B50K',
      0,
      [
        [1, LINEAR, taper.usual, 'touching-before-value'],
        [1, LOG, taper.other, 'touching-before-value'],
      ],
    ],
    [
      '50KB',
      3,
      [
        [4, LINEAR, taper.usual, 'touching-value resistor'],
        [4, LOG, taper.other, 'touching-value resistor'],
      ],
    ],
    [
      '50K B',
      4,
      [
        [5, LINEAR, taper.usual, 'after-value resistor'],
        [5, LOG, taper.other, 'after-value resistor'],
      ],
    ],
    [
      'b50k',
      0,
      [
        [1, LINEAR, taper.usual + otherCase, 'touching-before-value'],
        [1, LOG, taper.other + otherCase, 'touching-before-value'],
      ],
    ],
    // Behind figures, or before a code where the letter is seldom one: rather something else.
    [
      '503B',
      3,
      [
        [4, LINEAR, taper.usual + taperBesideCode, 'touching-value resistor'],
        [4, LOG, taper.other + taperBesideCode, 'touching-value resistor'],
      ],
    ],
    [
      'W503',
      0,
      [
        [
          1,
          'S-shaped taper: 45 to 55 % of the whole at half travel',
          taper.other + taperBesideCode,
          'touching-before-value',
        ],
      ],
    ],
    [
      'W503K',
      0,
      [
        [
          1,
          'S-shaped taper: 45 to 55 % of the whole at half travel',
          taper.other,
          'touching-before-value',
        ],
      ],
    ],
    [
      'B503',
      0,
      [
        [1, LINEAR, taper.usual, 'touching-before-value'],
        [1, LOG, taper.other, 'touching-before-value'],
      ],
    ],
    ['LIN 10K', 0, [[3, LINEAR, taper.usual]]],
    ['10K LOG', 4, [[7, LOG, taper.usual]]],
    ['10KLIN', 3, [[6, LINEAR, taper.usual, 'touching-value resistor']]],
    ['LINX', 0, []],
    ['50KBX', 3, []],
    ['50KB1', 3, []],
    ['50KB?', 3, []],
    ['50K?', 3, []],
  ])('%s at %d', (text, at, found) => {
    expect(inShort(wordsOf(scanFor(text), at, 'taper'))).toEqual(expected(found));
  });

  test('may stand before a figure that cannot be read', () => {
    expect(inShort(wordsOf(scanFor('B?0K'), 0, 'taper'))[0]).toEqual([
      1,
      LINEAR,
      taper.usual,
      'touching-before-value',
    ]);
  });

  test('says its law, and what settles a letter', () => {
    const scan = scanFor('LIN 10K');
    const [found] = saying(wordsOf(scan, 0, 'taper'), 'taper');
    expect(found?.content).toEqual({
      says: 'taper',
      taper: 'linear',
      settle: '',
    });
    expect(found?.token.meaning.bodies).toBe(scan.lexicon.bodies.bitsOf(['trimmer']));
    expect(found?.token.meaning.types).toEqual([]);
    const [letter] = saying(wordsOf(scanFor('A50K'), 0, 'taper'), 'taper');
    expect(letter?.content.settle).toContain('half its travel');
  });
});
