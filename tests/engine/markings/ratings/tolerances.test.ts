import { describe, expect, test } from 'vitest';
import { readToleranceLetter } from '../../../../src/engine/markings/index.ts';
import { spanHolds } from '../../../../src/engine/markings/ratings/tolerances.ts';
import type { Token } from '../../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import {
  expected,
  inShort,
  saying,
  scanFor,
  scanWithLookAlikes,
  wordsOf,
  type Short,
} from '../scans.ts';
import { markings } from '../tables.ts';

const {
  tolerance,
  toleranceForUnit,
  toleranceBeforeFigures,
  gap,
  otherCase,
  otherCaseOfUnit,
  completedLetter,
  worn,
} = weights;

describe('the span of capacitances that a letter is for', () => {
  const pF = 1e-12;

  test.each<[value: number, from: number | undefined, below: number | undefined, holds: boolean]>([
    [10 * pF, 10 * pF, undefined, true],
    [9.9 * pF, 10 * pF, undefined, false],
    [10 * pF, undefined, 10 * pF, false],
    [9.9 * pF, undefined, 10 * pF, true],
    [1, undefined, undefined, true],
    // What binary fractions leave beside the end is at the end.
    [10 * pF * (1 - 1e-12), 10 * pF, undefined, true],
    [10 * pF * (1 - 1e-12), undefined, 10 * pF, false],
    [50 * pF, 10 * pF, 100 * pF, true],
    [100 * pF, 10 * pF, 100 * pF, false],
  ])('%d F from %s below %s: %s', (value, from, below, holds) => {
    expect(spanHolds(value, { from, below })).toBe(holds);
  });

  test('a letter says where it is met, and by which source', () => {
    expect(readToleranceLetter(markings, 'Z')).toMatchObject([
      {
        tolerance: { minus: 0.2, plus: 0.8, unit: 'fraction' },
        use: 'usual',
        bodies: ['ceramic', 'ceramic-chip', 'film', 'paper', 'aluminium'],
        origins: [],
        source: 'kenwood-chart',
      },
      { tolerance: { minus: 0.2, plus: 1 }, use: 'rare', bodies: [], source: 'elko-marking' },
    ]);
    expect(readToleranceLetter(markings, 'И')[0]).toMatchObject({ origins: ['soviet'] });
  });
});

/** What a letter means on a capacitor where it is usual, or nothing of it is. */
const onCapacitors = (tokens: readonly Token[]): Token[] =>
  saying(tokens, 'tolerance')
    .filter(({ content }) => content.of === 'capacitance')
    .map(({ token }) => token);

const AFTER_RATING = 'after-rating whole-word';
const AFTER_VALUE = 'after-value whole-word';
const { usual, other, rare } = tolerance;

