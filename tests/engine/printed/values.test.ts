import { describe, expect, test } from 'vitest';
import type { PartToPrint } from '../../../src/engine/printed/index.ts';
import { valuesPrinted } from '../../../src/engine/printed/values.ts';
import type { ValuePiece } from '../../../src/engine/printed/way.ts';
import { markings } from '../markings/tables.ts';
import { printed, within, type Short } from './value-pieces.ts';
import { ALL_BUT_BRITISH } from './origins.ts';

const pF = 1e-12;
const nF = 1e-9;
const uF = 1e-6;

const SMALL = 'ceramic,ceramic-chip,mica,glass';
const PLAIN = 'ceramic,mica,glass,film';
const LARGE = 'aluminium,tantalum';
const FILM = 'film,paper,aluminium,tantalum';
const DECIMAL = 'film,paper,ceramic,mica,tantalum,aluminium';

describe('a capacitance in figures alone', () => {
  test.each<[farads: number, figures: Short[]]>([
    // Two figures and a number of noughts.
    [47 * nF, [['473', 'usual', '47 and 3 noughts, in pF']]],
    [47 * pF, [['470', 'usual', '47, in pF']]],
    [100 * pF, [['101', 'usual', '10 and 1 nought, in pF']]],
    // One figure takes a nought in front; 9 and 8 stand for a tenth and a hundredth.
    [
      1 * pF,
      [
        ['010', 'other', '1, in pF'],
        ['109', 'other', '10 × 0.1, in pF', SMALL],
      ],
    ],
    [4.7 * pF, [['479', 'other', '47 × 0.1, in pF', SMALL]]],
    [0.47 * pF, [['478', 'other', '47 × 0.01, in pF', SMALL]]],
    // In picofarads by seven noughts on chips and beads, in microfarads on cans.
    [
      100 * uF,
      [
        ['107', 'other', '10 and 7 noughts, in pF', 'ceramic-chip,tantalum,aluminium'],
        ['101', 'rare', '10 and 1 nought, in µF', 'aluminium'],
      ],
    ],
    [2.5 * pF, [['259', 'other', '25 × 0.1, in pF', SMALL]]],
  ])('%d F by three', (farads, figures) => {
    expect(printed({ capacitance: farads }, ['figures'])).toEqual(figures);
  });

  test.each<[farads: number, four: Short[], plain: Short[]]>([
    [
      47 * nF,
      [['4702', 'other', '470 and 2 noughts, in pF']],
      [['47000', 'usual', 'pF as it stands', 'ceramic,mica,glass,film,paper']],
    ],
    [
      100 * pF,
      [['1000', 'other', '100, in pF']],
      [
        ['100', 'other', 'pF as it stands', PLAIN],
        ['100', 'other', 'pF as it stands', 'ceramic'],
      ],
    ],
    [
      47 * pF,
      [
        ['0470', 'other', '47, in pF'],
        ['4709', 'other', '470 × 0.1, in pF', SMALL],
      ],
      [['47', 'usual', 'pF as it stands', 'ceramic,ceramic-chip,mica,glass,film']],
    ],
    [
      5 * pF,
      [['5008', 'other', '500 × 0.01, in pF', SMALL]],
      [['5', 'rare', 'pF as it stands', SMALL]],
    ],
  ])('%d F by four, and in full', (farads, four, plain) => {
    expect(printed({ capacitance: farads }, ['four-figures'])).toEqual(four);
    expect(printed({ capacitance: farads }, ['plain'])).toEqual(plain);
  });

  test('in microfarads in full is of polar parts and large films', () => {
    expect(printed({ capacitance: 47 * uF }, ['four-figures'])).toEqual([
      ['4705', 'other', '470 and 5 noughts, in pF'],
    ]);
    expect(printed({ capacitance: 47 * uF }, ['plain'])).toContainEqual([
      '47',
      'rare',
      'µF as it stands',
      'aluminium,tantalum,paper,film',
    ]);
    expect(printed({ capacitance: 470 * uF }, ['plain'])).toContainEqual([
      '470',
      'other',
      'µF as it stands',
      LARGE,
    ]);
    expect(printed({ capacitance: 470 * uF }, ['four-figures'])).toEqual([]);
  });

  test.each<[farads: number, decimal: Short[]]>([
    [
      22 * nF,
      [
        ['.022', 'usual', 'µF as it stands', DECIMAL],
        ['0.022', 'usual', 'µF as it stands', DECIMAL],
        ['0,022', 'other', 'µF as it stands', DECIMAL],
      ],
    ],
    [
      2.2 * uF,
      [
        ['2.2', 'other', 'µF as it stands', FILM],
        ['2,2', 'other', 'µF as it stands', FILM],
      ],
    ],
    [
      6.8 * pF,
      [
        ['6.8', 'usual', 'pF as it stands', SMALL],
        ['6,8', 'other', 'pF as it stands', SMALL],
      ],
    ],
    [10 * uF, []],
  ])('%d F as a decimal', (farads, decimal) => {
    expect(printed({ capacitance: farads }, ['decimal'])).toEqual(decimal);
  });

  test('is rare on parts of a lower voltage than such marks are met on', () => {
    const at = (ratedVoltage: number): Short[] =>
      printed({ capacitance: 47 * pF, ratedVoltage }, ['figures']);
    expect(at(50)).toEqual([['470', 'usual', '47, in pF']]);
    expect(at(49)).toEqual([['470', 'rare', '47, in pF']]);
  });

  test('of a value outside the usual series has four figures, or three that are usual', () => {
    const of = (farads: number, ...writings: ValuePiece['writing'][]): Short[] =>
      printed({ capacitance: farads }, writings, false);
    expect(of(4.75 * nF, 'figures', 'four-figures', 'plain', 'decimal')).toEqual([
      ['4751', 'other', '475 and 1 nought, in pF'],
      ['.00475', 'other', 'µF as it stands', DECIMAL],
    ]);
    // In other writings than the usual it would be taken for another.
    expect(of(4.7 * pF, 'figures', 'plain')).toEqual([]);
    expect(of(49.9 * pF, 'decimal')).toEqual([['49.9', 'other', 'pF as it stands', SMALL]]);
  });

  test('has the source and the note of what is less usual in it', () => {
    const [usual] = valuesPrinted(markings, { capacitance: 47 * nF }, true);
    expect(usual).toMatchObject({
      writing: 'figures',
      source: 'antentop-code',
      note: 'Not used on British tubes and discs before about 1970.',
      origins: ALL_BUT_BRITISH,
    });
    const [less] = valuesPrinted(markings, { capacitance: 4.7 * pF }, true);
    expect(less).toMatchObject({ text: '479', source: 'oriedza-table' });
    const plain = valuesPrinted(markings, { capacitance: 47 * nF }, true).find(
      ({ writing }) => writing === 'decimal',
    );
    expect(plain).toMatchObject({
      source: 'elko-marking',
      note: 'A figure below one without a unit is uF.',
    });
  });
});

