import { describe, test } from 'vitest';
import { given, known } from '../assessment/setting.ts';
import { holdTo, made, single, span, type ByHand } from './by-hand.ts';

/** The mains, and voltages that are not what a part is marked for, worked out by hand. */

const cases: Record<string, ByHand> = {
  // 2π × 60 Hz × 3.76 nF × 207 V, × 4.7 nF × 230 V and × 5.64 nF × 253 V.
  '293, 408 and 538 µA through 4.7 nF at the highest frequency': {
    finding: 'touch-current',
    spoiling: {
      part: { capacitance: 4.7e-9, tolerance: { minus: 0.2, plus: 0.2 } },
      conditions: { vac: span(207, 230, 253), 'f-work': span(50, 50, 60) },
    },
    value: [293.42e-6, 407.5e-6, 537.9e-6],
    figures: '60 Hz, 3.76–5.64 nF, 207–253 V, 293–538 µA',
    properties: [],
  },
  // 0.9 MΩ × 80 nF, 1 MΩ × 100 nF and 1.1 MΩ × 120 nF; to a tenth ln 10 = 2.303 times as long.
  'time constants of 72, 100 and 132 ms': {
    finding: 'discharge',
    spoiling: {
      part: { capacitance: 1e-7, tolerance: { minus: 0.2, plus: 0.2 } },
      conditions: { bleeder: span(0.9e6, 1e6, 1.1e6) },
    },
    value: [0.072, 0.1, 0.132],
    figures: '0.9–1.1 MΩ, 80–120 nF, 72–132 ms, 37, 166–304 ms',
    properties: [],
  },
  // √2 × (207, 230 and 253 V) × exp(−100 / (72, 100 and 132)); 132 ms × ln(357.8 / 34) = 311 ms.
  '73, 120 and 168 V left after 100 ms': {
    finding: 'residual-voltage',
    spoiling: {
      part: { capacitance: 1e-7, tolerance: { minus: 0.2, plus: 0.2 } },
      conditions: {
        bleeder: span(0.9e6, 1e6, 1.1e6),
        vac: span(207, 230, 253),
        ...given({ 'discharge-time': 0.1, 'residual-allowed': 34 }),
      },
    },
    value: [72.99, 119.66, 167.74],
    figures: '358 V, −100 ms, 132 ms, 168 V, 34 V, 311 ms',
    properties: [],
  },
  '30 µF where 25 need no diode': {
    finding: 'regulator-dump',
    spoiling: {
      part: { capacitance: 30e-6 },
      conditions: given({ 'diode-free': 25e-6 }),
      original: { capacitance: 10e-6 },
    },
    value: [30e-6, 30e-6, 30e-6],
    figures: '30 µF, 25 µF',
    words: 'needs a reverse diode',
    properties: [],
  },
  'just 25 µF': {
    finding: 'regulator-dump',
    spoiling: { part: { capacitance: 25e-6 }, conditions: given({ 'diode-free': 25e-6 }) },
    value: [25e-6, 25e-6, 25e-6],
    figures: '25 µF, 25 µF',
    words: 'need no diode',
    properties: [],
  },
  // 10 V over 2 V of a share of 10 % of 20 V, over no more than 0.5 V.
  'ten times what the wrong way round bears': {
    finding: 'reverse-voltage',
    spoiling: {
      part: { capacitance: 1e-3, ratedVoltage: 20 },
      type: { polarity: 'polar' },
      figures: {
        'reverse-voltage': known(span(0.05, 0.1, 0.2)),
        'reverse-voltage-most': known(span(2, 2, 2)),
      },
      conditions: { 'v-reverse': span(1, 5, 10) },
    },
    value: [5, 5, 10],
    figures: '10 V, 1–2 V, 500–1000 %',
    properties: ['reverse-voltage', 'reverse-voltage-most'],
  },
  'a part that bears nothing the wrong way round': {
    finding: 'reverse-voltage',
    spoiling: {
      type: { polarity: 'polar' },
      figures: { 'reverse-voltage': known(0) },
      conditions: given({ 'v-reverse': 1 }),
    },
    value: [Number.MAX_VALUE, Number.MAX_VALUE, Number.MAX_VALUE],
    properties: ['reverse-voltage'],
  },
  'two back to back have no wrong way round': {
    finding: 'reverse-voltage',
    spoiling: {
      part: made({ kind: 'back-to-back' }, [single, single]),
      type: { polarity: 'polar' },
      conditions: given({ 'v-reverse': 1 }),
    },
    value: [0, 0, 0],
    words: 'either way round',
    properties: [],
  },
  // 100 V of 60, 100 and 125 V.
  '100 V where a share of 30, 50 and 80 % of 200 V is allowed, and 125 V before it glows': {
    finding: 'ac-voltage',
    spoiling: {
      part: { ratedVoltage: 200 },
      figures: { 'ac-share': known(span(0.3, 0.5, 0.8)), 'corona-start': known(125) },
      conditions: { vac: span(50, 80, 100) },
    },
    value: [0.8, 1, 1.6667],
    figures: '100 V, 60–125 V, 80–167 %',
    properties: ['ac-share', 'corona-start'],
  },
  'two of 100 V in a row glow at twice the voltage of one': {
    finding: 'ac-voltage',
    spoiling: {
      part: {
        ...made({ kind: 'series' }, [
          { ...single, ratedVoltage: 100 },
          { ...single, ratedVoltage: 100 },
        ]),
        ratedVoltage: 200,
      },
      figures: { 'ac-share': known(1), 'corona-start': known(50) },
      conditions: given({ vac: 100 }),
    },
    value: [1, 1, 1],
    figures: '100 V, 100 V, 100 %',
    properties: ['ac-share', 'corona-start'],
  },
};

describe('the mains, and voltages that a part is not marked for', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });
});
