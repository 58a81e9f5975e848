import { describe, expect, test } from 'vitest';
import { neededRating } from '../../../src/engine/findings/voltage.ts';
import type { DeratingRow } from '../../../src/schemas/derating.ts';
import { given } from '../assessment/setting.ts';
import { holdTo, span, tryOut, type ByHand } from './by-hand.ts';
import { PROBE, type Spoiling } from './probe.ts';

/** Voltage against a rating of 100 V by invented rules, worked out by hand. */

const rule = (guideline: string, share: number, more: Partial<DeratingRow> = {}): DeratingRow => ({
  guideline,
  types: [PROBE],
  above_v: undefined,
  up_to_v: undefined,
  share,
  from_c: -55,
  to_c: 125,
  end_share: share,
  source: `rules-of-${guideline}`,
  locator: '',
  basis: 'published',
  note: '',
  ...more,
});

/** The whole rating up to 85 degC, half of it at 125 degC; the workshop takes four fifths. */
const rules = [
  rule('maker', 1, { to_c: 85 }),
  rule('maker', 1, { from_c: 85, end_share: 0.5 }),
  rule('workshop', 0.8, { basis: 'common-practice' }),
];

/** A mark of 60 V at 125 degC on parts of 100 V. */
const printed = {
  types: [PROBE],
  rated_v: 100,
  category_v: 60,
  from_c: 85,
  to_c: 125,
  source: 'sheet-of-marks',
  locator: '',
  basis: 'memory' as const,
  note: '',
};

/** Peaks of 20 + 0, 30 + 10 and 40 + 20 V. */
const used = {
  vdc: span(20, 30, 40),
  vac: span(0, 7.0711, 14.1421),
  ...given({ 't-max': 45, 'v-surge': 0 }),
};

const rated = ({ conditions, part, tables, ...more }: Spoiling = {}): Spoiling => ({
  ...more,
  part: { ratedVoltage: 100, ...part },
  tables: { derating: rules, categoryVoltages: [], ...tables },
  conditions: { ...used, ...conditions },
});

const byMaker = { properties: [], sources: ['rules-of-maker'], bases: ['published'] };
const byWorkshop = {
  properties: [],
  sources: ['rules-of-workshop'],
  bases: ['common-practice'],
};
const hot = given({ 't-max': 105 });
const surge = { 'v-surge': span(10, 50, 90) };
const direct = { voltage_sense: 'one sign' } as const;
const mains = { voltage_sense: 'ac' } as const;

const cases: Record<string, ByHand> = {
  '20, 40 and 60 V of 100 V': {
    finding: 'rated-voltage',
    spoiling: rated(),
    value: [0.2, 0.4, 0.6],
    figures: '40 V, 100 V, 1, 40 %',
    ...byMaker,
  },
  '20, 50 and 90 V where it is switched on': {
    finding: 'rated-voltage',
    spoiling: rated({ conditions: surge }),
    value: [0.2, 0.5, 0.9],
    figures: '50 V, 100 V, 1, 50 %',
    ...byMaker,
  },
  // Half way from 85 to 125 degC: 75 V.
  '20, 40 and 60 V of 75 V at 105 degC': {
    finding: 'rated-voltage',
    spoiling: rated({ conditions: hot }),
    value: [0.26667, 0.53333, 0.8],
    figures: '40 V, 100 V, 0.75, 53.3 %',
    ...byMaker,
  },
  // Half way from 100 V to 60 V: 80 V.
  'of 80 V at 105 degC, as printed for this very rating': {
    finding: 'rated-voltage',
    spoiling: rated({ conditions: hot, tables: { categoryVoltages: [printed] } }),
    value: [0.25, 0.5, 0.75],
    figures: '40 V, 100 V, 0.8, 50 %',
    properties: [],
    sources: ['sheet-of-marks'],
    bases: ['memory'],
  },
  '20, 40 and 60 V of four fifths of 100 V in use, whatever the switch-on': {
    finding: 'voltage-margin',
    spoiling: rated({ conditions: surge, tables: { categoryVoltages: [printed] } }),
    value: [0.25, 0.5, 0.75],
    figures: '40 V, 100 V, 0.8, 50 %',
    ...byWorkshop,
  },
  // Peaks of 20, 40 and 60 V, and 141.42 V at the peak of 100 V.
  'peaks against the peak of a rating for AC': {
    finding: 'voltage-margin',
    spoiling: rated({ part: { voltageKind: 'ac' } }),
    value: [0.176777, 0.353553, 0.53033],
    figures: '40 V, 2, 100 V, 0.8, 35.4 %',
    words: '√2 ×',
    ...byWorkshop,
  },
  '20, 50 and 90 V at switch-on against that peak': {
    finding: 'rated-voltage',
    spoiling: rated({ part: { voltageKind: 'ac' }, position: direct, conditions: surge }),
    value: [0.141421, 0.353553, 0.636396],
    figures: '50 V, 2, 100 V, 1, 35.4 %',
    ...byMaker,
  },
  // 0, 10 and 20 V at their peaks, which a rating for AC of 100 V has at 141.42 V.
  'alternating voltage against a rating for it, which bears what comes at switch-on': {
    finding: 'rated-voltage',
    spoiling: rated({
      part: { voltageKind: 'ac' },
      position: mains,
      conditions: { ...surge, vdc: span(0, 0, 0) },
    }),
    value: [0, 0.070711, 0.141421],
    figures: '10 V, 2, 100 V, 1, 7.07 %',
    ...byMaker,
  },
  'anything at all is too much above the highest temperature': {
    finding: 'rated-voltage',
    spoiling: rated({ conditions: given({ 't-max': 130 }) }),
    value: [Number.MAX_VALUE, Number.MAX_VALUE, Number.MAX_VALUE],
    figures: '40 V',
    words: 'may not be used',
    ...byMaker,
  },
  'but not nothing': {
    finding: 'rated-voltage',
    spoiling: rated({ conditions: given({ 't-max': 130, vdc: 0, vac: 0 }) }),
    value: [0, 0, 0],
    ...byMaker,
  },
  'a guideline of one part in four, which is chosen': {
    finding: 'voltage-margin',
    spoiling: rated({
      guideline: 'navy',
      tables: { derating: [...rules, rule('navy', 0.25)] },
    }),
    value: [0.8, 1.6, 2.4],
    figures: '40 V, 100 V, 0.25, 160 %',
    properties: [],
    sources: ['rules-of-navy'],
    bases: ['published'],
  },
  'the usual one where the one that is chosen is silent': {
    finding: 'voltage-margin',
    spoiling: rated({ guideline: 'navy' }),
    value: [0.25, 0.5, 0.75],
    words: 'the guideline is silent on this type',
    ...byWorkshop,
  },
  'the whole rating where nobody speaks of the type': {
    finding: 'voltage-margin',
    spoiling: rated({ tables: { derating: [] } }),
    value: [0.2, 0.4, 0.6],
    words: 'no guideline speaks of this type',
    properties: [],
    bases: ['memory'],
  },
  'the strictest of what an unmarked part can be': {
    finding: 'voltage-margin',
    spoiling: rated({
      type: { union_of: ['one', 'other', 'unspoken'] },
      tables: {
        derating: [
          rule('workshop', 0.9, { types: [PROBE] }),
          rule('workshop', 0.8, { types: ['one'], basis: 'memory' }),
          rule('workshop', 0.5, { types: ['other'], basis: 'common-practice' }),
        ],
      },
    }),
    value: [0.4, 0.8, 1.2],
    figures: '40 V, 100 V, 0.5, 80 %',
    ...byWorkshop,
  },
};

