import { describe, expect, test } from 'vitest';
import { numbersAt, runsAt, significant } from '../../../../src/engine/markings/lexicon/numbers.ts';
import { markingOf, type LookAlikes } from '../../../../src/engine/markings/text/text.ts';

const FIGURES = '0123456789'.split('');

/** Letters taken for noughts and ones at half and a quarter of a point. */
const lookAlikes: LookAlikes = new Map([
  ['O', [{ as: '0', cost: -0.5 }]],
  ['I', [{ as: '1', cost: -0.25 }]],
  ['S', [{ as: 'Z', cost: -0.25 }]],
]);

describe('significant figures of a number', () => {
  test.each([
    ['4700', '47'],
    ['0047', '47'],
    ['407', '407'],
    ['1', '1'],
    ['000', ''],
    ['', ''],
  ])('%s: %s', (digits, figures) => {
    expect(significant(digits)).toBe(figures);
  });
});

const runs = (text: string, at: number, most?: number, like?: LookAlikes): string[] =>
  runsAt(markingOf(text, like), at, most).map(({ digits }) => digits);

describe('figures that stand together', () => {
  test.each<[text: string, at: number, most: number | undefined, digits: string[]]>([
    ['104K', 0, undefined, ['104']],
    ['104K', 1, undefined, ['04']],
    ['104K', 3, undefined, []],
    ['1234567', 0, undefined, ['1234567']],
    // More figures than a number has, or than are asked for: none is cut off.
    ['12345678', 0, undefined, []],
    ['104', 0, 2, []],
    ['104', 0, 3, ['104']],
    ['', 0, undefined, []],
  ])('%j from %d, at most %s', (text, at, most, digits) => {
    expect(runs(text, at, most)).toEqual(digits);
  });

  test.each<[text: string, at: number, most: number | undefined, digits: string[]]>([
    // What is worn may be no figure at all.
    ['4?7', 0, undefined, ['4', ...FIGURES.map((figure) => `4${figure}7`)]],
    ['?7', 0, undefined, FIGURES.map((figure) => `${figure}7`)],
    ['47?', 0, undefined, ['47', ...FIGURES.map((figure) => `47${figure}`)]],
    ['47?', 0, 2, ['47']],
    ['4?7', 0, 2, ['4']],
    [
      '4?7?',
      0,
      undefined,
      [
        '4',
        ...FIGURES.map((figure) => `4${figure}7`),
        ...FIGURES.flatMap((one) => FIGURES.map((other) => `4${one}7${other}`)),
      ],
    ],
    // Of three that are missing only one is made up in a number.
    ['4?7?8?', 0, undefined, ['4', ...FIGURES.map((figure) => `4${figure}7`)]],
  ])('%j from %d, at most %s, with every figure for a worn one', (text, at, most, digits) => {
    expect(runs(text, at, most)).toEqual(digits);
  });

  test.each<[text: string, digits: string[]]>([
    ['1O4', ['1', '104']],
    ['OIO', ['0', '01', '010']],
    // No more than three are taken for others, and only for figures.
    ['OOOO', ['0', '00', '000']],
    ['4S', ['4']],
    // One only beside what is worn.
    ['4OO K?', ['4', '40']],
  ])('%j with characters taken for figures', (text, digits) => {
    expect(runs(text, 0, undefined, lookAlikes)).toEqual(digits);
  });

  test('say what was assumed, where, and at what cost', () => {
    expect(runsAt(markingOf('1OI', lookAlikes), 0).at(-1)).toEqual({
      end: 3,
      digits: '101',
      assumed: [
        { at: 1, as: '0', why: 'look-alike' },
        { at: 2, as: '1', why: 'look-alike' },
      ],
      cost: -0.75,
    });
    expect(runsAt(markingOf('4?'), 0).at(-1)).toEqual({
      end: 2,
      digits: '49',
      assumed: [{ at: 1, as: '9', why: 'worn' }],
      cost: -0.5,
    });
    expect(runsAt(markingOf('47'), 0)).toEqual([{ end: 2, digits: '47', assumed: [], cost: 0 }]);
  });
});

/** A number as end, value and significant figures, with what else is so of it. */
type Short = [end: number, value: number, figures: string, so?: string];

const short = (text: string, at: number): Short[] =>
  numbersAt(markingOf(text), at).map(({ end, value, figures, ...rest }) => {
    const so = (['padded', 'decimal', 'grouped'] as const).filter((each) => rest[each]).join(' ');
    return so === '' ? [end, value, figures] : [end, value, figures, so];
  });

