import { describe, expect, test } from 'vitest';
import { common } from '../../../src/engine/common.ts';
import { letterForms } from '../../../src/engine/printed/letter-forms.ts';
import { noughts } from '../../../src/engine/printed/noughts.ts';
import { inUnit, numberStyles, plainFigures, within } from '../../../src/engine/printed/numbers.ts';
import { isTaken, takenWords } from '../../../src/engine/printed/taken-words.ts';
import { markings } from '../markings/tables.ts';

describe('a number in plain figures', () => {
  // Four figures at most that tell something, and no exponent.
  test.each<[value: number, text: string | undefined]>([
    [47, '47'],
    [4.7, '4.7'],
    [0.047, '0.047'],
    [4700, '4700'],
    [47000, '47000'],
    [1234, '1234'],
    [0.1 + 0.2, '0.3'],
    [1.234, '1.234'],
    [1.2345, undefined],
    [12345, undefined],
    [123400, '123400'],
    [0.00001234, '0.00001234'],
    [0.0000001, undefined],
    [0.00000012, undefined],
    [0.0001, '0.0001'],
    [1e21, undefined],
    [0, undefined],
    [-5, undefined],
    [NaN, undefined],
    [Infinity, undefined],
  ])('%d', (value, text) => {
    expect(plainFigures(value)).toBe(text);
  });

  test.each<[value: number, styles: Parameters<typeof numberStyles>[1], texts: string[]]>([
    [0.47, ['plain', 'bare-point', 'comma', 'grouped'], ['0.47', '.47', '0,47']],
    [4.7, ['plain', 'bare-point', 'comma', 'grouped'], ['4.7', '4,7']],
    [47, ['plain', 'bare-point', 'comma', 'grouped'], ['47']],
    // Thousands are set apart from five figures on.
    [4700, ['grouped', 'plain'], ['4700']],
    [47000, ['grouped', 'plain'], ['47 000', '47000']],
    [1200000, ['grouped'], ['1 200 000']],
    [1.2345, ['plain'], []],
    [47, [], []],
  ])('%d as %j', (value, styles, texts) => {
    expect(numberStyles(value, styles)).toEqual(texts);
  });

  test('a quotient and a span are without the noise of binary fractions', () => {
    expect(inUnit(4.7e-8, 1e-9)).toBe(47);
    expect(inUnit(3e-12, 1e-12)).toBe(3);
    const held: [value: number, holds: boolean][] = [
      [1, true],
      [2, true],
      [1 - 1e-12, true],
      [2 + 1e-12, true],
      [1 - 1e-6, false],
      [2 + 1e-6, false],
    ];
    for (const [value, holds] of held) expect(within(value, 1, 2), String(value)).toBe(holds);
  });

  test.each([
    [1, ''],
    [10, ' and 1 nought'],
    [100, ' and 2 noughts'],
    [1e7, ' and 7 noughts'],
    [0.1, ' × 0.1'],
    [0.01, ' × 0.01'],
  ])('times %d is said as %j', (factor, said) => {
    expect(noughts(factor)).toBe(said);
  });
});

describe('what two rows have in common', () => {
  test.each<[a: string[], b: string[], both: string[] | undefined]>([
    [[], [], []],
    [['film'], [], ['film']],
    [[], ['film'], ['film']],
    [
      ['film', 'mica', 'paper'],
      ['paper', 'film'],
      ['film', 'paper'],
    ],
    [['film'], ['mica'], undefined],
  ])('%j and %j', (a, b, both) => {
    expect(common(a, b)).toEqual(both);
  });
});

