import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Judged } from '../../../src/engine/assessment/finding.ts';
import type { Part } from '../../../src/engine/assessment/parts.ts';
import {
  compareScores,
  decisiveDemand,
  fallsLessShort,
  score,
  type Scored,
} from '../../../src/engine/assessment/rank.ts';
import { verdictOrder } from '../../../src/engine/assessment/verdict.ts';
import { judged, type Weight } from './judged.ts';
import { circumstancesOf } from './setting.ts';

const circumstances = circumstancesOf({
  original: { type: 'pet-metallized' },
  position: 'sample-hold',
});

const plain: Part = {
  type: 'pet-metallized',
  capacitance: circumstances.original.capacitance,
  tolerance: { minus: 0.1, plus: 0.1 },
  ratedVoltage: 63,
  voltageKind: 'dc',
};

const scored = (all: Judged[], part: Partial<Part> = {}): Scored =>
  score({ ...plain, ...part }, all, circumstances);

const before = (a: Scored, b: Scored): void => {
  expect(compareScores(a, b)).toBeLessThan(0);
  expect(compareScores(b, a)).toBeGreaterThan(0);
};

const alike = (a: Scored, b: Scored): void => {
  expect(compareScores(a, b)).toBe(0);
};

describe('the order of parts', () => {
  test('puts a better verdict first, whatever else', () => {
    before(
      scored([judged('mild', 0.9)], { type: 'ptfe', capacitance: 1e-3, ratedVoltage: 1e4 }),
      scored([judged('hard', 1e-9), judged('strong', 1.5, { typical: 1e-9 })]),
    );
  });

  test('then the larger worst margin among hard demands', () => {
    before(
      scored([judged('hard', 0.3), judged('strong', 0.9), judged('mild', 0.9)]),
      scored([judged('hard', 0.9), judged('strong', 1e-3), judged('mild', 1e-3)]),
    );
  });

  test('then, of the same value, the larger worst margin among strong ones', () => {
    before(
      scored([judged('strong', 0.3), judged('mild', 0.9)]),
      scored([judged('strong', 0.9), judged('mild', 1e-3)]),
    );
  });

  test('lets the weakest link decide, not the mean', () => {
    before(
      scored([judged('strong', 0.4), judged('strong', 0.4)]),
      scored([judged('strong', 0.8), judged('strong', 1e-6)]),
    );
  });

  test('gives nothing for being more than ten times inside a limit', () => {
    alike(scored([judged('strong', 0.1)]), scored([judged('strong', 1e-9)]));
    alike(scored([judged('hard', 0.01)]), scored([judged('hard', 0)]));
  });

  test('gives nothing for a demand without degrees that is met', () => {
    alike(
      scored([judged('strong', 0.99, { graded: false })]),
      scored([judged('strong', 0.1, { graded: false })]),
    );
  });

  test('counts a demand without degrees that is not met', () => {
    before(
      scored([judged('strong', 2, { graded: false })]),
      scored([judged('strong', 5, { graded: false })]),
    );
  });

  test('takes margins within a tenth of a decade as alike', () => {
    alike(scored([judged('strong', 0.5)]), scored([judged('strong', 0.51)]));
  });

  test('puts stocked types before rare ones of the same worst margins', () => {
    before(
      scored([judged('strong', 0.5), judged('mild', 0.9)]),
      scored([judged('strong', 0.5), judged('mild', 0.1)], { type: 'ptfe' }),
    );
  });

  test('puts the nearer value first', () => {
    const old = circumstances.original.capacitance;
    before(scored([]), scored([], { capacitance: old * 2 }));
    before(scored([], { capacitance: old * 2 }), scored([], { capacitance: old / 10 }));
  });

  test('puts the looser tolerance and the lower rating first where nothing else differs', () => {
    before(scored([]), scored([], { tolerance: { minus: 0.05, plus: 0.05 } }));
    before(scored([]), scored([], { ratedVoltage: 100 }));
  });

  test('falls back on the name of the type', () => {
    before(scored([], { type: 'a' }), scored([], { type: 'b' }));
    alike(scored([]), scored([]));
  });
});

