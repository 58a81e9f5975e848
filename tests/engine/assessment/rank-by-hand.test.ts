import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import type { OfferedPart } from '../../../src/engine/assessment/parts.ts';
import {
  byConcern,
  compareScores,
  decisiveDemand,
  emptyTally,
  fallsLessShort,
  improves,
  meanMargin,
  score,
  tryOut,
  valueDistance,
  worstMargin,
  type Tally,
} from '../../../src/engine/assessment/rank.ts';
import { isChip, isScrewed } from '../../../src/engine/assessment/mounting.ts';
import { judged } from './judged.ts';
import { circumstancesOf } from './setting.ts';

/** The arithmetic of ranks: margins in decades, sums of what falls short, and what they decide. */

describe('the least margin of a weight', () => {
  // −log10 of how far a part is beyond its limit, to a tenth; ten times inside earns no more.
  test.each<[string, Parameters<typeof judged>[], number]>([
    ['twice inside', [['hard', 0.5]], 0.3],
    ['three times beyond', [['hard', 3]], -0.5],
    ['a hundred times inside', [['hard', 0.01]], 1],
    [
      'the worst of two',
      [
        ['hard', 0.5],
        ['hard', 0.2],
      ],
      0.3,
    ],
    [
      'of its own weight alone',
      [
        ['hard', 0.5],
        ['strong', 100],
      ],
      0.3,
    ],
    ['of none', [['strong', 100]], 1],
    ['not of one without degrees that is met', [['hard', 0.9, { graded: false }]], 1],
    ['nor of one that is just met', [['hard', 1, { graded: false }]], 1],
    ['of one without degrees that is not met', [['hard', 10, { graded: false }]], -1],
    ['of one that is hopeless', [['hard', 1e30]], -12],
  ])('%s', (_what, all, margin) => {
    expect(
      worstMargin(
        all.map((one) => judged(...one)),
        'hard',
      ),
    ).toBeCloseTo(margin, 9);
  });
});

describe('the mean margin of a weight', () => {
  test.each<[string, Parameters<typeof judged>[], number]>([
    [
      'of 0.3 and 0.7 decades',
      [
        ['mild', 0.5],
        ['mild', 0.2],
      ],
      0.5,
    ],
    [
      'of its own weight alone',
      [
        ['mild', 0.5],
        ['strong', 0.01],
      ],
      0.3,
    ],
    [
      'of those with degrees alone',
      [
        ['mild', 0.5],
        ['mild', 10, { graded: false }],
      ],
      0.3,
    ],
    ['of none', [['strong', 0.01]], 0],
  ])('%s', (_what, all, margin) => {
    expect(
      meanMargin(
        all.map((one) => judged(...one)),
        'mild',
      ),
    ).toBeCloseTo(margin, 9);
  });
});

test.each([
  ['the same value', 1e-6, 0],
  ['twice', 2e-6, 3],
  ['half', 0.5e-6, 3],
  ['ten times', 1e-5, 10],
  ['ten percent more', 1.1e-6, 0],
])('%s lies %# tenths of a decade away', (_what, value, tenths) => {
  expect(valueDistance(value, 1e-6)).toBe(tenths);
});

/** As the table has them; a slice leaves out styles with leads. */
const mountings = { chip: 'pads', 'chip 1206': 'pads', 'screw-terminal can': 'screws' } as const;
test.each([
  ['chip', true, false],
  ['chip 1206', true, false],
  ['radial box', false, false],
  ['chip of another name', false, false],
  ['screw-terminal can', false, true],
])('%s is a chip: %s, or screwed: %s', (style, chip, screwed) => {
  expect(isChip({ mountings }, style)).toBe(chip);
  expect(isScrewed({ mountings }, style)).toBe(screwed);
});

