import { describe, expect, test } from 'vitest';
import { markingOf, type LookAlikes } from '../../../../src/engine/markings/text/text.ts';
import {
  addWord,
  emptyTree,
  wordsOfTree,
  type FoundWord,
} from '../../../../src/engine/markings/lexicon/word-tree.ts';

const words = ['V', 'VDC', 'volt', 'X7R', 'ДК', 'кВ', 'K'];
const tree = emptyTree<number>();
for (const [index, word] of words.entries()) addWord(tree, word, index);
addWord(tree, 'V', 100);

const lookAlikes: LookAlikes = new Map([
  ['O', [{ as: '0', cost: -0.5 }]],
  ['0', [{ as: 'o', cost: -0.5 }]],
  ['1', [{ as: 'L', cost: -0.25 }]],
  ['К', [{ as: 'k', cost: -0.1 }]],
]);

const found = (text: string, at: number, like?: LookAlikes): FoundWord<number>[] =>
  wordsOfTree(tree, markingOf(text, like), at);

describe('words of a tree', () => {
  test.each<[text: string, at: number, items: [item: number, end: number, sameCase: boolean][]]>([
    // The shortest first, those of one spelling in their order.
    [
      'VDC',
      0,
      [
        [0, 1, true],
        [100, 1, true],
        [1, 3, true],
      ],
    ],
    [
      '16 vdc',
      3,
      [
        [0, 4, false],
        [100, 4, false],
        [1, 6, false],
      ],
    ],
    [
      'Volts',
      0,
      [
        [0, 1, true],
        [100, 1, true],
        [2, 4, false],
      ],
    ],
    ['x7r', 0, [[3, 3, false]]],
    ['X7', 0, []],
    ['', 0, []],
    ['Q', 0, []],
    ['дк', 0, [[4, 2, false]]],
  ])('%j at %d', (text, at, items) => {
    expect(found(text, at).map(({ item, end, sameCase }) => [item, end, sameCase])).toEqual(items);
    for (const { assumed, cost } of found(text, at)) expect([assumed, cost]).toEqual([[], 0]);
  });

  test.each<[text: string, item: number, end: number, sameCase: boolean, cost: number, as: string]>(
    [
      // A worn letter costs a point; what is known must be in the letters of the table.
      ['X?R', 3, 3, true, -1, '7'],
      ['x?R', 3, 3, false, -1, '7'],
      ['?7R', 3, 3, true, -1, 'X'],
      ['v?lt', 2, 4, true, -1, 'o'],
      ['?D?3', 1, 3, true, -2, 'VC'],
      // Said in the letter that the table has.
      ['v0lt', 2, 4, true, -0.5, 'o'],
      ['vO1t', 2, 4, false, -0.25, 'l'],
    ],
  )('%s is %d', (text, item, end, sameCase, cost, as) => {
    const words = found(text, 0, lookAlikes).find((each) => each.item === item);
    expect(words).toMatchObject({ end, sameCase });
    expect(words?.cost).toBeCloseTo(cost, 9);
    expect(words?.assumed.map((each) => each.as).join('')).toBe(as);
  });

  test('no more than two characters of a word are made up', () => {
    expect(found('v???34', 0).map(({ item }) => item)).toEqual([0, 100, 1]);
    expect(found('???t34', 0).map(({ item }) => item)).not.toContain(2);
  });

  test('Cyrillic letters are made up only beside others', () => {
    expect(found('?', 0).map(({ item }) => item)).toEqual([0, 100, 6]);
    expect(found('?К', 0).map(({ item }) => item)).toContain(4);
    expect(found('д? в', 0).map(({ item }) => item)).toContain(4);
    expect(found('?', 0, lookAlikes).map(({ word }) => word)).not.toContain('кВ');
  });

  test('both what is written and what it may be are found', () => {
    expect(
      found('K', 0, new Map([['K', [{ as: 'V', cost: -1 }]]])).map(({ word }) => word),
    ).toEqual(['K', 'V', 'V']);
  });
});
