import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { carriedSetting, kindCircumstances, useOf } from '../../../src/engine/index.ts';
import { trimmerPreset } from '../../../src/engine/sums/resistor/trimmer-preset.ts';
import { runSumOf } from '../../../src/engine/sums/run-sum.ts';
import type { KindCircumstances, KindPart } from '../../../src/engine/kinds/part.ts';
import type { NewTrimmer } from '../../../src/engine/kinds/setting.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { circumstances, divider } from './made-up.ts';

const catalogue = loadCatalogue();

const circumstancesFor = (position: string, reading: number, oldTotal: number) =>
  kindCircumstances(catalogue, {
    original: { type: 'carbon-preset' },
    position,
    conditions: { 'old-setting': exactly(reading), 'old-total': exactly(oldTotal) },
  });

const part = { type: 'cermet-multiturn', value: 10e3, unit: 'ohm' } as const;

describe('the old setting carried over', () => {
  test.each([
    // Worked by hand: two terminals keep the ohms, three the ratio.
    ['gain-trim', 4000, 10e3, { total: 9600, turns: 24 }, { set: 4000, fromEnd: 10, perTurn: 400 }],
    [
      'pitch-trim',
      4000,
      10e3,
      { total: 9600, turns: 24 },
      { set: 3840, fromEnd: 9.6, perTurn: 400 },
    ],
    ['gain-trim', 4000, 10e3, { total: 9600, turns: 24, now: 4800 }, { toGo: -2 }],
    ['gain-trim', 11e3, 22e3, {}, { set: 11e3, reaches: false }],
    ['offset-trim', 11e3, 22e3, {}, { set: 5e3, reaches: true }],
  ])('%s, %d of %d ohm, new one %o', (position, reading, oldTotal, measured, expected) => {
    const carried = carriedSetting(part, circumstancesFor(position, reading, oldTotal), measured);
    expect(carried).toMatchObject(expected);
  });

  // 0.2 % of the total as a rheostat and 0.1 % as a divider, in ten turns.
  const made: KindPart = { type: 'made-up', value: 10e3, unit: 'ohm' };
  const unknown: KindPart = { ...made, type: 'unheard-of' };

  test.each<[string, KindCircumstances, KindPart, NewTrimmer, object]>([
    // The old one read 2 kΩ of 8 kΩ.
    [
      'as a rheostat',
      circumstances(),
      made,
      {},
      { set: 2000, turns: 10, fromEnd: 2, perTurn: 1000, step: 20 },
    ],
    [
      'as a divider',
      divider,
      made,
      {},
      { set: 2500, turns: 10, fromEnd: 2.5, perTurn: 1000, step: 10 },
    ],
    [
      'and how far to turn from what it reads',
      circumstances(),
      made,
      { now: 5000 },
      { set: 2000, turns: 10, fromEnd: 2, perTurn: 1000, step: 20, toGo: -3 },
    ],
    [
      'with the turns and the total that were measured',
      circumstances(),
      unknown,
      { total: 5000, turns: 20, now: 2500 },
      { total: 5000, set: 2000, turns: 20, fromEnd: 8, perTurn: 250, toGo: -2 },
    ],
    ['without turns that nobody knows', circumstances(), unknown, { now: 5000 }, { set: 2000 }],
    [
      'up to its very end',
      circumstances(),
      made,
      { total: 2000 },
      { total: 2000, set: 2000, turns: 10, fromEnd: 10, perTurn: 200, step: 4 },
    ],
  ])('is told %s, and no more than is known', (_what, where, one, measured, expected) => {
    const { ratio, newRatio, ...told } = carriedSetting(one, where, measured);
    expect(ratio).toBe(0.25);
    expect(newRatio).toBe(told.set / told.total);
    expect(told.reaches).toBe(true);
    expect(told).toStrictEqual({ total: 10e3, reaches: true, ...expected });
  });

  test('is what the bench sum says, for any numbers', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('gain-trim', 'bias-trim', 'pitch-trim', 'level-preset'),
        fc.double({ min: 1, max: 9e3, noNaN: true }),
        fc.double({ min: 9e3, max: 1e5, noNaN: true }),
        fc.double({ min: 9e3, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 9e3, noNaN: true }),
        (position, reading, oldTotal, total, now) => {
          const circumstances = circumstancesFor(position, reading, oldTotal);
          const carried = carriedSetting(part, circumstances, { total, now, turns: 25 });
          const { outputs } = runSumOf(trimmerPreset, catalogue, {
            use: useOf(circumstances),
            reading: exactly(reading),
            oldTotal: exactly(oldTotal),
            total: exactly(total),
            now: exactly(now),
            turns: exactly(25),
          });
          const pairs = [
            [carried.set, outputs['set']],
            [carried.fromEnd, outputs['fromEnd']],
            [carried.perTurn, outputs['perTurn']],
            [carried.newRatio, outputs['newRatio']],
          ] as const;
          for (const [mine, sum] of pairs) expect(mine).toBeCloseTo(sum?.typ ?? NaN, 6);
          expect(carried.toGo).toBeCloseTo(outputs['go']?.typ ?? NaN, 6);
        },
      ),
      { numRuns: 60 },
    );
  });
});