describe('where all margins that decide are alike', () => {
  const circumstances = circumstancesOf({
    original: { type: 'pet-metallized' },
    position: 'sample-hold',
  });
  const box: OfferedPart = {
    type: 'pet-metallized',
    capacitance: circumstances.original.capacitance,
    tolerance: { minus: 0.1, plus: 0.1 },
    ratedVoltage: 63,
    voltageKind: 'dc',
    style: 'radial box',
    pitch: [],
    series: 'E6',
  };
  const scored = (all: Parameters<typeof judged>[], more: Partial<OfferedPart> = {}) =>
    score(
      { ...box, ...more },
      all.map((one) => judged(...one)),
      circumstances,
    );

  test.each<[string, ReturnType<typeof scored>, ReturnType<typeof scored>]>([
    [
      'a single part is before a pair',
      scored([]),
      scored([], { made: { kind: 'parallel', parts: [], why: '' } }),
    ],
    ['a part with leads is before a chip', scored([]), scored([], { style: 'chip' })],
    [
      'a pair with leads is before one with a chip in it, whichever comes first',
      scored([], { made: { kind: 'parallel', parts: [box, box], why: '' } }),
      scored([], {
        style: 'radial box and chip',
        made: { kind: 'parallel', parts: [box, { ...box, style: 'chip' }], why: '' },
      }),
    ],
    [
      'the mean of the strong demands decides',
      scored([
        ['strong', 0.5],
        ['strong', 0.1],
        ['mild', 0.9],
      ]),
      scored([
        ['strong', 0.5],
        ['strong', 0.4],
        ['mild', 0.1],
      ]),
    ],
    [
      'then that of the mild ones',
      scored([
        ['strong', 0.5],
        ['mild', 0.1],
      ]),
      scored([
        ['strong', 0.5],
        ['mild', 0.9],
      ]),
    ],
    [
      'a type of no market is no better than a rare one',
      scored([]),
      scored([], { type: 'unheard-of' }),
    ],
  ])('%s', (_what, first, second) => {
    expect(compareScores(first, second)).toBeLessThan(0);
    expect(compareScores(second, first)).toBeGreaterThan(0);
  });
});

describe('what demands come to', () => {
  test('nothing at all is well', () => {
    expect(emptyTally()).toEqual({ verdict: 'fits', short: [0, 0, 0], missesHeavy: false });
  });

  test.each<[string, Parameters<typeof judged>[], Tally]>([
    [
      'all met',
      [
        ['hard', 0.5],
        ['mild', 0.1],
      ],
      emptyTally(),
    ],
    // 10^0.5 = 3.16.
    [
      'a strong one missed by half a decade',
      [['strong', 3.16]],
      { verdict: 'stopgap', short: [0, 0.5, 0], missesHeavy: true },
    ],
    [
      'two mild ones missed by half a decade and by one and a half',
      [
        ['mild', 3.16],
        ['mild', 31.6],
      ],
      { verdict: 'stopgap', short: [0, 0, 2], missesHeavy: false },
    ],
    [
      'a hard one missed and a mild one after it',
      [
        ['hard', 10],
        ['mild', 3.16],
      ],
      { verdict: 'keep-out', short: [1, 0, 0.5], missesHeavy: true },
    ],
  ])('%s', (_what, all, { verdict, short, missesHeavy }) => {
    const found = tryOut(
      null,
      all.map((one) => judged(...one)),
    );
    expect([found.verdict, found.missesHeavy]).toEqual([verdict, missesHeavy]);
    found.short.forEach((each, index) => {
      expect(each).toBeCloseTo(short[index] ?? NaN, 9);
    });
  });
});