describe('a number with a letter for its point', () => {
  const everywhere = ['start', 'middle', 'end'];

  test.each<
    [number: number, places: string[], origins: string[], forms: [string, string, boolean?][]]
  >([
    // Behind the figures, in the place of the point, and filled up to the fixed lengths of the codes.
    [
      4.7,
      everywhere,
      ['international'],
      [
        ['4.7n', 'other', true],
        ['4n7', 'usual'],
        ['4n70', 'other'],
      ],
    ],
    [
      47,
      everywhere,
      ['international'],
      [
        ['47n', 'usual', true],
        ['47n0', 'other'],
      ],
    ],
    [
      1,
      everywhere,
      ['international'],
      [
        ['1n', 'usual', true],
        ['1n0', 'usual'],
        ['1n00', 'other'],
      ],
    ],
    [
      0.47,
      everywhere,
      ['international'],
      [
        ['0.47n', 'other', true],
        ['n47', 'usual'],
        ['n470', 'other'],
      ],
    ],
    [
      0.5,
      everywhere,
      ['international'],
      [
        ['0.5n', 'other', true],
        ['n5', 'usual'],
        ['n50', 'other'],
        ['n500', 'other'],
      ],
    ],
    // Noughts behind a letter in front are left to the next smaller unit.
    [
      0.047,
      everywhere,
      ['international'],
      [
        ['0.047n', 'other', true],
        ['n047', 'rare'],
      ],
    ],
    [100, everywhere, ['international'], [['100n', 'usual', true]]],
    [
      4.75,
      everywhere,
      ['international'],
      [
        ['4.75n', 'other', true],
        ['4n75', 'usual'],
      ],
    ],
    // Elsewhere as short as can be.
    [
      4.7,
      everywhere,
      [],
      [
        ['4.7n', 'other', true],
        ['4n7', 'usual'],
      ],
    ],
    [47, everywhere, ['soviet'], [['47n', 'usual', true]]],
    [
      1,
      everywhere,
      [],
      [
        ['1n', 'usual', true],
        ['1n0', 'usual'],
      ],
    ],
    // Three figures on either side at most, and four together.
    [
      123.4,
      everywhere,
      [],
      [
        ['123.4n', 'other', true],
        ['123n4', 'usual'],
      ],
    ],
    [1234, everywhere, [], [['1234n', 'usual', true]]],
    [
      1.234,
      everywhere,
      [],
      [
        ['1.234n', 'other', true],
        ['1n234', 'usual'],
      ],
    ],
    [0.0001, everywhere, [], [['0.0001n', 'other', true]]],
    [1000.5, everywhere, [], []],
    [1.2345, everywhere, [], []],
    // Only in the places that the letter has.
    [0.47, ['middle', 'end'], [], [['0.47n', 'other', true]]],
    [4.7, ['start', 'end'], [], [['4.7n', 'other', true]]],
    [4.7, ['middle'], [], [['4n7', 'usual']]],
    [4.7, ['start'], [], []],
    [0.47, ['start'], [], [['n47', 'usual']]],
  ])('%d in the places %j of %j', (number, places, origins, forms) => {
    expect(letterForms({ letter: 'n', places, origins }, number)).toEqual(
      forms.map(([text, use, atEnd = false]) => ({ text, use, atEnd })),
    );
  });
});

describe('what must not be spelt', () => {
  const taken = takenWords(markings);

  test.each<[before: string, piece: string, is: boolean]>([
    // Volts, farads and kilovolts behind figures, however they are written.
    ['434', 'V', true],
    ['434', 'v', true],
    ['47n', 'F', true],
    ['47N', 'F', true],
    ['4.7k', 'V', true],
    ['473', 'K', false],
    ['473', '2A', false],
    ['47n', 'K', false],
    // The X2 of 473X2 is no tolerance and two volts; codes are those that are printed so.
    ['473X', '2', true],
    ['473x', '2', false],
    ['473M', 'KT', true],
    ['473MK', 'T', true],
    // A unit of two letters is put there as one.
    ['4.7', 'kV', false],
    ['473C', 'H', true],
    ['473c', 'h', false],
    ['473X', '7R', true],
    // The highest temperature of a part.
    ['105', 'C', true],
    ['1105', 'C', false],
    ['2A105', 'C', false],
    ['104', 'C', false],
    // A single letter for a temperature, and a word seldom met, are no words.
    ['473', 'B', false],
    ['473M', 'KS', true],
    ['473 ', 'V', true],
    ['', 'V', true],
    ['', '+', false],
  ])('%j and %j: %s', (before, piece, is) => {
    expect(isTaken(taken, before, piece)).toBe(is);
  });

  test('units of any use but the usual are free', () => {
    expect([taken.units.has('µf'), taken.units.has('v'), taken.units.has('f')]).toEqual([
      true,
      true,
      false,
    ]);
    // Words that stand before volts are none.
    expect(taken.units.has('prüfspg')).toBe(false);
    expect([taken.codes.has('B'), taken.codes.has('JB'), taken.codes.has('X1/Y2')]).toEqual([
      false,
      true,
      true,
    ]);
  });
});
