import { describe, expect, test } from 'vitest';
import type { Band, Knowledge } from '../../../src/engine/catalogue.ts';
import {
  conditionOf,
  conditionOr,
  knowledgeOf,
  rangeOf,
} from '../../../src/engine/findings/model.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { given, known, notKnown } from '../assessment/setting.ts';
import { base, holdTo, made, single, span, tryOut, type ByHand } from './by-hand.ts';
import { PROBE, probeIn, type Spoiling } from './probe.ts';

/** What is known of a part of some value and rating, and findings that go by what it is. */

describe('figures that go by the value or the rating', () => {
  const band = (percent: number, more: Omit<Band, 'knowledge'>): Band => ({
    ...more,
    knowledge: known(percent),
  });
  /** 1 % from 1 to 10 µF; 2 % from 50 V; 3 % below 1 nF up to 16 V; 4 % of the type. */
  const bands = [
    band(1, { values: { least: 1e-6, most: 1e-5 } }),
    band(2, { ratings: { least: 50 } }),
    band(3, { values: { most: 1e-9 }, ratings: { most: 16 } }),
  ];
  const { circumstances } = probeIn(base, {
    figures: { loss: known(4) },
    tables: { bands: { [PROBE]: { loss: bands } } },
  });
  const lossOf = (value?: number, rating?: number): number | undefined =>
    rangeOf(circumstances, { type: PROBE, value, rating }, 'loss')?.typ;

  test.each<[string, number | undefined, number | undefined, number]>([
    ['inside the first band, which counts before the next', 2e-6, 63, 1],
    ['at its lower end', 1e-6, 16, 1],
    ['at its upper end', 1e-5, 16, 1],
    ['within rounding of its lower end', 1e-6 * (1 - 5e-7), 16, 1],
    ['within rounding of its upper end', 1e-5 * (1 + 5e-7), 16, 1],
    ['just below it', 0.99e-6, 16, 4],
    ['just above it', 1.01e-5, 16, 4],
    ['by the rating alone', 1e-7, 63, 2],
    ['by the rating, of no known value', undefined, 50, 2],
    ['below that rating', 1e-7, 49, 4],
    ['where both must hold and do', 0.5e-9, 16, 3],
    ['where both must hold and the value does not', 2e-9, 16, 4],
    ['where both must hold and the rating does not', 0.5e-9, 25, 4],
    ['where neither is known', undefined, undefined, 4],
  ])('%s', (_what, value, rating, percent) => {
    expect(lossOf(value, rating)).toBe(percent);
  });

  test('are none of a type or a property that nobody has written of', () => {
    expect(knowledgeOf(circumstances, { type: 'unheard-of' }, 'loss')).toEqual(notKnown);
    expect(knowledgeOf(circumstances, { type: PROBE }, 'unheard-of')).toEqual(notKnown);
    expect(rangeOf(circumstances, { type: PROBE }, 'unheard-of')).toBeUndefined();
  });

  test('are none where a figure has no meaning', () => {
    const exempt: Knowledge = { status: 'not-applicable', sources: [] };
    const { circumstances: without } = probeIn(base, { figures: { loss: exempt } });
    expect(rangeOf(without, { type: PROBE }, 'loss')).toBeUndefined();
  });
});

describe('a condition', () => {
  const { circumstances } = probeIn(base, { conditions: { vdc: span(1, 2, 3) } });

  test('is as it is given', () => {
    expect(conditionOf(circumstances, 'vdc')).toEqual(span(1, 2, 3));
    expect(conditionOr(circumstances, 'vdc', 9)).toEqual(span(1, 2, 3));
  });

  test('that the position lacks is refused, or stood in for', () => {
    expect(() => conditionOf(circumstances, 'esr-min')).toThrow(/interstage-coupling.*esr-min/);
    expect(conditionOr(circumstances, 'esr-min', 9)).toEqual(exactly(9));
  });
});

const YEAR = 31_557_600;
/** A wet electrolytic that was six years on the shelf; it keeps three. */
const wet = (type: string, life: Knowledge, years: number): Spoiling => ({
  part: { type, capacitance: 1e-4, ratedVoltage: 50 },
  tables: { knowledge: { [type]: { 'shelf-life': life } } },
  conditions: given({ shelf: years * YEAR }),
});
const keeps = known(span(2 * YEAR, 3 * YEAR, 4 * YEAR));
const polar = { polarity: 'polar' } as const;
const backToBack = made({ kind: 'back-to-back' }, [single, single]);

