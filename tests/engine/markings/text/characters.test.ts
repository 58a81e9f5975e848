import { describe, expect, test } from 'vitest';
import {
  cutsRun,
  endOfWord,
  foldCharacter,
  isAsWritten,
  isBlank,
  isCodeAt,
  isCyrillic,
  isFigure,
  isLetter,
  isSeparator,
  isWornSign,
  madeUp,
  markingOf,
  othersAt,
  skipBlanks,
  wordBegins,
  wordEnds,
  type LookAlikes,
  type Marking,
} from '../../../../src/engine/markings/text/text.ts';

describe('what a character is', () => {
  const kinds: [name: string, is: (character: string) => boolean, yes: string, no: string][] = [
    // White space of any width, and nothing else; no character is none.
    ['a blank', isBlank, ' \t\n\u00a0\u2009\u202f\u3000', '!~a0.µ–…Ω'],
    ['a figure', isFigure, '0123456789', '/:a٣½ '],
    ['a letter', isLetter, 'azAZbYµΩжЖßé', '@[`{09_~ \u00a0½°→'],
    ['a separator', isSeparator, ',;:/|()[]{}"\'’`*·•.-–— \n\u00a0', '0a9µ+x×=~±%…'],
    ['a sign for what cannot be read', isWornSign, '?_#▯\uFFFD…', '!-* .a0'],
    ['Cyrillic', isCyrillic, 'жЖКПпё', 'KkΩµ5\u02af→'],
  ];

  test.each(kinds)('%s', (_, is, yes, no) => {
    expect(yes.split('').filter((character) => !is(character))).toEqual([]);
    expect(no.split('').filter(is)).toEqual([]);
    expect(is('')).toBe(false);
  });

  test.each([
    ['K', 'k'],
    ['k', 'k'],
    ['Ж', 'ж'],
    ['5', '5'],
    // The small letter of this one is two characters long.
    ['İ', 'İ'],
  ])('%s is looked up as %s', (character, small) => {
    expect(foldCharacter(character)).toBe(small);
  });
});

const lookAlikes: LookAlikes = new Map([
  ['O', [{ as: '0', cost: -0.5 }]],
  ['8', [{ as: '3', cost: -1 }]],
]);

describe('a marking before it is read', () => {
  test.each<[text: string, like: LookAlikes, marking: Partial<Marking>]>([
    ['47n', new Map(), { plain: true, cyrillic: false, mostMadeUp: 2, mostLookAlike: 3 }],
    ['47n', lookAlikes, { plain: false, worn: [false, false, false], mostLookAlike: 3 }],
    ['15п', new Map(), { plain: true, cyrillic: true }],
    ['4?K', new Map(), { plain: false, worn: [false, true, false], mostLookAlike: 1 }],
    // Two figures of one number are made up where no more than two characters are missing.
    ['4?K2?', new Map(), { mostMadeUp: 2 }],
    ['4?K2??', new Map(), { mostMadeUp: 1, worn: [false, true, false, false, true, true] }],
    // More missing than can be read, or more than four: nothing is made up.
    ['4??', new Map(), { worn: [false, false, false], plain: false }],
    ['4?', new Map(), { worn: [false, true] }],
    ['?', new Map(), { worn: [true] }],
    ['??', new Map(), { worn: [false, false] }],
    ['?.K?', new Map(), { worn: [false, false, false, false] }],
    ['ab?4?c?5?', new Map(), { worn: [false, false, true, false, true, false, true, false, true] }],
    ['abc????', new Map(), { worn: Array.from({ length: 7 }, () => false) }],
    ['abcde?????', new Map(), { worn: Array.from({ length: 10 }, () => false) }],
    // A stretch of unknown length is no one character.
    ['47…', new Map(), { worn: [false, false, false], plain: true }],
  ])('%s', (text, like, marking) => {
    expect(markingOf(text, like)).toMatchObject({ text, ...marking });
  });

  test('is Cyrillic where that is said', () => {
    expect(markingOf('47', new Map(), true).cyrillic).toBe(true);
    expect(markingOf('15п', new Map(), false).cyrillic).toBe(false);
  });

  test('counts what was made up, not what was taken for something else', () => {
    expect(
      madeUp([
        { at: 0, as: '1', why: 'worn' },
        { at: 1, as: '0', why: 'look-alike' },
        { at: 2, as: 'K', why: 'worn' },
      ]),
    ).toBe(2);
    expect(madeUp([])).toBe(0);
  });

  test('says of each character whether it may be another', () => {
    const marking = markingOf('1O?8', lookAlikes);
    expect([0, 1, 2, 3, 4].map((at) => isAsWritten(marking, at))).toEqual([
      true,
      false,
      false,
      false,
      true,
    ]);
    expect(othersAt(marking, 1)).toEqual([{ as: '0', cost: -0.5 }]);
    expect(othersAt(marking, 0)).toEqual([]);
    expect(isAsWritten(markingOf('1O'), 1)).toBe(true);
  });
});

