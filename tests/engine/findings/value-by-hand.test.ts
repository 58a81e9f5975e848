import { describe, expect, test } from 'vitest';
import { given, known, notKnown } from '../assessment/setting.ts';
import { holdTo, holdUnknown, modelOf, span, tryOut, type ByHand } from './by-hand.ts';
import { PROBE, type Spoiling } from './probe.ts';

/** What becomes of a marked value, and of what goes by it, worked out by hand. */

const HOUR = 3600;
const SLOPE = 'temperature-coefficient';
const LIMITS = 'capacitance-change-temperature';

/** Nothing moves the value of the probe but what a case says. */
const still = {
  [SLOPE]: notKnown,
  [LIMITS]: notKnown,
  ageing: notKnown,
  'life-change': notKnown,
  'voltage-coefficient': notKnown,
};
const calm = given({ 't-min': 25, 't-max': 25, vdc: 0, years: 0, needed: 1e-6, load: 1e3 });

interface More extends Omit<Spoiling, 'conditions'> {
  conditions?: Record<string, number>;
}

/** A microfarad without tolerance, and what else a case says. */
const microfarad = ({ part, figures, conditions, ...more }: More = {}): Spoiling => ({
  ...more,
  part: { capacitance: 1e-6, ratedVoltage: 50, ...part },
  figures: { ...still, ...figures },
  conditions: { ...calm, ...given(conditions ?? {}) },
});

const tolerance = { minus: 0.2, plus: 0.25 };
const slope = { [SLOPE]: known(span(-1e-3, -2e-4, 5e-4)) };
/** Twenty kelvin below the mark, sixty above it. */
const outdoors = { 't-min': 5, 't-max': 85 };
const ageing = { ageing: known(span(0.01, 0.02, 0.04)) };
const bias = { 'voltage-coefficient': known(span(-0.4, -0.2, 0.1)) };

/** 0.8 to 1.25 of a microfarad, into 159.15 ohm: a corner of 1000 Hz by its mark. */
const coupling = (more: More = {}): Spoiling =>
  microfarad({
    ...more,
    part: { tolerance },
    conditions: { load: 159.155, frequency: 1000, ...more.conditions },
  });

/** The old part is the same, marked alike. */
const sameOld: NonNullable<Spoiling['original']> = { type: PROBE, capacitance: 1e-6 };

