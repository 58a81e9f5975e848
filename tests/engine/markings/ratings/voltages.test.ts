import { describe, expect, test } from 'vitest';
import { readVoltageCode, type Hints } from '../../../../src/engine/markings/index.ts';
import type { Token } from '../../../../src/engine/markings/meanings/token.ts';
import {
  kindOf,
  sayVolts,
  voltageSlot,
} from '../../../../src/engine/markings/ratings/voltage-codes.ts';
import { writtenVoltagesAt } from '../../../../src/engine/markings/ratings/voltages.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { between } from '../../../../src/engine/quantities/range.ts';
import { expected, inShort, scanFor, scanWithLookAlikes, wordsOf, type Short } from '../scans.ts';
import { markings } from '../tables.ts';

const {
  voltageWithUnit,
  shorterVolts,
  voltagePair,
  wornFigure,
  voltageCode,
  voltageCodeBeforeThree,
  voltageCodeForPoint,
  voltageCodeForPower,
  voltageLetter,
  voltageLetterBehind,
  voltageFigures,
  otherCase,
  otherCaseOfUnit,
  worn,
  completedVoltage,
} = weights;

describe('a voltage', () => {
  test.each([
    ['dc', 'dc', 'voltage'],
    ['ac', 'ac', 'ac-voltage'],
    ['', undefined, 'voltage'],
  ])('of kind %j', (kind, wanted, slot) => {
    expect(kindOf(kind)).toBe(wanted);
    expect(voltageSlot(kind)).toBe(slot);
  });

  test.each([
    [63, 63, '', '63 V'],
    [63, 63, 'dc', '63 V dc'],
    [50, 100, '', '50 V to 100 V'],
    [50, 100, 'ac', '50 V to 100 V ac'],
    [1000, 1600, 'dc', '1 kV to 1.6 kV dc'],
  ])('from %d to %d of %j in words', (low, high, kind, said) => {
    expect(sayVolts(between(low, high), kind)).toBe(said);
  });

  test.each<[code: string, meanings: [volts: number, kind: string | undefined, scheme: string][]]>([
    ['2A', [[100, 'dc', 'figure-letter']]],
    // The rule of letters first, the exception of one maker last.
    [
      '3F',
      [
        [3150, 'dc', 'figure-letter'],
        [3000, 'dc', 'figure-letter'],
      ],
    ],
    [
      'V',
      [
        [35, 'dc', 'chip-letter'],
        [35, 'dc', 'letter-behind'],
        [500, 'dc', 'soviet-letter'],
      ],
    ],
    ['u', [[250, 'ac', 'small-letter']]],
    ['63', [[63, undefined, 'figures']]],
    ['2', []],
  ])('by the code %s', (code, meanings) => {
    const found = readVoltageCode(markings, code);
    expect(found.map(({ volts, kind, scheme }) => [volts.typ, kind, scheme])).toEqual(
      meanings.map(([volts, kind, scheme]) => [volts, kind, scheme]),
    );
    for (const meaning of found) expect('kind' in meaning).toBe(meaning.kind !== undefined);
  });

  test('by a code says where it is met', () => {
    const [first, second] = readVoltageCode(markings, 'T');
    expect(first).toMatchObject({ bodies: ['tantalum'], origins: [], use: 'usual' });
    expect(first?.source).toBe('avx-taj');
    expect(second).toMatchObject({ scheme: 'letter-behind' });
    expect(readVoltageCode(markings, 'u')[0]).toMatchObject({
      bodies: ['ceramic'],
      origins: ['german'],
      use: 'other',
      source: 'din-41920',
    });
  });
});

const V = voltageWithUnit.usual;