describe('a capacitance with a letter for its point', () => {
  const letters = (farads: number, common = true): [string, string][] =>
    valuesPrinted(markings, { capacitance: farads }, common)
      .filter(({ writing }) => writing === 'letter')
      .map(({ text, use }) => [text, use]);

  test('is in every letter that the tables have for it', () => {
    expect(letters(4.7 * nF)).toEqual(
      expect.arrayContaining([
        ['4n7', 'usual'],
        ['4n70', 'other'],
        ['4.7n', 'other'],
        // A capital that is seldom a unit, and between figures K for a thousand picofarads.
        ['4N7', 'other'],
        ['4K7', 'usual'],
        ['4k7', 'usual'],
        ['4Н7', 'usual'],
        ['4н7', 'usual'],
      ]),
    );
    const texts = letters(47 * nF).map(([text]) => text);
    expect(texts).toEqual(expect.arrayContaining(['47n', 'u047', '47K']));
  });

  test('behind figures is none where it would be a tolerance', () => {
    const uses = Object.fromEntries(letters(47 * nF));
    // Behind two figures K may be ten per cent; behind three it surely is.
    expect(uses['47K']).toBe('other');
    expect(Object.fromEntries(letters(470 * nF))).not.toHaveProperty('470K');
    expect(uses['47n']).toBe('usual');
    // A decimal in microfarads is the same with its letter and without.
    expect(Object.fromEntries(letters(100 * nF))['0.1M']).toBe('other');
    expect(letters(4.7 * nF).map(([text]) => text)).not.toContain('4.7K');
    // Small letters of no origin but an old one look like those of tolerances.
    expect(uses['47k']).toBe('other');
    expect(uses).not.toHaveProperty('47N');
    expect(Object.fromEntries(letters(470 * nF))).not.toHaveProperty('470k');
    expect(Object.fromEntries(letters(47 * uF))['47m']).toBe('other');
    expect(Object.fromEntries(letters(123 * nF))['0.123M']).toBe('other');
    // Below one there is no K of capacitors.
    expect(Object.fromEntries(letters(500 * pF))).not.toHaveProperty('K5');
  });

  test('of a value outside the usual series is in a precise letter', () => {
    const texts = letters(4.75 * nF, false).map(([text]) => text);
    expect(texts).toContain('4n75');
    expect(texts).not.toContain('4K75');
    expect(letters(4.75 * nF).map(([text]) => text)).toContain('4K75');
  });

  test('the micro sign and the Greek letter, which look the same, are one', () => {
    const texts = letters(4.7 * uF).map(([text]) => text);
    expect(texts.filter((text) => text.normalize('NFKC') === '4μ7')).toHaveLength(1);
    expect(texts).toContain('4u7');
  });

  test.each<[farads: number, text: string, means: string, note: string]>([
    [4.7 * nF, '4n7', 'n for nF and the point', ''],
    [47 * nF, '47n', 'n for nF', ''],
    [4.7 * uF, '4R7', 'R for µF and the point', 'ceramics count in pF, film and polar parts in uF'],
    [4.7 * nF, '4N7', 'N for nF and the point', 'A capital N after three figures is a tolerance.'],
  ])('%d F as %s says what the letter is for', (farads, text, means, note) => {
    const found = valuesPrinted(markings, { capacitance: farads }, true).find(
      (piece) => piece.text === text,
    );
    expect(found).toMatchObject({ means, note });
  });
});

