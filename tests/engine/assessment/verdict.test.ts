import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beyondLimit,
  verdictFor,
  verdictOrder,
  worse,
  type Verdict,
} from '../../../src/engine/assessment/verdict.ts';
import { findingModels } from '../../../src/engine/findings/index.ts';
import type { FindingModel, Limit } from '../../../src/engine/findings/model.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue } from './setting.ts';

type Weight = 'hard' | 'strong' | 'mild';
const rules = catalogue.verdictRules;

describe('verdict rules', () => {
  test.each<[Weight, number, number, Verdict]>([
    ['hard', 0, 0, 'fits'],
    ['hard', 1, 0.5, 'fits'],
    ['hard', 1.0005, 0.5, 'fits'],
    ['hard', 1.01, 0.5, 'keep-out'],
    ['hard', 1.01, 1.01, 'keep-out'],
    ['hard', Infinity, Infinity, 'keep-out'],
    ['strong', 1, 1, 'fits'],
    ['strong', 1.01, 1, 'fits-if'],
    ['strong', 1000, 0.99, 'fits-if'],
    ['strong', 2, 1.01, 'stopgap'],
    ['strong', 20, 9.9, 'stopgap'],
    ['strong', 20, 10.1, 'keep-out'],
    ['mild', 1000, 1, 'fits'],
    ['mild', 2, 1.01, 'fits-if'],
    ['mild', 20, 9.9, 'fits-if'],
    ['mild', 20, 10.1, 'stopgap'],
    ['mild', Infinity, Infinity, 'stopgap'],
    // What is no number meets nothing.
    ['hard', NaN, NaN, 'keep-out'],
    ['mild', NaN, NaN, 'stopgap'],
  ])('%s, %d at the worst and %d as usual: %s', (weight, unfavourable, typical, verdict) => {
    expect(verdictFor(rules, weight, { unfavourable, typical })).toBe(verdict);
  });

  test('say every verdict but "fits" for some weight', () => {
    const given = new Set(rules.map(({ verdict }) => verdict));
    expect(given).toEqual(new Set(['fits-if', 'stopgap', 'keep-out']));
  });

  const ratio = fc.double({ min: 0, max: 1e6, noNaN: true });

  test('never grow milder further beyond the limit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Weight>('hard', 'strong', 'mild'),
        ratio,
        ratio,
        fc.double({ min: 1, max: 100, noNaN: true }),
        (weight, unfavourable, typical, more) => {
          const nearer = verdictFor(rules, weight, { unfavourable, typical });
          const further = verdictFor(rules, weight, {
            unfavourable: unfavourable * more,
            typical: typical * more,
          });
          expect(worse(nearer, further) === further).toBe(true);
        },
      ),
    );
  });

  test('are never milder for a heavier weight', () => {
    fc.assert(
      fc.property(ratio, ratio, (a, b) => {
        const beyond = { unfavourable: Math.max(a, b), typical: Math.min(a, b) };
        const [hard, strong, mild] = (['hard', 'strong', 'mild'] as const).map((weight) =>
          verdictOrder.indexOf(verdictFor(rules, weight, beyond)),
        );
        expect(Number(hard) >= Number(strong) && Number(strong) >= Number(mild)).toBe(true);
      }),
    );
  });
});

describe('the worse of two verdicts', () => {
  test('is the later in the order, whichever way round', () => {
    for (const [index, better] of verdictOrder.entries()) {
      for (const other of verdictOrder.slice(index)) {
        expect(worse(better, other)).toBe(other);
        expect(worse(other, better)).toBe(other);
      }
    }
  });
});

describe('how far beyond a limit', () => {
  /** None: a plain ratio goes by no rule of thumb. */
  const rules = { rulesOfThumb: {} };
  const plain: FindingModel = {
    measure: () => ({ status: 'unknown', missing: [] }),
    working: () => '',
  };
  const { temperature } = findingModels;

  test.each<[string, number, Limit, number]>([
    ['half of an upper limit', 5, { high: 10 }, 0.5],
    ['at an upper limit', 10, { high: 10 }, 1],
    ['twice an upper limit', 20, { high: 10 }, 2],
    ['twice a lower limit', 20, { low: 10 }, 0.5],
    ['half of a lower limit', 5, { low: 10 }, 2],
    ['inside a window', 2, { low: 1, high: 4 }, 0.5],
    ['below a window', 0.5, { low: 1, high: 4 }, 2],
    ['above a window', 8, { low: 1, high: 4 }, 2],
    ['nothing against a limit of nothing', 0, { high: 0 }, 0],
    ['something against a limit of nothing', 1, { high: 0 }, Infinity],
    ['nothing against a lower limit', 0, { low: 1 }, Infinity],
    ['less than nothing against a lower limit', -2, { low: 1 }, Infinity],
    ['less than nothing against a lower limit of nothing', -2, { low: 0 }, Infinity],
    ['something against a lower limit of nothing', 2, { low: 0 }, 0],
    ['nothing against a lower limit of nothing', 0, { low: 0 }, 0],
    ['without any limit', 7, {}, 0],
  ])('%s', (_name, value, limit, beyond) => {
    expect(beyondLimit(plain, exactly(value), limit, rules)).toEqual({
      unfavourable: beyond,
      typical: beyond,
    });
  });

  test('is judged at the end of a range that is worse', () => {
    expect(beyondLimit(plain, { min: 1, typ: 5, max: 20 }, { high: 10 }, rules)).toEqual({
      unfavourable: 2,
      typical: 0.5,
    });
    expect(beyondLimit(plain, { min: 1, typ: 5, max: 20 }, { low: 2 }, rules)).toEqual({
      unfavourable: 2,
      typical: 0.4,
    });
  });

  test.each([
    [0, 10, 1],
    [-10, 10, 2],
    [20, 10, 0.25],
    [20, 20, 0.5],
  ])('counts %d K to spare, of which %d halve, as a factor of %d', (kelvin, halving, beyond) => {
    if (temperature === undefined) throw new Error('no model of temperature');
    const halvedBy = { rulesOfThumb: { halving: [halving] } };
    const { typical } = beyondLimit(temperature, exactly(kelvin), { low: 0 }, halvedBy);
    expect(typical).toBeCloseTo(beyond, 12);
  });
});