describe('a part serves better than another', () => {
  const tally = (
    verdict: Tally['verdict'],
    short: number[] = [0, 0, 0],
    missesHeavy = false,
  ): Tally => ({ verdict, short, missesHeavy });

  test.each<[string, Tally, Tally, boolean, boolean]>([
    ['by its verdict', tally('fits'), tally('fits-if'), false, true],
    ['not by a worse one', tally('stopgap'), tally('fits-if'), true, false],
    [
      'of one value by falling less short',
      tally('fits-if', [0, 0, 0.5]),
      tally('fits-if', [0, 0, 1]),
      true,
      true,
    ],
    ['not by as much', tally('fits-if', [0, 0, 1]), tally('fits-if', [0, 0, 1]), true, false],
    [
      'not of another value',
      tally('fits-if', [0, 0, 0.5]),
      tally('fits-if', [0, 0, 1]),
      false,
      false,
    ],
    [
      'of another value by meeting all that weighs',
      tally('stopgap', [0, 0, 1]),
      tally('stopgap', [0, 1, 0], true),
      false,
      true,
    ],
    [
      'not where both miss something that weighs',
      tally('stopgap', [0, 0.5, 0], true),
      tally('stopgap', [0, 1, 0], true),
      false,
      false,
    ],
    [
      'not where neither does',
      tally('stopgap', [0, 0, 1]),
      tally('stopgap', [0, 0, 2]),
      false,
      false,
    ],
  ])('%s', (_what, next, best, sameValue, better) => {
    expect(improves(next, best, sameValue)).toBe(better);
  });

  test.each<[string, number[], number[], boolean]>([
    ['a tenth of a decade less', [0, 0, 0.4], [0, 0, 0.5], true],
    ['a tenth more', [0, 0, 0.5], [0, 0, 0.4], false],
    ['a step within rounding', [0, 0, 0.46], [0, 0, 0.5], false],
    ['less of the heavier, more of the milder', [0, 0.4, 9], [0, 0.5, 0], true],
  ])('falls less short: %s', (_what, mine, other, less) => {
    expect(fallsLessShort(tally('fits-if', mine), tally('fits-if', other))).toBe(less);
  });
});

describe('findings in the order of their concern', () => {
  const one = (demand: string, more: Partial<Finding>): Finding => ({
    ...{ demand, finding: 'droop', name: '', unit: 'V', weight: 'strong' },
    ...{ margin: 1, verdict: 'fits', missing: [], working: '', why: '' },
    ...{ sources: [], sure: 'sure', basis: 'published', weakest: [], limit: {} },
    ...more,
  });

  test('go by verdict, weight and margin', () => {
    const all = [
      one('fits', {}),
      one('fits, little to spare', { margin: 0.5 }),
      one('fits, but is hard', { weight: 'hard', margin: 9 }),
      one('keep out', { verdict: 'keep-out', weight: 'mild', margin: 9 }),
      one('stopgap', { verdict: 'stopgap' }),
      one('fits if', { verdict: 'fits-if', margin: 0.1 }),
    ];
    const wanted = [
      ...['keep out', 'stopgap', 'fits if', 'fits, but is hard'],
      ...['fits, little to spare', 'fits'],
    ];
    expect(all.toSorted(byConcern).map(({ demand }) => demand)).toEqual(wanted);
    expect(
      all
        .toReversed()
        .toSorted(byConcern)
        .map(({ demand }) => demand),
    ).toEqual(wanted);
  });
});

describe('the demand that decides', () => {
  test('is the worst of all where none has the verdict', () => {
    const all = [judged('mild', 0.5, { id: 'good' }), judged('mild', 0.9, { id: 'near' })];
    expect(decisiveDemand(all, 'keep-out')).toBe('near');
    expect(decisiveDemand(all.toReversed(), 'keep-out')).toBe('near');
  });

  test('may be one without degrees where it is not met, or where there is no other', () => {
    const missed = [
      judged('strong', 5, { id: 'yes or no', graded: false }),
      judged('strong', 2, { id: 'by degrees' }),
    ];
    expect(decisiveDemand(missed, 'stopgap')).toBe('yes or no');
    expect(decisiveDemand([judged('hard', 0, { id: 'alone', graded: false })], 'fits')).toBe(
      'alone',
    );
  });
});
