import { describe, expect, test } from 'vitest';
import { temperaturesAt } from '../../../../src/engine/markings/ratings/temperature-tokens.ts';
import type { Token } from '../../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { saying, scanFor, scanWithLookAlikes, wordTokensAt } from '../scans.ts';

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
    ['104 A7G', 4, [['A7G', 7, temperature.usual, '']]],
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
    const tokens = temperaturesAt(scanWithLookAlikes(text), 4);
    expect(shorts(tokens)).toEqual(near(found));
    for (const { assumed } of tokens)
      expect(new Set(assumed.map(({ why }) => why))).toEqual(new Set(['look-alike']));
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
  const wordsAt = (text: string, at: number, hints = {}, confused = false): Short[] =>
    shorts(wordTokensAt((confused ? scanWithLookAlikes : scanFor)(text, hints), at));

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