describe('a value with its unit', () => {
  test('is in the units and styles of the table', () => {
    const texts = printed({ capacitance: 47 * nF }, ['unit']).map(([text, use]) => [text, use]);
    expect(texts).toEqual(
      expect.arrayContaining([
        ['47000 pF', 'usual'],
        ['47 000 pF', 'other'],
        ['47 nF', 'usual'],
        ['0.047 µF', 'usual'],
        ['.047 µF', 'usual'],
        ['0,047 µF', 'usual'],
        ['0.047 MFD', 'usual'],
        ['0,047 мкФ', 'usual'],
      ]),
    );
    const found = texts.map(([text]) => text);
    // Numbers too large or too small for their unit, and those of resistances.
    expect(found).not.toContain('4.7e-8 F');
    expect(found.some((text) => text?.endsWith('F') && text.startsWith('0.000'))).toBe(false);
    expect(found.some((text) => text?.includes('Ω'))).toBe(false);
    expect(printed({ capacitance: 47 * nF }, ['unit'])[0]).toEqual(['47000 pF', 'usual', '47 nF']);
  });

  test.each<[ohms: number, texts: string[]]>([
    [4700, ['4700 Ω', '4.7 kΩ', '4700 OHMS', '4700 Ом', '4.7 кОм', '4,7 кОм']],
    [0.05, ['0.05 Ω', '0.05 OHMS', '0.05 Ом', '0,05 Ом']],
    [10e6, ['10 MΩ', '10 МОм']],
  ])('%d ohm', (ohms, texts) => {
    const found = printed({ resistance: ohms }, ['unit']);
    expect(found.map(([text]) => text)).toEqual(expect.arrayContaining(texts));
    expect(found.every(([text]) => /[ΩмS]$/.test(text))).toBe(true);
  });

  test('a resistance says so in its own unit', () => {
    expect(printed({ resistance: 4700 }, ['unit'])[0]).toEqual(['4700 Ω', 'usual', '4.7 kΩ']);
  });
});

