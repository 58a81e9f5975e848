import { describe, expect, test } from 'vitest';
import { offeredParts } from '../../../src/engine/candidates/generate.ts';
import { leastSecond } from '../../../src/engine/candidates/singles.ts';
import { withResistor } from '../../../src/engine/candidates/with-resistor.ts';
import { ruleOf, rulesOf, type RuleOfThumb } from '../../../src/engine/rule-of-thumb.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { lowerRating } from '../../../src/substitution/lower-rating.ts';
import { circumstancesOf, given, known, notKnown } from '../assessment/setting.ts';
import { base, modelOf, single, span, tryOut } from './by-hand.ts';
import { probeIn, type Spoiling } from './probe.ts';

/** What assessments come to where the tables have other rules of thumb: no number is the code's own. */

const { rulesOfThumb } = base.catalogue;

const withRule = (id: RuleOfThumb, ...values: number[]) => ({
  rulesOfThumb: { ...rulesOfThumb, [id]: values },
});

/** The middle of a finding under the rules of the tables, and under another. */
const both = (
  finding: string,
  spoiling: Spoiling,
  [id, ...values]: [RuleOfThumb, ...number[]],
): number[] =>
  [{}, withRule(id, ...values)].map((rules) => {
    const tables = { ...spoiling.tables, ...rules };
    const { outcome } = tryOut(finding, { ...spoiling, tables });
    return outcome.status === 'known' ? outcome.value.typ : NaN;
  });

describe('findings', () => {
  test.each<[string, string, Spoiling, [RuleOfThumb, number], [now: number, then: number]]>([
    [
      'two per cent over a half of the closest, and over one',
      'tolerance-kept',
      {
        part: { tolerance: { minus: 0.02, plus: 0.02 } },
        original: { tolerance: { minus: 0, plus: 0 } },
      },
      ['closest-tolerance', 0.01],
      [4, 2],
    ],
    [
      'a lead of 0.6 mm and 0.2 of clearance, and 0.5',
      'lead-wire',
      { figures: { 'lead-wire': known(0.6e-3) }, conditions: given({ hole: 1e-3 }) },
      ['lead-clearance', 0.5e-3],
      [0.8e-3, 1.1e-3],
    ],
    [
      // 10 V over 1 s / 1 nF leak 10 nA at 25 °C; 20 K are two halvings of ten, and one of twenty.
      'insulation a quarter at 45 °C, and a half',
      'leakage-current',
      {
        figures: { 'insulation-rc': known(1), 'insulation-halving': notKnown },
        part: { capacitance: 1e-9 },
        conditions: given({ 't-max': 45, vdc: 10 }),
      },
      ['halving', 20],
      [4e-8, 2e-8],
    ],
  ])('%s', (_what, finding, spoiling, rule, wanted) => {
    const found = both(finding, spoiling, rule);
    wanted.forEach((each, at) => {
      expect(found[at]).toBeCloseTo(each, 12);
    });
  });

  test('a part is of use up to four times its resonance, and up to two', () => {
    const lowest = [{}, withRule('beyond-resonance', 2)].map((tables) => {
      // An old part without any inductance, so that its own resonance asks nothing less.
      const { circumstances } = probeIn(base, { tables, conditions: given({ 'f-work': 1e6 }) });
      const knowledge = {
        ...circumstances.catalogue.knowledge,
        [circumstances.original.type]: { inductance: known(1e-18) },
      };
      const catalogue = { ...circumstances.catalogue, knowledge };
      return modelOf('self-resonance').limit?.({ ...circumstances, catalogue }).low;
    });
    expect(lowest).toEqual([250_000, 500_000]);
  });
});

describe('a resistor beside a capacitor', () => {
  const own = span(0.1, 0.2, 0.3);
  const put = (rules: typeof base.catalogue, current?: number) =>
    withResistor(rules, single, own, { low: 1, high: 10, best: 100 }, current)[0]?.made;
  const other = (id: RuleOfThumb, ...values: number[]) => ({
    ...base.catalogue,
    ...withRule(id, ...values),
  });

  // 0.3 A in 8.2 ohm are 0.738 W: twice that asks for 2 W, three times for 3 W.
  test.each<[string, typeof base.catalogue, number | undefined]>([
    ['twice the heat, of the powers that are sold', base.catalogue, 2],
    ['three times the heat', other('resistor-power-in-hand', 3), 3],
    ['the next of other powers', other('resistor-powers', 1, 4), 4],
    ['none where no power is enough', other('resistor-powers', 1), undefined],
  ])('is rated for %s', (_what, rules, watt) => {
    expect(put(rules, 0.3)?.power).toBe(watt);
  });

  test('is as close as resistors are sold', () => {
    // (10 − 0.3) / 1.05 = 9.24 and 8.2 ohm is the next of E12; / 1.2 = 8.08 and 6.8 ohm is.
    expect(put(base.catalogue)?.resistor).toBeCloseTo(8.2, 9);
    expect(put(other('resistor-tolerance', 0.2))?.resistor).toBeCloseTo(6.8, 9);
  });
});

