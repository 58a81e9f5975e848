import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { carriedSetting, kindCircumstances, runSum, useOf } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

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
          const { outputs } = runSum(catalogue, 'trimmer-preset', {
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