describe('volts that are written out', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['16V', 0, [[3, 'rated 16 V', V]]],
    ['104 63 V', 4, [[8, 'rated 63 V', V]]],
    ['600WVDC', 0, [[7, 'rated 600 V dc', V]]],
    ['275~', 0, [[4, 'rated 275 V ac', V]]],
    ['1KV', 0, [[3, 'rated 1 kV', V]]],
    ['2,5kV', 0, [[5, 'rated 2.5 kV', V]]],
    // The longest word counts, and a dash or letters alone at the end of a word only.
    ['450V-', 0, [[5, 'rated 450 V dc', V]]],
    ['450V-X', 0, [[4, 'rated 450 V', V]]],
    ['16-', 0, [[3, 'rated 16 V dc', voltageWithUnit.other]]],
    ['16 -', 0, []],
    ['16-4', 0, []],
    ['160DC', 0, [[5, 'rated 160 V dc', voltageWithUnit.other]]],
    ['160DCX', 0, []],
    // Small letters that run on are of another word; a capital one behind a sign is not.
    ['100Vx', 0, []],
    ['100VX', 0, []],
    ['100~K', 0, [[4, 'rated 100 V ac', V]]],
    ['100~k', 0, []],
    ['100~µ', 0, []],
    // A test beside the rating: the shorter word is believed less.
    [
      '500V SURGE',
      0,
      [
        [4, 'rated 500 V', V + shorterVolts],
        [10, '500 V: surge volts; never the rating', V],
      ],
    ],
    ['500V SURGEX', 0, [[4, 'rated 500 V', V]]],
    // Two signs before three figures are a code.
    ['2V104', 0, []],
    ['16V104', 0, [[3, 'rated 16 V', V]]],
    ['2V', 0, [[2, 'rated 2 V', V]]],
    ['0V', 0, []],
    // A value and its volts are no number with a gap, unless it is a usual one.
    ['473 100V', 0, []],
    ['2 500 V', 0, [[7, 'rated 2.5 kV', V]]],
    ['V', 0, []],
    // Two voltages with a stroke between: the lower one is the rating.
    ['350/500V', 0, [[8, 'rated 350 V; 500 V is a test or surge figure', V + voltagePair]]],
    ['1-1.5kV', 0, [[7, 'rated 1 kV; 1.5 kV is a test or surge figure', V + voltagePair]]],
    [
      '350V/385V',
      0,
      [
        [4, 'rated 350 V', V],
        [9, 'rated 350 V; 385 V is a test or surge figure', V + voltagePair],
      ],
    ],
    [
      '350V-385V',
      0,
      [
        [4, 'rated 350 V', V],
        [9, 'rated 350 V; 385 V is a test or surge figure', V + voltagePair],
      ],
    ],
    ['500/350V', 0, []],
    ['350/350V', 0, []],
    ['350/500', 0, []],
    ['350.5/500', 0, []],
    ['0/500V', 0, []],
    ['350+500V', 0, []],
    ['350/500V TEST', 0, []],
    // Words before the figures, with a unit behind them or none.
    ['WVDC 400', 0, [[8, 'rated 400 V dc', V]]],
    ['Un 63V', 0, [[6, 'rated 63 V', V]]],
    ['T.E. 1500 V', 0, [[11, '1.5 kV: test voltage, French; never the rating', V]]],
    ['TEST 2kV', 0, [[8, '2 kV: test volts; never the rating', V]]],
    ['TEST 400 TEST', 0, [[8, '400 V: test volts; never the rating', V]]],
    ['TEST 0', 0, []],
    ['TEST', 0, []],
    ['XTEST 400', 1, []],
    ['DC 160', 0, [[6, 'rated 160 V dc', voltageWithUnit.other]]],
  ])('%j at %d', (text, at, found) => {
    expect(inShort(writtenVoltagesAt(scanFor(text), at))).toEqual(expected(found));
  });

  test.each<[text: string, found: Short[]]>([
    // Usual voltages only, each figure made up at a cost.
    ['1?0V', [100, 150, 160, 180].map((volts): Short => [4, `rated ${volts} V`, V + wornFigure])],
    [
      '350/5?0V',
      [500, 550].map((volts): Short => [
        8,
        `rated 350 V; ${volts} V is a test or surge figure`,
        V + wornFigure + voltagePair,
      ]),
    ],
    ['35?/500V', []],
    // 4000 V is the only usual one of such figures.
    ['4?0? V', [[6, 'rated 4 kV', V + 2 * wornFigure]]],
    ['4?1? V', []],
  ])('%j with a worn figure', (text, found) => {
    expect(inShort(writtenVoltagesAt(scanFor(text), 0))).toEqual(expected(found));
  });

  test.each<[text: string, token: Partial<Token>, content: object]>([
    ['16V', { withUsualUnit: true }, { kind: undefined, rated: true }],
    ['275~', { withUsualUnit: true }, { kind: 'ac', rated: true }],
    ['16-', { withUsualUnit: false }, { kind: 'dc', rated: true }],
    // In 2 500 V the figures before the gap may be a value of their own.
    ['2 500 V', { withUsualUnit: false }, { rated: true }],
    ['350/500V', { withUsualUnit: false }, { rated: true }],
    ['TEST 400', { withUsualUnit: true }, { rated: false }],
  ])('%j tells its kind and whether it is a rating', (text, token, content) => {
    const [found] = writtenVoltagesAt(scanFor(text), 0);
    expect(found).toMatchObject({ at: 0, needs: [], assumed: [], ...token });
    expect(found?.meaning.content).toMatchObject({ says: 'voltage', ...content });
  });

  test.each([
    ['16V', 'voltage'],
    ['275~', 'ac-voltage'],
    // What is no rating fills no place.
    ['TEST 400', undefined],
  ])('%j fills the place %s', (text, slot) => {
    const [found] = writtenVoltagesAt(scanFor(text), 0);
    expect(found?.meaning.slot).toBe(slot);
    expect(found !== undefined && 'slot' in found.meaning).toBe(slot !== undefined);
  });

  test('say what was made up', () => {
    const [found] = writtenVoltagesAt(scanFor('350/5?0V'), 0);
    expect(found?.assumed).toEqual([{ at: 5, as: '0', why: 'worn' }]);
    const word = writtenVoltagesAt(scanFor('100 ?DC'), 0)[0];
    expect(word?.assumed).toEqual([{ at: 4, as: 'V', why: 'worn' }]);
    expect(word?.withUsualUnit).toBe(false);
  });
});