describe('a tolerance letter of a capacitor in a marking', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    // Below 10 pF the letter of per cents is rare.
    [
      '104K',
      3,
      [
        [4, '±10 %', usual, 'touching-value'],
        [4, '±10 %', rare, 'touching-value'],
      ],
    ],
    [
      '104k',
      3,
      [
        [4, '±10 %', usual + otherCase, 'touching-value'],
        [4, '±10 %', rare + otherCase, 'touching-value'],
      ],
    ],
    // Behind a gap: one that is met often behind volts as well, any other behind the value.
    [
      '104 K',
      4,
      [
        [5, '±10 %', usual + gap, AFTER_RATING],
        [5, '±10 %', rare + gap, AFTER_VALUE],
      ],
    ],
    [
      '104 (K)',
      5,
      [
        [6, '±10 %', usual + gap, AFTER_RATING],
        [6, '±10 %', rare + gap, AFTER_VALUE],
      ],
    ],
    [
      '104 G',
      4,
      [
        [5, '±2 pF', usual + gap, AFTER_VALUE],
        [5, '±2 %', usual + gap, AFTER_VALUE],
      ],
    ],
    ['104S', 3, [[4, '−20/+50 %', usual, 'touching-value']]],
    [
      '104GMV',
      3,
      [
        [4, '±2 pF', usual, 'touching-value'],
        [4, '±2 %', usual, 'touching-value'],
        [6, '0/+100 %', usual, 'touching-value'],
      ],
    ],
    // Rather the unit of the value: too few figures for a code, or round ones, or a letter behind it.
    [
      '47P',
      2,
      [
        [3, '0/+100 %', usual + toleranceForUnit, 'touching-value'],
        [3, '0/+80 %', other + toleranceForUnit, 'touching-value'],
        [3, '−20/+80 %', other + toleranceForUnit, 'touching-value'],
      ],
    ],
    [
      '470P',
      3,
      [
        [4, '0/+100 %', usual + toleranceForUnit, 'touching-value'],
        [4, '0/+80 %', other + toleranceForUnit, 'touching-value'],
        [4, '−20/+80 %', other + toleranceForUnit, 'touching-value'],
      ],
    ],
    [
      '471P',
      3,
      [
        [4, '0/+100 %', usual, 'touching-value'],
        [4, '0/+80 %', other, 'touching-value'],
        [4, '−20/+80 %', other, 'touching-value'],
      ],
    ],
    [
      '471PK',
      3,
      [
        [4, '0/+100 %', usual + toleranceForUnit, 'touching-value'],
        [4, '0/+80 %', other + toleranceForUnit, 'touching-value'],
        [4, '−20/+80 %', other + toleranceForUnit, 'touching-value'],
      ],
    ],
    // A code that begins with a nought, or figures behind their point, have their unit already.
    [
      '0620P',
      4,
      [
        [5, '0/+100 %', usual, 'touching-value'],
        [5, '0/+80 %', other, 'touching-value'],
        [5, '−20/+80 %', other, 'touching-value'],
      ],
    ],
    [
      '1.0620P',
      6,
      [
        [7, '0/+100 %', usual + toleranceForUnit, 'touching-value'],
        [7, '0/+80 %', other + toleranceForUnit, 'touching-value'],
        [7, '−20/+80 %', other + toleranceForUnit, 'touching-value'],
      ],
    ],
    [
      'm12P',
      3,
      [
        [4, '0/+100 %', usual, 'touching-value'],
        [4, '0/+80 %', other, 'touching-value'],
        [4, '−20/+80 %', other, 'touching-value'],
      ],
    ],
    [
      'K12P',
      3,
      [
        [4, '0/+100 %', usual + toleranceForUnit, 'touching-value'],
        [4, '0/+80 %', other + toleranceForUnit, 'touching-value'],
        [4, '−20/+80 %', other + toleranceForUnit, 'touching-value'],
      ],
    ],
    // R behind figures is the unit of a resistance, and tells that it is one.
    [
      '47R',
      2,
      [
        [3, '−20/+30 %', rare + toleranceForUnit, 'touching-value'],
        [3, '0/+100 %', rare + toleranceForUnit, 'touching-value'],
      ],
    ],
    // Between figures; a rare tolerance yields to a usual unit only.
    [
      '56R2Z',
      2,
      [
        [3, '−20/+30 %', rare + toleranceForUnit + toleranceBeforeFigures, 'touching-value'],
        [3, '0/+100 %', rare + toleranceForUnit + toleranceBeforeFigures, 'touching-value'],
      ],
    ],
    // A seldom letter with figures at once behind it is rather one code with them.
    [
      '101N750',
      3,
      [
        [4, '±30 %', usual + toleranceBeforeFigures, 'touching-value'],
        [4, '−20/+40 %', other + toleranceBeforeFigures, 'touching-value'],
      ],
    ],
    [
      '100N750',
      3,
      [
        [4, '±30 %', usual + toleranceForUnit + toleranceBeforeFigures, 'touching-value'],
        [4, '−20/+40 %', other + toleranceForUnit + toleranceBeforeFigures, 'touching-value'],
      ],
    ],
    [
      '101K5',
      3,
      [
        [4, '±10 %', usual, 'touching-value'],
        [4, '±10 %', rare + toleranceBeforeFigures, 'touching-value'],
      ],
    ],
    // A small letter that is a unit wherever it stands; Cyrillic ones as they are printed.
    [
      '471p',
      3,
      [
        [4, '0/+100 %', usual + otherCaseOfUnit, 'touching-value'],
        [4, '0/+80 %', other + otherCaseOfUnit, 'touching-value'],
        [4, '−20/+80 %', other + otherCaseOfUnit, 'touching-value'],
      ],
    ],
    ['3Н3С', 3, [[4, '±10 %', usual, 'touching-value']]],
    ['3Н3с', 3, []],
    ['104%', 3, []],
  ])('%s at %d', (text, at, found) => {
    expect(inShort(onCapacitors(wordsOf(scanFor(text), at, 'tolerance')))).toEqual(expected(found));
  });

  test.each<[text: string, at: number, as: string, weight: number]>([
    ['104?', 3, 'K', usual + worn + completedLetter.often],
    ['104?', 3, 'G', usual + worn + completedLetter.sometimes],
    ['104?', 3, 'N', usual + worn + completedLetter.seldom],
    ['104 ?', 4, 'J', usual + worn + completedLetter.often + gap],
  ])('%s at %d as %s', (text, at, as, weight) => {
    const found = onCapacitors(wordsOf(scanFor(text), at, 'tolerance')).filter(({ assumed }) =>
      assumed.some((each) => each.as === as),
    );
    expect(Math.max(...found.map((token) => token.weight))).toBeCloseTo(weight, 9);
  });

  test('a figure behind a gap is none that was misread', () => {
    expect(wordsOf(scanWithLookAlikes('104 5'), 4, 'tolerance')).toEqual([]);
    expect(wordsOf(scanWithLookAlikes('1045'), 3, 'tolerance').length).toBeGreaterThan(0);
  });

  test('says for which capacitances it is, and what other tables have it for', () => {
    const scan = scanFor('104H');
    const [first, second] = saying(wordsOf(scan, 3, 'tolerance'), 'tolerance');
    expect(first?.content).toEqual({
      says: 'tolerance',
      of: 'capacitance',
      tolerance: { minus: 0.03, plus: 0.03, unit: 'fraction' },
      fromF: 1e-11,
      belowF: undefined,
      elsewhere: [{ fromF: 1e-11, belowF: undefined, means: '±2.5 %' }],
    });
    expect(second?.content.elsewhere).toEqual([{ fromF: 1e-11, belowF: undefined, means: '±3 %' }]);
    expect(first?.token.meaning).toMatchObject({
      slot: 'tolerance',
      types: [],
      bodies: scan.lexicon.bodiesOfKind.capacitor,
      source: 'wikibooks-caps',
    });
    const [small] = saying(wordsOf(scanFor('4p7C'), 3, 'tolerance'), 'tolerance');
    expect(small?.content).toMatchObject({
      belowF: 1e-11,
      tolerance: { unit: 'F' },
      elsewhere: [{ means: '±0.25 %' }],
    });
  });
});

describe('a tolerance letter of a resistor in a marking', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['473J', 3, [[4, '±5 %', usual, 'touching-value']]],
    [
      '473H',
      3,
      [
        [4, '±3 %', other, 'touching-value'],
        [4, '±0.02 %', rare, 'touching-value'],
      ],
    ],
    ['4К7И', 3, [[4, '±5 %', usual, 'touching-value']]],
  ])('%s at %d', (text, at, found) => {
    const scan = scanFor(text);
    const tokens = saying(wordsOf(scan, at, 'tolerance'), 'tolerance').filter(
      ({ content }) => content.of === 'resistance',
    );
    expect(inShort(tokens.map(({ token }) => token))).toEqual(expected(found));
    for (const { token, content } of tokens) {
      expect(content.tolerance.unit).toBe('fraction');
      expect(token.meaning.bodies).toBe(scan.lexicon.bodiesOfKind.resistor);
    }
  });
});