describe('numbers at an index', () => {
  test.each<[text: string, at: number, numbers: Short[]]>([
    ['104K', 0, [[3, 104, '104']]],
    // A number is not begun in the midst of one.
    ['104K', 1, []],
    ['104K', 3, []],
    ['K47', 1, [[3, 47, '47']]],
    ['010', 0, [[3, 10, '1', 'padded']]],
    ['0', 0, [[1, 0, '', 'padded']]],
    [
      '4.7',
      0,
      [
        [1, 4, '4'],
        [3, 4.7, '47', 'decimal'],
      ],
    ],
    [
      '4,7',
      0,
      [
        [1, 4, '4'],
        [3, 4.7, '47', 'decimal'],
      ],
    ],
    [
      '0·05',
      0,
      [
        [1, 0, '', 'padded'],
        [4, 0.05, '5', 'decimal'],
      ],
    ],
    ['.022', 0, [[4, 0.022, '22', 'decimal']]],
    ['4.', 0, [[1, 4, '4']]],
    ['.K', 0, []],
    // Up to six decimals.
    [
      '0.000047',
      0,
      [
        [1, 0, '', 'padded'],
        [8, 0.000047, '47', 'decimal'],
      ],
    ],
    ['0.0000047', 0, [[1, 0, '', 'padded']]],
    // Thousands that are set apart.
    [
      '10 000 pF',
      0,
      [
        [2, 10, '1'],
        [6, 10000, '1', 'grouped'],
      ],
    ],
    [
      "1'250'000",
      0,
      [
        [1, 1, '1'],
        [9, 1250000, '125', 'grouped'],
      ],
    ],
    [
      '10\u202f000',
      0,
      [
        [2, 10, '1'],
        [6, 10000, '1', 'grouped'],
      ],
    ],
    ['10 0000', 0, [[2, 10, '1']]],
    ['1234 000', 0, [[4, 1234, '1234']]],
    ['0 500', 0, [[1, 0, '', 'padded']]],
    // Nine figures at most.
    [
      '100 000 000',
      0,
      [
        [3, 100, '1'],
        [11, 1e8, '1', 'grouped'],
      ],
    ],
    ['1 000 000 000', 0, [[1, 1, '1']]],
    // What follows the figures that end a style is another number.
    ['KSO-2 500', 4, [[5, 2, '2']]],
    [
      '8-2 500',
      2,
      [
        [3, 2, '2'],
        [7, 2500, '25', 'grouped'],
      ],
    ],
    [
      '-2 500',
      1,
      [
        [2, 2, '2'],
        [6, 2500, '25', 'grouped'],
      ],
    ],
  ])('%j at %d', (text, at, numbers) => {
    expect(short(text, at)).toEqual(numbers);
  });

  // Three decimals that end in a nought are rather thousands: they cost two points and a half.
  test.each([
    ['10,000', -2.5],
    ['1.230', -2.5],
    ['1.234', 0],
    ['1.2300', 0],
    ['1.20', 0],
    ['0.100', 0],
    ['.100', 0],
  ])('%s costs %d', (text, cost) => {
    expect(numbersAt(markingOf(text), 0).find(({ decimal }) => decimal)?.cost).toBe(cost);
  });

  test('with all of their figures and what was made up in them', () => {
    const [decimal] = numbersAt(markingOf('0.?7'), 0).filter((number) => number.decimal);
    expect(decimal).toEqual({
      end: 4,
      value: 0.07,
      figures: '7',
      digits: '007',
      padded: false,
      decimal: true,
      grouped: false,
      assumed: [{ at: 2, as: '0', why: 'worn' }],
      cost: -0.5,
    });
    const [both] = numbersAt(markingOf('4?.7?'), 0).filter((number) => number.decimal);
    expect(both).toMatchObject({
      value: 40.7,
      cost: -0.5,
      digits: '407',
      assumed: [{ at: 1, as: '0', why: 'worn' }],
    });
  });

  test('have one figure at least that can be read', () => {
    expect(short('?', 0)).toEqual([]);
    expect(short('?7', 0).map(([, value]) => value)).toEqual(
      FIGURES.map((figure) => Number(`${figure}7`)),
    );
    expect(short('x?.7', 1).map(([, value]) => value)).toEqual(
      FIGURES.map((figure) => Number(`${figure}.7`)),
    );
  });
});