const codesAt = (text: string, at: number, hints?: Hints): Short[] =>
  inShort(wordsOf(scanFor(text, hints), at, 'voltage', 'ac-voltage'));

describe('a voltage code in a marking', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['2A104J', 0, [[2, 'rated 100 V dc', voltageCode.usual + voltageCodeBeforeThree]]],
    ['2T104J', 0, [[2, 'rated 150 V dc', voltageCode.other + voltageCodeBeforeThree]]],
    ['104J 2A', 5, [[7, 'rated 100 V dc', voltageCode.usual]]],
    ['104J2A', 4, [[6, 'rated 100 V dc', voltageCode.usual]]],
    // A small letter costs a little, far more where it is a unit.
    ['2a104J', 0, [[2, 'rated 100 V dc', voltageCode.usual + otherCase + voltageCodeBeforeThree]]],
    [
      '2p104J',
      0,
      [[2, 'rated 220 V dc', voltageCode.usual + otherCaseOfUnit + voltageCodeBeforeThree]],
    ],
    ['12A104J', 1, []],
    ['2AB104', 0, []],
    // Rather a value with a letter for its point, or a power behind a value.
    ['2P8', 0, [[2, 'rated 220 V dc', voltageCode.usual + voltageCodeForPoint]]],
    ['2P15', 0, [[2, 'rated 220 V dc', voltageCode.usual + voltageCodeForPoint]]],
    ['2P104', 0, [[2, 'rated 220 V dc', voltageCode.usual + voltageCodeBeforeThree]]],
    // Letters of ohms, of farads, and of thousands of picofarads.
    ['2G8', 0, [[2, 'rated 400 V dc', voltageCode.usual + voltageCodeForPoint]]],
    ['2F8', 0, [[2, 'rated 315 V dc', voltageCode.usual]]],
    ['2K5', 0, [[2, 'rated 800 V dc', voltageCode.usual + voltageCodeForPoint]]],
    ['2A15', 0, [[2, 'rated 100 V dc', voltageCode.usual]]],
    ['47K 2W', 4, [[6, 'rated 450 V dc', voltageCode.usual + voltageCodeForPower]]],
    ['47K 2F', 4, [[6, 'rated 315 V dc', voltageCode.usual]]],
    ['2W 47K', 0, [[2, 'rated 450 V dc', voltageCode.usual + voltageCodeForPower]]],
    ['2W', 0, [[2, 'rated 450 V dc', voltageCode.usual]]],
    ['2W104', 0, [[2, 'rated 450 V dc', voltageCode.usual + voltageCodeBeforeThree]]],
    ['104K2W', 4, [[6, 'rated 450 V dc', voltageCode.usual]]],
    // A letter before the three figures of a chip, or behind those of a bead.
    [
      'A106',
      0,
      [
        [1, 'rated 10 V dc', voltageLetter.usual, 'touching-before-value'],
        [1, 'rated 3.2 V dc', voltageLetter.rare, 'touching-temperature'],
      ],
    ],
    ['a106', 0, [[1, 'rated 50 V dc', voltageLetter.other, 'touching-tolerance']]],
    ['A1065', 0, [[1, 'rated 3.2 V dc', voltageLetter.rare, 'touching-temperature']]],
    ['107A', 3, [[4, 'rated 10 V dc', voltageLetterBehind.usual, 'touching-value']]],
    ['107J', 3, [[4, 'rated 6.3 V dc', voltageLetterBehind.other, 'touching-value']]],
    ['107a', 3, []],
    ['1074A', 4, []],
    ['107AX', 3, []],
    ['X A', 2, [[3, 'rated 3.2 V dc', voltageLetter.rare, 'touching-temperature']]],
    // A small letter behind a tolerance letter, of either kind of voltage.
    ['47Jd', 3, [[4, 'rated 250 V dc', voltageLetter.other, 'touching-tolerance']]],
    ['47Ju', 3, [[4, 'rated 250 V ac', voltageLetter.other, 'touching-tolerance']]],
    ['47Jdx', 3, []],
    // Three figures behind a tolerance, which may end in one; letters of case and leads may follow.
    ['225K035', 4, [[7, 'rated 35 V dc', voltageLetter.usual, 'touching-tolerance']]],
    ['225K035AS', 4, [[7, 'rated 35 V dc', voltageLetter.usual, 'touching-tolerance']]],
    ['106X9035', 5, [[8, 'rated 35 V dc', voltageLetter.usual, 'touching-tolerance']]],
    [
      '226M6R3',
      4,
      [
        [7, 'rated 6.3 V', voltageFigures.usual, 'value-before'],
        [7, 'rated 6.3 V dc', voltageLetter.usual, 'touching-tolerance'],
      ],
    ],
    ['225K0354', 4, []],
    // Words for what is drawn, in any letters.
    ['underlined', 0, [[10, 'rated 50 V to 100 V dc', voltageWithUnit.usual]]],
    ['UNDERLINED', 0, [[10, 'rated 50 V to 100 V dc', voltageWithUnit.usual + otherCase]]],
    // Figures alone, where none run on and no letter follows.
    ['104 250', 4, [[7, 'rated 250 V', voltageFigures.usual, 'value-before']]],
    ['104 10', 4, [[6, 'rated 10 V', voltageFigures.other, 'value-before']]],
    ['104 2500', 4, [[8, 'rated 2.5 kV', voltageFigures.usual, 'value-before']]],
    ['104 6.3', 4, [[7, 'rated 6.3 V', voltageFigures.other, 'value-before']]],
    ['104 25.', 4, [[6, 'rated 25 V', voltageFigures.usual, 'value-before']]],
    ['104250', 3, []],
    ['104 25V', 4, []],
  ])('%j at %d', (text, at, found) => {
    expect(codesAt(text, at)).toEqual(expected(found));
  });

  test.each<[text: string, at: number, letters: string]>([
    // Every letter that there is with the figure, before a code or at the end of a word.
    ['2?104J', 0, 'ABCDEFGHJKQZPVWTSY'],
    ['104J 2?', 5, 'ABCDEFGHJKQZPVWTSY'],
    ['2?47', 0, ''],
    ['2?K', 0, ''],
  ])('%j at %d with a letter that cannot be read', (text, at, letters) => {
    const found = wordsOf(scanFor(text), at, 'voltage').filter(({ needs }) => needs.length === 0);
    expect(found.flatMap(({ assumed }) => assumed.map(({ as }) => as)).join('')).toBe(letters);
    const before = at === 0 ? voltageCodeBeforeThree : 0;
    for (const { weight, meaning } of found) {
      const use = ['rated 150 V dc', 'rated 275 V dc', 'rated 600 V dc'].includes(meaning.means())
        ? voltageCode.other
        : voltageCode.usual;
      expect(weight).toBeCloseTo(use + worn + completedVoltage + before, 9);
    }
  });

  test.each<[text: string, at: number, found: Short[]]>([
    // A number does not begin with a letter that was misread, but may have one within.
    // Each character by itself: the O may be a nought, and the 5 a worn 6.
    [
      '104 5O',
      4,
      [
        [6, 'rated 50 V', voltageFigures.usual - 0.5, 'value-before'],
        [6, 'rated 60 V', voltageFigures.other - 0.5 - 2.6, 'value-before'],
      ],
    ],
    ['104 S0', 4, []],
    // No letter of a bead is read into a figure.
    ['1078', 3, []],
  ])('%j at %d with characters taken for others', (text, at, found) => {
    const scan = scanWithLookAlikes(text);
    const usual = wordsOf(scan, at, 'voltage').filter(({ needs }) =>
      needs.includes('value-before'),
    );
    expect(inShort(usual)).toEqual(expected(found));
  });

  test('is tied to the bodies and origins of its row', () => {
    const scan = scanFor('47Ju');
    const [found] = wordsOf(scan, 3, 'ac-voltage');
    expect(found?.meaning.bodies).toBe(scan.lexicon.bodies.bitsOf(['ceramic']));
    expect(found?.meaning.origins).toBe(scan.lexicon.origins.bitsOf(['german']));
    expect(found?.meaning.content).toMatchObject({ says: 'voltage', kind: 'ac', rated: true });
  });
});