describe('voltage against a rating', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });
});

describe('the rating that is needed', () => {
  test.each<[string, Spoiling, 'dc' | 'ac', number]>([
    // 60 V at the most, and four fifths of it.
    ['60 V in use over 0.8', rated(), 'dc', 75],
    ['90 V at switch-on, which is more than 75', rated({ conditions: surge }), 'dc', 90],
    [
      '14.14 V RMS over 0.8',
      rated({ position: mains, conditions: { ...surge, vdc: span(0, 0, 0) } }),
      'ac',
      17.678,
    ],
    // Of 100 V for AC the peak is 141 V: 75 over 1.4142, and 90 over 1.4142.
    ['60 V over 0.8 as a peak', rated({ position: direct }), 'ac', 53.033],
    ['90 V as a peak', rated({ position: direct, conditions: surge }), 'ac', 63.64],
    // 60 V over 0.75; 60 over 0.8 is less.
    ['60 V over 0.75 at 105 degC', rated({ conditions: hot }), 'dc', 80],
    // Up to 50 V half is allowed: 120 V is above it. Above 50 V the whole: 60 V, by the workshop 75.
    [
      'the lowest of a band of ratings that passes in its band',
      rated({
        tables: {
          derating: [
            rule('maker', 0.5, { up_to_v: 50 }),
            rule('maker', 1, { above_v: 50 }),
            rule('workshop', 0.8),
          ],
        },
      }),
      'dc',
      75,
    ],
    // Ratings above 90 V are allowed a quarter: 240 V. Up to 90 V the whole: 75 V.
    [
      'none from a stricter band above, where a lower one serves',
      rated({
        tables: {
          derating: [
            rule('maker', 1, { up_to_v: 90 }),
            rule('maker', 0.25, { above_v: 90 }),
            rule('workshop', 0.8),
          ],
        },
      }),
      'dc',
      75,
    ],
    // Up to 70 V a fifth is allowed: 300 V; above it the whole, but then no less than 70 V.
    [
      'the border where less would do above it',
      rated({
        conditions: { vdc: span(0, 0, 40), vac: span(0, 0, 0) },
        tables: {
          derating: [
            rule('maker', 0.2, { up_to_v: 70 }),
            rule('maker', 1, { above_v: 70 }),
            rule('workshop', 0.8),
          ],
        },
      }),
      'dc',
      70,
    ],
  ])('%s', (_what, spoiling, voltageKind, volts) => {
    const { circumstances } = tryOut('voltage-margin', spoiling);
    const needed = neededRating({ type: PROBE, voltageKind }, circumstances);
    expect(needed / volts).toBeCloseTo(1, 3);
    // A rating is asked for again by every offer of a type.
    expect(neededRating({ type: PROBE, voltageKind }, circumstances)).toBe(needed);
  });

  test('is none above the highest temperature', () => {
    const { circumstances } = tryOut(
      'voltage-margin',
      rated({ conditions: given({ 't-max': 130 }) }),
    );
    expect(neededRating({ type: PROBE, voltageKind: 'dc' }, circumstances)).toBe(Infinity);
  });
});