const cases: Record<string, ByHand> = {
  'two and a half times the ±10 % of the old part, by the worse side': {
    finding: 'tolerance-kept',
    spoiling: microfarad({
      part: { tolerance },
      original: { ...sameOld, tolerance: { minus: 0.1, plus: 0.05 } },
    }),
    value: [2.5, 2.5, 2.5],
    figures: '25 %, 10 %, 2.5 ×',
    properties: [],
  },
  'an old part that is said to be exact counts as of half a per cent': {
    finding: 'tolerance-kept',
    spoiling: microfarad({
      part: { tolerance: { minus: 0.01, plus: 0.01 } },
      original: { ...sameOld, tolerance: { minus: 0, plus: 0 } },
    }),
    value: [2, 2, 2],
    figures: '1 %, 0.5 %, 2 ×',
    properties: [],
  },
  'a microfarad that nothing moves': {
    finding: 'kept-value',
    spoiling: microfarad(),
    value: [1e-6, 1e-6, 1e-6],
    figures: '1 µF, 1 µF, 1 ×',
    words: 'nothing moves it',
    properties: [],
  },
  '−20 and +25 % of a microfarad': {
    finding: 'kept-value',
    spoiling: microfarad({ part: { tolerance } }),
    value: [0.8e-6, 1e-6, 1.25e-6],
    figures: '1 µF, −20 to 25 %, 0.8–1.25 µF, 0.8 ×',
    words: 'tolerance',
    properties: [],
  },
  // −1000 ppm/K: +2 % in the cold, −6 % in the heat; 500 ppm/K: −1 % and +3 %.
  '−6 and +3 % by a slope of −1000 to +500 ppm/K from −20 to +60 K': {
    finding: 'kept-value',
    spoiling: microfarad({ figures: slope, conditions: outdoors }),
    value: [0.94e-6, 1e-6, 1.03e-6],
    figures: '1 µF, −6 to 3 %, 0.94–1.03 µF, 0.94 ×',
    words: 'temperature',
    properties: [SLOPE],
  },
  // −100 to −50 ppm/K over −20 and +60 K.
  '−0.6 and +0.2 % by a slope of one sign': {
    finding: 'kept-value',
    spoiling: microfarad({
      figures: { [SLOPE]: known(span(-1e-4, -7e-5, -5e-5)) },
      conditions: outdoors,
    }),
    value: [0.994e-6, 1e-6, 1.002e-6],
    properties: [SLOPE],
  },
  'limits of −30 and +10 %, whatever the temperatures': {
    finding: 'kept-value',
    spoiling: microfarad({ figures: { [LIMITS]: known(span(-0.3, -0.1, 0.1)) } }),
    value: [0.7e-6, 1e-6, 1.1e-6],
    figures: '1 µF, −30 to 10 %, 0.7–1.1 µF, 0.7 ×',
    properties: [LIMITS],
  },
  // 10 000 h are four decades: 4, 8 and 16 %; a part just fitted has lost nothing, on the way half.
  'up to 16 % by ageing in 10 000 hours, 4 % on the way': {
    finding: 'kept-value',
    spoiling: microfarad({ figures: ageing, conditions: { years: 1e4 * HOUR } }),
    value: [0.84e-6, 0.96e-6, 1e-6],
    figures: '1 µF, −16 to 0 %, 0.84–1 µF, 0.84 ×',
    words: 'age',
    properties: ['ageing'],
  },
  'three decades of it gone from an old part, whatever the years to come': {
    finding: 'kept-value',
    spoiling: microfarad({
      part: { age: 1000 * HOUR },
      figures: ageing,
      conditions: { years: 1e4 * HOUR },
    }),
    value: [0.88e-6, 0.94e-6, 0.97e-6],
    properties: ['ageing'],
  },
  'no more than 30 % over the life of an old part that does not age by decades': {
    finding: 'kept-value',
    spoiling: microfarad({
      part: { age: 1000 * HOUR },
      figures: { ageing: known(0), 'life-change': known(span(0.1, 0.2, 0.3)) },
      conditions: { years: 1e4 * HOUR },
    }),
    value: [0.7e-6, 1e-6, 1e-6],
    figures: '1 µF, −30 to 0 %, 0.7–1 µF, 0.7 ×',
    properties: ['life-change'],
  },
  'nothing by a life that has no years': {
    finding: 'kept-value',
    spoiling: microfarad({ figures: { 'life-change': known(0.3) } }),
    value: [1e-6, 1e-6, 1e-6],
    figures: '1 µF, 1 µF, 1 ×',
    properties: [],
  },
  'half of −40, −20 and +10 % at half the rated voltage': {
    finding: 'kept-value',
    spoiling: microfarad({ figures: bias, conditions: { vdc: 25 } }),
    value: [0.8e-6, 0.9e-6, 1.05e-6],
    figures: '1 µF, −20 to 5 %, 0.8–1.05 µF, 0.8 ×',
    words: 'bias',
    properties: ['voltage-coefficient'],
  },
  'no bias, no matter what it would do': {
    finding: 'kept-value',
    spoiling: microfarad({ figures: bias }),
    value: [1e-6, 1e-6, 1e-6],
    properties: [],
  },
  // 0.8 × 0.94 × 0.84 × 0.8; 0.96 × 0.9; 1.25 × 1.03 × 1.05.
  'all of these at once': {
    finding: 'kept-value',
    spoiling: microfarad({
      part: { tolerance },
      figures: { ...slope, ...ageing, ...bias },
      conditions: { ...outdoors, years: 1e4 * HOUR, vdc: 25 },
    }),
    value: [0.50535e-6, 0.864e-6, 1.3519e-6],
    figures: '1 µF, −20 to 25 %, −6 to 3 %, −16 to 0 %, −20 to 5 %, 0.505–1.35 µF, 0.505 ×',
    properties: [SLOPE, 'ageing', 'voltage-coefficient'],
  },
  // Of 2 µF marked, 1 µF is half; at worst 1/0.8 of the frequency it should be for 1 µF.
  'a corner 25 % too high and 20 % too low': {
    finding: 'filter-shift',
    spoiling: { ...microfarad({ part: { tolerance } }), original: sameOld },
    value: [0, 0, 0.25],
    figures: '0.8–1.25 µF, 1 µF, 0–25 %, 1',
    words: '1/C',
    properties: [],
  },
  // 1 / √0.8 = 1.118, 1 / √1.25 = 0.894.
  'a resonance 11.8 % too high': {
    finding: 'tuning-shift',
    spoiling: { ...microfarad({ part: { tolerance } }), original: sameOld },
    value: [0, 0, 0.11803],
    figures: '0.8–1.25 µF, 1 µF, 0–11.8 %, 1',
    words: '√C',
    properties: [],
  },
  'half the time, 37.5 to 60 % less of it, for two microfarads': {
    finding: 'time-shift',
    spoiling: {
      ...microfarad({ part: { tolerance } }),
      original: { ...sameOld, capacitance: 2e-6 },
    },
    value: [0.375, 0.5, 0.6],
    figures: '0.8–1.25 µF, 2 µF, 37.5–60 %',
    words: 'goes with C',
    properties: [],
  },
  // At its own corner −3.01 dB; −10 log10(1 + 0.8²) = −2.15 dB and −10 log10(1 + 1.25²) = −4.09 dB.
  'corners of 800, 1000 and 1250 Hz': {
    finding: 'corner',
    spoiling: coupling({ figures: { [SLOPE]: known(0) } }),
    value: [800, 1000, 1250],
    figures: '1, 159 Ω, 0.8–1.25 µF, 0.8–1.25 kHz, 1 kHz, −2.15 dB, −4.09 dB',
    properties: [SLOPE],
  },
  'leads of atan(0.8), 45 and atan(1.25) degrees': {
    finding: 'phase',
    spoiling: coupling({ figures: { [SLOPE]: known(0) } }),
    value: [38.66, 45, 51.34],
    figures: '0.8–1.25 kHz, 1 kHz, 38.7–51.3°',
    properties: [SLOPE],
  },
  // 4 / (15 π) = 0.0849 × 0.1 × √2 × 2 V × (1/√2)² / 50 V, and as much for 0.2 and 0.4.
  'third harmonics of 240, 480 and 960 ppm by 10, 20 and 40 % at the rating': {
    finding: 'distortion',
    spoiling: coupling({
      figures: { 'voltage-coefficient': known(span(-0.4, -0.2, -0.1)) },
      conditions: { signal: 2 },
    }),
    value: [240.1e-6, 480.2e-6, 960.3e-6],
    figures: '0.085, −40 to −10 %, 2, 2 V, 0.707, 50 V, 0.024–0.096 %',
    properties: ['voltage-coefficient'],
  },
  'none at the least where the change may have either sign': {
    finding: 'distortion',
    spoiling: coupling({
      figures: { 'voltage-coefficient': known(span(-0.2, 0.1, 0.4)) },
      conditions: { signal: 2 },
    }),
    value: [0, 240.1e-6, 960.3e-6],
    properties: ['voltage-coefficient'],
  },
  'some where one end is no change: from there on': {
    finding: 'distortion',
    spoiling: coupling({
      figures: { 'voltage-coefficient': known(span(0.1, 0.2, 0.4)) },
      conditions: { signal: 2 },
    }),
    value: [240.1e-6, 480.2e-6, 960.3e-6],
    properties: ['voltage-coefficient'],
  },
  '80 K of −1000, −200 and +500 ppm/K': {
    finding: 'drift',
    spoiling: microfarad({ figures: slope, conditions: outdoors }),
    value: [0, 0.016, 0.08],
    figures: '−1000 to 500 ppm/K, 80 K, 0–8 %',
    properties: [SLOPE],
  },
  'the width of limits of −30 and +10 %, half of it as usual': {
    finding: 'drift',
    spoiling: microfarad({
      figures: { [LIMITS]: known(span(-0.3, -0.1, 0.1)) },
      conditions: outdoors,
    }),
    value: [0, 0.2, 0.4],
    figures: '−30 %, +10 %, 0–40 %',
    properties: [LIMITS],
  },
  // 1200 log2((1 + d/2) / (1 − d/2)) of 0.8, 1.6 and 4 %.
  '13.85, 27.7 and 69.3 cents over 80 K of 100, 200 and 500 ppm/K': {
    finding: 'pitch-drift',
    spoiling: microfarad({
      figures: { [SLOPE]: known(span(1e-4, 2e-4, 5e-4)) },
      conditions: { ...outdoors, 'resistor-tc': 0 },
    }),
    value: [13.85, 27.7, 69.26],
    figures: '100–500 ppm/K, 80 K, 13.8–69.3 cents',
    properties: [SLOPE],
  },
  // 200, 300 and 400 less 300 ppm/K are −100, 0 and 100: 0.8 % at either end, none between.
  'none to 13.85 cents with a resistor of −300 ppm/K, where alone it is 27.7 to 55.4': {
    finding: 'pitch-drift',
    spoiling: microfarad({
      figures: { [SLOPE]: known(span(2e-4, 3e-4, 4e-4)) },
      conditions: { ...outdoors, 'resistor-tc': -3e-4 },
    }),
    value: [0, 0, 13.85],
    figures: '200–400 ppm/K, 80 K, 27.7–55.4 cents, −300 ppm/K, 0–13.8 cents',
    properties: [SLOPE],
  },
  // 0, 1 and 2 % by the limits, 0.8 % more by 100 ppm/K over 80 K: 0.8, 1.8 and 2.8 %.
  'a part without a slope is not balanced: what the resistor does comes on top': {
    finding: 'pitch-drift',
    spoiling: microfarad({
      figures: { [LIMITS]: known(span(-0.01, 0, 0.01)) },
      conditions: { ...outdoors, 'resistor-tc': -1e-4 },
    }),
    value: [13.85, 31.16, 48.48],
    properties: [LIMITS],
  },
  '4, 8 and 16 % in four decades of hours': {
    finding: 'ageing',
    spoiling: microfarad({ figures: ageing, conditions: { years: 1e4 * HOUR } }),
    value: [0.04, 0.08, 0.16],
    figures: '1–4 %, 4, 4–16 %',
    properties: ['ageing'],
  },
  '3, 6 and 12 % gone from an old part in three decades': {
    finding: 'ageing',
    spoiling: microfarad({
      part: { age: 1000 * HOUR },
      figures: { ...ageing, 'life-change': known(0.5) },
      conditions: { years: 1e4 * HOUR },
    }),
    value: [0.03, 0.06, 0.12],
    // By its own age, whatever is still to come.
    figures: '1–4 %, 3, 3–12 %',
    properties: ['ageing'],
  },
  '10 to 30 % over its life, where it does not age by decades': {
    finding: 'ageing',
    spoiling: microfarad({
      figures: { ageing: known(0), 'life-change': known(span(0.1, 0.2, 0.3)) },
      conditions: { years: 1e4 * HOUR },
    }),
    value: [0.1, 0.2, 0.3],
    figures: '10–30 %',
    properties: ['life-change'],
  },
  'none where it is known not to age, and of its life nothing is known': {
    finding: 'ageing',
    spoiling: microfarad({ figures: { ageing: known(0) }, conditions: { years: 1e4 * HOUR } }),
    value: [0, 0, 0],
    figures: '0 %',
    properties: ['ageing'],
  },
  'three microfarads for two': {
    finding: 'value',
    spoiling: microfarad({ part: { capacitance: 3e-6 }, original: { capacitance: 2e-6 } }),
    value: [1.5, 1.5, 1.5],
    figures: '3 µF, 2 µF, 1.5 ×',
    properties: [],
  },
  'the worse side of −20 and +80 %': {
    finding: 'tolerance',
    spoiling: microfarad({ part: { tolerance: { minus: 0.2, plus: 0.8 } } }),
    value: [0.8, 0.8, 0.8],
    figures: '+80 %, −20 %',
    properties: [],
  },
  '10 % either way of a part that is set by hand': {
    finding: 'tolerance',
    spoiling: microfarad({
      type: { family: 'air' },
      part: { tolerance: { minus: 0.1, plus: 0.1 } },
    }),
    value: [0, 0, 0],
    figures: '±10 %',
    properties: [],
  },
  '10 % either way': {
    finding: 'tolerance',
    spoiling: microfarad({ part: { tolerance: { minus: 0.1, plus: 0.1 } } }),
    value: [0.1, 0.1, 0.1],
    figures: '±10 %',
    properties: [],
  },
};

describe('what becomes of a marked value', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  test.each<[string, string]>([
    ['drift', SLOPE],
    ['pitch-drift', SLOPE],
    ['ageing', 'ageing'],
    ['distortion', 'voltage-coefficient'],
  ])('%s is not known without %s', (id, missing) => {
    const conditions = { ...outdoors, 'resistor-tc': 0, signal: 1, frequency: 1 };
    holdUnknown(id, microfarad({ conditions }), [missing]);
  });
});

describe('what is said of the old part', () => {
  const today = (finding: string, original: NonNullable<Spoiling['original']>): string =>
    modelOf(finding)
      .today?.(tryOut(finding, { ...coupling({ figures: ageing }), original }).circumstances)
      .replaceAll('\u00A0', ' ') ?? '';

  test.each(['kept-value', 'corner', 'phase', 'filter-shift', 'ageing'])(
    '%s: three decades of hours have taken 3 to 12 %%',
    (finding) => {
      expect(today(finding, { ...sameOld, age: 1000 * HOUR })).toMatch(/41\.7 days.* 3–12 %/);
      expect(today(finding, { ...sameOld, type: 'pet-metallized', age: 1000 * HOUR })).toBe('');
    },
  );
});
