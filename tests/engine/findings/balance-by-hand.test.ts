import { describe, test } from 'vitest';
import { given, known, notKnown } from '../assessment/setting.ts';
import { holdTo, holdUnknown, span, type ByHand } from './by-hand.ts';
import type { Spoiling } from './probe.ts';

/** What is left of a drift that the slope of the old part balanced, over 80 K, worked out by hand. */

const SLOPE = 'temperature-coefficient';
const LIMITS = 'capacitance-change-temperature';

const over80K = (figures: Spoiling['figures'], old: number): Spoiling => ({
  figures: { [SLOPE]: notKnown, [LIMITS]: notKnown, ...figures },
  conditions: given({ 't-min': 5, 't-max': 85, 'tc-old': old }),
});

const cases: Record<string, ByHand> = {
  // 100, 200 and 500 ppm/K.
  'all of it where nothing was balanced': {
    finding: 'balanced-drift',
    spoiling: over80K({ [SLOPE]: known(span(1e-4, 2e-4, 5e-4)) }, 0),
    value: [0.008, 0.016, 0.04],
    figures: '100–500 ppm/K, 80 K, 0.8–4 %',
    properties: [SLOPE],
  },
  // −30, 0 and 30 in place of −750 ppm/K are 720, 750 and 780 ppm/K off.
  '5.8 to 6.2 % where a steady part takes the place of −750 ppm/K': {
    finding: 'balanced-drift',
    spoiling: over80K({ [SLOPE]: known(span(-3e-5, 0, 3e-5)) }, -7.5e-4),
    value: [0.0576, 0.06, 0.0624],
    figures: '±30 ppm/K, 80 K, 0–0.24 %, −750 ppm/K, 5.76–6.24 %',
    properties: [SLOPE],
  },
  // −870, −750 and −630 less −750 ppm/K: 120 to either side.
  'hardly any by one of the same grade': {
    finding: 'balanced-drift',
    spoiling: over80K({ [SLOPE]: known(span(-8.7e-4, -7.5e-4, -6.3e-4)) }, -7.5e-4),
    value: [0, 0, 0.0096],
    properties: [SLOPE],
  },
  // 0, 1 and 2 % by the limits, and 0.8 % by 100 ppm/K that nothing balances any more.
  'both where a part has no slope of its own': {
    finding: 'balanced-drift',
    spoiling: over80K({ [LIMITS]: known(span(-0.01, 0, 0.01)) }, 1e-4),
    value: [0.008, 0.018, 0.028],
    properties: [LIMITS],
  },
};

describe('drift beside the old part', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  test('is not known without a slope', () => {
    holdUnknown('balanced-drift', over80K({}, -7.5e-4), [SLOPE]);
  });
});