const cases: Record<string, ByHand> = {
  'three years of the two to four that it keeps: the usual part still does': {
    finding: 'shelf',
    spoiling: wet(PROBE, keeps, 3),
    value: [0.75, 1, 1.5],
    figures: '3 years, 2–4 years, 75–150 %',
    properties: ['shelf-life'],
  },
  'six years for a type that is not re-formed': {
    finding: 'shelf',
    spoiling: wet(PROBE, keeps, 6),
    value: [1.5, 2, 3],
    words: 'before you trust it',
    properties: ['shelf-life'],
  },
  'a part fresh from the maker, of whatever life': {
    finding: 'shelf',
    spoiling: wet(PROBE, notKnown, 0),
    value: [0, 0, 0],
    properties: [],
  },
  'two back to back where the voltage alternates': {
    finding: 'polarity',
    spoiling: { part: backToBack, type: polar, position: { voltage_sense: 'ac' } },
    value: [0, 0, 0],
    words: 'non-polar pair; the voltage here is of both signs',
    properties: [],
  },
  'a film where the voltage keeps its sign': {
    finding: 'polarity',
    spoiling: { position: { voltage_sense: 'one sign' } },
    value: [0, 0, 0],
    words: 'non-polar part; the voltage here is of one sign',
    properties: [],
  },
  'an approval of two kinds': {
    finding: 'safety-class',
    spoiling: { type: { safety_classes: ['X2', 'Y2'] }, position: { safety: ['Y2'] } },
    value: [0, 0, 0],
    words: 'has X2, Y2',
    properties: [],
  },
  // 100 V over 250 V for AC; nothing of its share as one for DC.
  'a part rated for alternating volts goes by its rating alone': {
    finding: 'ac-voltage',
    spoiling: {
      part: { ratedVoltage: 250, voltageKind: 'ac' },
      figures: { 'ac-share': { status: 'not-applicable', sources: [] } },
      conditions: given({ vac: 100 }),
    },
    value: [0.4, 0.4, 0.4],
    figures: '100 V, 250 V, 40 %',
    properties: [],
  },
  'a kind that goes by the peak': {
    finding: 'ac-voltage',
    spoiling: {
      figures: { 'ac-share': { status: 'not-applicable', sources: [] } },
      conditions: given({ vac: 100 }),
    },
    value: [0, 0, 0],
    words: 'the peak counts',
    properties: [],
  },
  'no test of surges for its type': {
    finding: 'own-surge',
    spoiling: { conditions: given({ 'v-surge': 10, 'source-resistance': 1 }) },
    value: [0, 0, 0],
    properties: [],
  },
  // −50 to −40 below −20 degC are 20 to 30 K; 60 degC below 90 to 200 are 30 to 140 K.
  'in the cold it has less to spare than in the heat': {
    finding: 'temperature',
    spoiling: {
      figures: {
        'temperature-min': known(span(-50, -45, -40)),
        'temperature-max': known(span(90, 100, 85 + 115)),
      },
      conditions: given({ 't-min': -20, 't-max': 60 }),
    },
    value: [20, 25, 30],
    properties: ['temperature-min', 'temperature-max'],
  },
  'in the heat it has less to spare than in the cold': {
    finding: 'temperature',
    spoiling: {
      figures: {
        'temperature-min': known(span(-95, -90, -85)),
        'temperature-max': known(span(70, 75, 80)),
      },
      conditions: given({ 't-min': -20, 't-max': 60 }),
    },
    value: [10, 15, 20],
    properties: ['temperature-min', 'temperature-max'],
  },
};

describe('what a part is', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  test.each<[string, NonNullable<Spoiling['type']>, string]>([
    ['common', { market: 'common' }, 'made and stocked everywhere'],
    ['current', { market: 'current' }, 'made and stocked'],
    ['niche', { market: 'niche' }, 'made, but few stock it'],
  ])('of a market that is %s it is said so', (_what, type, words) => {
    expect(tryOut('availability', { type }).working).toBe(words);
  });

  test.each<[string, NonNullable<Spoiling['offer']>, number]>([
    ['up to the value of the part', { c_max: 1e-6 }, 0],
    ['from the value of the part', { c_min: 1e-6 }, 0],
    ['up to less', { c_max: 0.9e-6 }, 1],
    ['from more', { c_min: 1.1e-6 }, 1],
    ['of another voltage', { voltages: [63] }, 1],
    ['of another type', { type: 'pet-metallized', voltages: [1e6] }, 1],
  ])('an offer %s', (_what, offer, value) => {
    const { outcome } = tryOut('availability', { part: { capacitance: 1e-6 }, offer });
    expect(outcome).toMatchObject({ value: exactly(value) });
  });

  test('an offer without a source has none to name', () => {
    const { outcome } = tryOut('availability', { offer: { source: '' } });
    expect(outcome).toMatchObject({ sources: [] });
  });

  test('six years of the two to four that it keeps: it is re-formed, as a maker says', () => {
    const { outcome, working } = tryOut('shelf', wet('al-electrolytic-wet', keeps, 6));
    if (outcome.status === 'unknown') throw new Error('not known');
    expect([outcome.value.min, outcome.value.typ, outcome.value.max]).toEqual([1.5, 2, 3]);
    expect(outcome.sources).toContain('cde-reage-1993');
    expect(outcome.bases).toContain('published');
    // The last voltage is the rated one; what it says of others is told without a recipe.
    expect(working).toContain('and 50 V');
    expect(working).not.toContain('before you trust it');
  });
});