describe('the order is one', () => {
  const weight = fc.constantFrom<Weight>('hard', 'strong', 'mild');
  const one = fc
    .tuple(weight, fc.double({ min: 1e-6, max: 1e3, noNaN: true }), fc.boolean())
    .map(([each, unfavourable, graded]) => judged(each, unfavourable, { graded }));
  const part = fc.record({
    type: fc.constantFrom('pet-metallized', 'ptfe', 'ceramic-c0g', 'paper-wax'),
    capacitance: fc.constantFrom(1e-9, 1e-8, 2.2e-8, 1e-6),
    ratedVoltage: fc.constantFrom(16, 63, 630),
  });
  const any = fc.tuple(fc.array(one, { maxLength: 5 }), part).map(([all, own]) => scored(all, own));

  test('whichever way round two parts are compared', () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(Math.sign(compareScores(a, b)) === -Math.sign(compareScores(b, a))).toBe(true);
      }),
    );
  });

  test('through a third part', () => {
    fc.assert(
      fc.property(any, any, any, (a, b, c) => {
        const [x, y, z] = [a, b, c].toSorted(compareScores) as [Scored, Scored, Scored];
        expect(
          compareScores(x, y) <= 0 && compareScores(y, z) <= 0 && compareScores(x, z) <= 0,
        ).toBe(true);
      }),
    );
  });

  test('and never puts a worse verdict first', () => {
    fc.assert(
      fc.property(fc.array(any, { maxLength: 8 }), (all) => {
        const places = all
          .toSorted(compareScores)
          .map(({ verdict }) => verdictOrder.indexOf(verdict));
        expect(places.every((place, index) => place >= (places[index - 1] ?? 0))).toBe(true);
      }),
    );
  });
});

describe('falling less short', () => {
  test('is decided by the heavier demands', () => {
    const a = scored([judged('hard', 2), judged('strong', 100), judged('mild', 100)]);
    const b = scored([judged('hard', 5), judged('strong', 2), judged('mild', 2)]);
    expect([fallsLessShort(a, b), fallsLessShort(b, a)]).toEqual([true, false]);
  });

  test('counts every demand that is not met', () => {
    const a = scored([judged('strong', 3)]);
    const b = scored([judged('strong', 3), judged('strong', 2)]);
    expect([fallsLessShort(a, b), fallsLessShort(b, a)]).toEqual([true, false]);
  });

  test('takes nothing from demands that are met', () => {
    const a = scored([judged('strong', 3), judged('strong', 0.9)]);
    const b = scored([judged('strong', 3), judged('strong', 1e-6)]);
    expect([fallsLessShort(a, b), fallsLessShort(b, a)]).toEqual([false, false]);
  });
});

describe('the demand that decides', () => {
  test('is of those with the verdict the one furthest beyond its limit', () => {
    const all = [
      judged('strong', 2, { id: 'near' }),
      judged('strong', 8, { id: 'far' }),
      judged('mild', 9, { id: 'mild' }),
    ];
    expect(decisiveDemand(all, 'stopgap')).toBe('far');
  });

  test('is the heavier one where two are as far', () => {
    const all = [
      judged('mild', 20, { id: 'mild' }),
      judged('strong', 20, { typical: 5, id: 'strong' }),
    ];
    expect(decisiveDemand(all, 'stopgap')).toBe('strong');
  });

  test('has degrees where all is well', () => {
    const all = [
      judged('hard', 1, { graded: false, id: 'without' }),
      judged('strong', 0.5, { id: 'with' }),
    ];
    expect(decisiveDemand(all, 'fits')).toBe('with');
  });

  test('is no demand where there is none', () => {
    expect(decisiveDemand([], 'fits')).toBe('');
  });
});
