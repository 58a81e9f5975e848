import { describe, expect, test } from 'vitest';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { writtenTolerancesAt } from '../../../../src/engine/markings/ratings/written-tolerances.ts';
import { expected, inShort, saying, scanFor, type Short } from '../scans.ts';

const { writtenTolerance: W, completedLetter } = weights;

const written = (text: string, at = 0): Short[] => inShort(writtenTolerancesAt(scanFor(text), at));

describe('a tolerance that is written out', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['±10%', 0, [[4, '±10 %', W]]],
    ['± 10 %', 0, [[6, '±10 %', W]]],
    ['+/-10%', 0, [[6, '±10 %', W]]],
    ['+-10 %', 0, [[6, '±10 %', W]]],
    ['+ / − 10%', 0, [[9, '±10 %', W]]],
    ['±2,5%', 0, [[5, '±2.5 %', W]]],
    ['±0.5 pF', 0, [[7, '±0.5 pF', W]]],
    ['±0.25pF', 0, [[7, '±0.25 pF', W]]],
    ['10%', 0, [[3, '±10 %', W]]],
    ['4n7 10 %', 4, [[8, '±10 %', W]]],
    ['-20+80%', 0, [[7, '−20/+80 %', W]]],
    ['+80-20%', 0, [[7, '−20/+80 %', W]]],
    ['−20% / +80%', 0, [[11, '−20/+80 %', W]]],
    ['-20/+80%', 0, [[8, '−20/+80 %', W]]],
    ['-0+100%', 0, [[7, '0/+100 %', W]]],
    // Two of one sign are none, nor is a bare number of picofarads.
    ['-20-80%', 0, []],
    ['+10+20%', 0, []],
    ['10 pF', 0, []],
    ['±10', 0, []],
    ['±10 nF', 0, []],
    // No part has less than nothing of its value.
    ['100%', 0, [[4, '±100 %', W]]],
    ['101%', 0, []],
    ['±101%', 0, []],
    ['1000%', 0, []],
    ['1000%', 1, []],
    ['K%', 0, []],
    ['', 0, []],
  ])('%j at %d', (text, at, found) => {
    expect(written(text, at)).toEqual(expected(found));
  });

  test.each<[text: string, found: Short[]]>([
    // Those that a letter stands for, by how often it is met.
    [
      '±1?%',
      [
        [4, '±10 %', W + completedLetter.often],
        [4, '±15 %', W + completedLetter.seldom],
      ],
    ],
    [
      '±?%',
      [
        [3, '±1 %', W + completedLetter.sometimes],
        [3, '±2 %', W + completedLetter.sometimes],
        [3, '±3 %', W + completedLetter.seldom],
        [3, '±5 %', W + completedLetter.often],
      ],
    ],
    ['-2?+80%', [[7, '−20/+80 %', W + completedLetter.often]]],
    [
      '-?0+80%',
      [
        [7, '0/+80 %', W + completedLetter.seldom],
        [7, '−20/+80 %', W + completedLetter.often],
      ],
    ],
    [
      '±0.?pF',
      [
        [6, '±0.1 pF', W + completedLetter.sometimes],
        [6, '±0.5 pF', W + completedLetter.often],
      ],
    ],
    // What cannot be read behind it is no figure of it.
    ['±10% ?', [[4, '±10 %', W]]],
    ['±4?%', []],
  ])('%j with a worn figure', (text, found) => {
    expect(written(text)).toEqual(expected(found));
  });

  test('says so of every part', () => {
    const scan = scanFor('±?%');
    const [found] = saying(writtenTolerancesAt(scan, 0), 'tolerance');
    expect(found?.content).toEqual({
      says: 'tolerance',
      tolerance: { minus: 0.01, plus: 0.01, unit: 'fraction' },
    });
    expect(found?.token).toMatchObject({
      at: 0,
      needs: [],
      assumed: [{ at: 1, as: '1', why: 'worn' }],
    });
    expect(found?.token.meaning).toMatchObject({
      slot: 'tolerance',
      types: [],
      bodies: scan.lexicon.bodies.all,
      origins: scan.lexicon.origins.all,
      source: 'identity',
    });
    const [absolute] = saying(writtenTolerancesAt(scanFor('±2 pF'), 0), 'tolerance');
    expect(absolute?.content.tolerance).toEqual({ minus: 2e-12, plus: 2e-12, unit: 'F' });
  });
});