/** The indices of a text at which something holds. */
const where = (text: string, holds: (marking: Marking, at: number) => boolean): number[] => {
  const marking = markingOf(text);
  return Array.from({ length: text.length + 1 }, (_, at) => at).filter((at) => holds(marking, at));
};

describe('words', () => {
  // Where words begin and where they may end; an index is before its character.
  test.each<[text: string, begins: number[], ends: number[]]>([
    ['47 nF', [0, 3], [2, 5]],
    ['a-b', [0, 2], [1, 3]],
    // The point of an abbreviation is within its word, that of a number is not.
    ['V.DC', [0], [4]],
    ['V.5', [0, 2], [1, 3]],
    ['5.V', [0, 2], [1, 3]],
    // Signs between figures set sections apart; a word does not end before them.
    ['6+8', [0, 2], [3]],
    ['2x5', [0, 2], [3]],
    ['2×5', [0, 2], [3]],
    ['a+8', [0], [3]],
    ['6+a', [0], [3]],
    ['1 a+8', [0, 2], [1, 5]],
    ['1 6+a', [0, 2], [1, 5]],
    ['6X8', [0], [3]],
    ['6+', [0], [2]],
    // Characters of unknown number part words too; a single one does not.
    ['a…b', [0, 2], [1, 3]],
    ['a?b', [0], [3]],
    ['', [0], [0]],
  ])('%j', (text, begins, ends) => {
    expect(where(text, wordBegins)).toEqual(begins);
    expect(where(text, wordEnds)).toEqual(ends);
  });

  test.each<[text: string, at: number, end: number]>([
    ['47nF 63V', 0, 4],
    ['47nF 63V', 2, 4],
    ['47nF 63V', 5, 8],
    ['47nF 63V', 4, 4],
    ['16+8 V', 0, 3],
    ['16+a V', 0, 4],
    ['V.D.C. 5', 0, 5],
    ['', 0, 0],
  ])('%j has from %d on a word to %d', (text, at, end) => {
    expect(endOfWord(markingOf(text), at)).toBe(end);
  });

  test.each<[text: string, cut: number[]]>([
    ['12ab', [1, 3]],
    ['1a2', []],
    ['1-2', []],
    ['жK', [1]],
    ['a.b', []],
  ])('%j has runs that are cut at %j', (text, cut) => {
    expect(where(text, cutsRun)).toEqual(cut);
  });

  test.each([
    ['a \u00a0b', 1, 3],
    ['a b', 0, 0],
    ['a  ', 1, 3],
    ['', 0, 0],
  ])('%j: behind the blanks from %d on is %d', (text, at, end) => {
    expect(skipBlanks(markingOf(text), at)).toBe(end);
  });

  test.each<[text: string, codes: number[]]>([
    ['104K', [0]],
    ['K104', [1]],
    // Four figures are no code of three, nor are those that begin with a nought.
    ['1451', [1]],
    ['1 045', []],
    ['10K', []],
  ])('%j has codes at %j', (text, codes) => {
    expect(where(text, isCodeAt)).toEqual(codes);
  });
});