describe('what is offered', () => {
  /** 50 nF is made no more; of E24 51 nF of ±1 % lies nearer than 47 nF of ±10 %. */
  const first = (rules: object): number => {
    const [template] = base.catalogue.offers.filter(({ type }) => type === 'pp-metallized');
    if (template === undefined) throw new Error('no offer of polypropylene');
    const offers = [
      { ...template, c_min: 1e-9, c_max: 1e-6, tolerances: ['1'], series: 'E24' },
      { ...template, c_min: 1e-9, c_max: 1e-6, tolerances: ['10'], series: 'E12' },
    ];
    const circumstances = circumstancesOf(
      {
        original: { type: 'pet-metallized', capacitance: exactly(50e-9) },
        position: 'agc-bypass',
      },
      { ...base.catalogue, ...rules, offers },
    );
    const [part] = offeredParts(circumstances.catalogue, 'pp-metallized', circumstances);
    return part?.capacitance ?? NaN;
  };

  test.each<[string, object, number]>([
    ['6 % below is as near as 2 % above', {}, 47e-9],
    ['with 5 % for the most it is not', withRule('as-good-as-nearest', 0.05), 51e-9],
    // A by-pass for gain control does with 80 % of the value, which then makes it a close one.
    ['nor where a place must do with less for that', withRule('loose-value', 0.4), 51e-9],
  ])('%s', (_what, rules, farad) => {
    expect(first(rules)).toBeCloseTo(farad, 12);
  });

  /** What an electrolytic of a value that is made no more is replaced by, first of all. */
  const instead = (microfarad: number, position: string, rules: object = {}): number => {
    const circumstances = circumstancesOf(
      {
        original: { type: 'al-electrolytic-wet', capacitance: exactly(microfarad * 1e-6) },
        position,
      },
      { ...base.catalogue, ...rules },
    );
    const [part] = offeredParts(circumstances.catalogue, 'al-electrolytic-wet', circumstances);
    return Math.round((part?.capacitance ?? NaN) * 1e7) / 10;
  };

  test.each<[string, old: number, position: string, instead: number, rules?: object]>([
    ['at least 8: a quarter more rather than 15 % less', 8, 'bulk-rail', 10],
    ['at least 40: a sixth more', 40, 'bulk-rail', 47],
    ['at least 18: a fifth more', 18, 'emitter-bypass', 22],
    ['at least 56: a fifth more', 56, 'cathode-bypass', 68],
    ['at least 25: 12 % less, since the next is a third more', 25, 'cathode-bypass', 22],
    ['at least 16: 6 % less are as good as nothing', 16, 'bulk-rail', 15],
    ['at least 50: as well', 50, 'output-coupling', 47],
    ['at least 100, which is made', 100, 'bulk-rail', 100],
    ['a place that wants the same value: the nearest', 8, 'meter-damping', 6.8],
    [
      'with less than a quarter more for the most',
      8,
      'bulk-rail',
      6.8,
      withRule('rather-more', 1.2),
    ],
    ['with half more for the most', 25, 'cathode-bypass', 33, withRule('rather-more', 1.5)],
  ])('%s', (_what, old, position, wanted, rules) => {
    expect(instead(old, position, rules)).toBe(wanted);
  });

  // 15 V are needed of a memory for a few volts, 1500 V of a part across 1 kV.
  test.each<[string, volts: number, has1600: boolean, rules?: object]>([
    ['none for pulses where a few volts stand', 5, false],
    ['one where a third of its rating is needed', 1000, true],
    ['one where as much counts as plain', 5, true, withRule('highest-plain-rating', 1600)],
  ])('%s', (_what, volts, has1600, rules) => {
    const circumstances = circumstancesOf(
      {
        original: { type: 'silvered-mica', capacitance: exactly(10e-9) },
        position: 'memory-hold',
        conditions: given({ vdc: volts, 'v-surge': volts }),
      },
      { ...base.catalogue, ...rules },
    );
    const parts = offeredParts(circumstances.catalogue, 'pp-metallized', circumstances);
    expect(parts.some(({ ratedVoltage }) => ratedVoltage === 1600)).toBe(has1600);
  });

  test('a second part is no smaller than its share of the whole', () => {
    const { circumstances } = probeIn(base, {});
    const { capacitance } = circumstances.original;
    expect(leastSecond(circumstances)).toBeCloseTo(0.04 * capacitance, 15);
    const catalogue = { ...circumstances.catalogue, ...withRule('smallest-second-part', 0.1) };
    expect(leastSecond({ ...circumstances, catalogue })).toBeCloseTo(0.1 * capacitance, 15);
  });
});

test.each<[string, typeof rulesOfThumb, volts: number, isHigh: boolean]>([
  ['from 200 V on', rulesOfThumb, 200, true],
  ['below that', rulesOfThumb, 199, false],
  ['from another rating on', withRule('valve-rating', 350).rulesOfThumb, 349, false],
  ['from that rating on', withRule('valve-rating', 350).rulesOfThumb, 350, true],
])('an old part may come from a circuit with valves: %s', (_what, rules, volts, isHigh) => {
  const original = { type: 'paper-wax', ratedVoltage: exactly(volts) };
  const lower = lowerRating({ rulesOfThumb: rules }, { original }, { ...single, ratedVoltage: 63 });
  expect(lower?.isHigh).toBe(isHigh);
});

test('a rule that a slice lacks is a mistake that is named', () => {
  expect(() => ruleOf({ rulesOfThumb: {} }, 'halving')).toThrow(/halving/);
  expect(rulesOf({ rulesOfThumb: { 'resistor-powers': [1, 2] } }, 'resistor-powers')).toEqual([
    1, 2,
  ]);
});