describe('a value on a chip', () => {
  test.each<[part: PartToPrint, chips: Short[]]>([
    [
      { capacitance: 47 * nF },
      [
        ['S4', 'usual', 'S is 4.7 and 4 noughts, in pF', 'ceramic-chip'],
        ['S3', 'rare', 'S is 47 and 3 noughts, in pF', 'ceramic-chip'],
      ],
    ],
    [{ capacitance: 0.47 * pF }, [['S9', 'usual', 'S is 4.7 × 0.1, in pF', 'ceramic-chip']]],
    [{ capacitance: 48 * nF }, []],
    // Two letters that lists differ about.
    [
      { resistance: 49.9 },
      [
        ['68X', 'usual', '68 is 499, X is × 0.1, in Ω', 'resistor-chip'],
        ['68R', 'rare', '68 is 499, R is × 0.1, in Ω', 'resistor-chip'],
        ['68S', 'rare', '68 is 499, S is × 0.1, in Ω', 'resistor-chip'],
      ],
    ],
    // By EIA-96, and with the letter first, of two, five and ten per cent.
    [
      { resistance: 15e3 },
      [
        ['18C', 'usual', '18 is 150, C is × 100, in Ω', 'resistor-chip'],
        ['C05', 'rare', '05 is 150, C is × 100, in Ω', 'resistor-chip'],
        ['C29', 'rare', '29 is 150, C is × 100, in Ω', 'resistor-chip'],
        ['C51', 'rare', '51 is 150, C is × 100, in Ω', 'resistor-chip'],
      ],
    ],
    [
      { resistance: 15e3, tolerance: within(0.05) },
      [['C29', 'rare', '29 is 150, C is × 100, in Ω', 'resistor-chip']],
    ],
    [
      { resistance: 15e3, tolerance: within(0.01) },
      [['18C', 'usual', '18 is 150, C is × 100, in Ω', 'resistor-chip']],
    ],
    [{ resistance: 15e3, tolerance: within(0.2) }, []],
  ])('%j', (part, chips) => {
    expect(printed(part, ['chip'])).toEqual(chips);
  });

  test('with an R before figures is none: that is the point of a resistance', () => {
    const texts = printed({ resistance: 1.5 }, ['chip']).map(([text]) => text);
    expect(texts).toContain('18R');
    expect(texts.some((text) => text.startsWith('R'))).toBe(false);
    expect(texts.some((text) => text.startsWith('Y'))).toBe(true);
  });

  test('has the source of the letter where that is less usual', () => {
    const [found] = valuesPrinted(markings, { resistance: 150e6 }, true).filter(
      ({ writing }) => writing === 'chip',
    );
    expect(found).toMatchObject({ text: '18G', use: 'other', source: 'rnd-chip-marking' });
    const [usual] = valuesPrinted(markings, { resistance: 150e3 }, true).filter(
      ({ writing }) => writing === 'chip',
    );
    expect(usual).toMatchObject({
      text: '18D',
      source: 'raelectrical-marking',
      implies: within(0.01),
      note: '',
    });
    const texts = printed({ resistance: 5.1e6 }, ['chip']).map(([text]) => text);
    expect(texts).toContain('E18');
  });
});
