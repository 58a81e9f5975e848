import { describe, test } from 'vitest';
import { given, known, notKnown } from '../assessment/setting.ts';
import { holdTo, holdUnknown, span, type ByHand } from './by-hand.ts';
import type { Spoiling } from './probe.ts';

/** What holds a voltage: steps, settling, creep, droop and leakage, worked out by hand. */

/** 10 nF, by its tolerance 8 to 12.5 nF. */
const tenNanofarad: NonNullable<Spoiling['part']> = {
  capacitance: 1e-8,
  tolerance: { minus: 0.2, plus: 0.25 },
};
const oneMicrofarad: NonNullable<Spoiling['part']> = { capacitance: 1e-6 };

const noResistance = { 'esr-100khz': notKnown };
const noLoss = {
  'dissipation-factor-120hz': notKnown,
  'dissipation-factor-1khz': notKnown,
  'dissipation-factor-1mhz': notKnown,
};

const charge = { 'charge-injected': span(50e-12, 100e-12, 200e-12) };

/** ln(10 V / 10 mV) = 6.908 time constants. */
const settling = given({ step: 10, 'error-budget': 0.01 });

/** By time constants of 1, 4 and 9 s, a microfarad insulates with 1, 4 and 9 megohm at 25 degC. */
const leaky = (more: NonNullable<Spoiling['figures']> = {}): NonNullable<Spoiling['figures']> => ({
  'insulation-rc': known(span(1, 4, 9)),
  'insulation-halving': notKnown,
  'leakage-floor': notKnown,
  ...more,
});
const cool = given({ 't-max': 25 });
const INSULATION = 'insulation-rc';

/** A test of 10 s of charge, 10 s short and 90 s open: log10(100 / 10) less log10(110 / 20) = 0.2596 decades. */
const absorptionTests = {
  invented: {
    id: 'invented',
    name: 'invented',
    soak_s: 10,
    short_s: 10,
    open_s: 90,
    source: 'trade',
    locator: '',
    basis: 'common-practice' as const,
    note: '',
  },
};

const cases: Record<string, ByHand> = {
  '50, 100 and 200 pC on 12.5, 10 and 8 nF': {
    finding: 'hold-step',
    spoiling: { part: tenNanofarad, conditions: charge },
    value: [4e-3, 10e-3, 25e-3],
    figures: '100 pC, 8–12.5 nF, 4–25 mV',
    properties: [],
  },
  'the same as a pitch: a volt to the octave is 1.2 cents to the millivolt': {
    finding: 'hold-step',
    spoiling: { part: tenNanofarad, conditions: { ...charge, ...given({ octave: 1 }) } },
    value: [4e-3, 10e-3, 25e-3],
    figures: '100 pC, 8–12.5 nF, 4–25 mV, 1 V/octave, 4.8–30 cents',
    properties: [],
  },
  '6.908 × (100 + 10) ohm × 8 nF, × (200 + 20) × 10 nF, × (400 + 50) × 12.5 nF': {
    finding: 'acquisition',
    spoiling: {
      part: tenNanofarad,
      figures: { 'esr-100khz': known(span(10, 20, 50)) },
      conditions: { ...settling, 'switch-resistance': span(100, 200, 400) },
    },
    value: [6.079e-6, 15.197e-6, 38.86e-6],
    figures: '10 V, 10 mV, 6.91, 100–400 Ω, 10–50 Ω, 8–12.5 nF, 6.08–38.9 µs',
    words: 'as of its type',
    properties: ['esr-100khz'],
    sources: ['trade'],
    bases: ['common-practice'],
  },
  // tan δ / (2π × 100 kHz) is 1.592, 3.183 and 6.366 ns, whatever the value; each × 6.908.
  'a loss of 0.1, 0.2 and 0.4 % at a megahertz, with next to nothing in the switch': {
    finding: 'acquisition',
    spoiling: {
      part: tenNanofarad,
      figures: { ...noResistance, 'dissipation-factor-1mhz': known(span(1e-3, 2e-3, 4e-3)) },
      conditions: { ...settling, ...given({ 'switch-resistance': 1e-9 }) },
    },
    value: [10.99e-9, 21.99e-9, 43.98e-9],
    // 0.001 / (2π × 100 kHz × 12.5 nF) = 0.127 ohm, 0.004 / (2π × 100 kHz × 8 nF) = 0.796 ohm.
    figures: '10 V, 10 mV, 6.91, 0.001 µΩ, 0.127–0.796 Ω, 100 kHz, 8–12.5 nF, 11–44 ns',
    words: 'by the loss of its type',
    properties: ['dissipation-factor-1mhz'],
  },
  '6.908 × 200 ohm × 8, 10 and 12.5 nF where nothing of the part is known': {
    finding: 'acquisition',
    spoiling: {
      part: tenNanofarad,
      figures: { ...noResistance, ...noLoss },
      conditions: { ...settling, ...given({ 'switch-resistance': 200 }) },
    },
    value: [11.05e-6, 13.816e-6, 17.27e-6],
    words: 'not known',
    properties: [],
  },
  // 0.2596 decades of test: 0.1, 0.2 and 0.4 % are 0.3852, 0.7703 and 1.541 % a decade.
  '5 V × 0.385, 0.770 and 1.541 % a decade × 2 decades': {
    finding: 'absorption',
    spoiling: {
      figures: { 'dielectric-absorption': known(span(1e-3, 2e-3, 4e-3)) },
      conditions: given({ step: 5, 'settle-time': 1e-3, 'hold-time': 0.099 }),
      tables: { absorptionTests },
    },
    value: [38.52e-3, 77.03e-3, 154.1e-3],
    figures: '5 V, 0.385–1.54 %, 2, 38.5–154 mV, 10 s, 90 s',
    properties: ['dielectric-absorption'],
  },
  // Of the part itself 10 V / (400, 200, 100 megohm) = 25, 50, 100 nA; 10 s on 1 µF are 10 V a µA.
  '(10 + 25), (20 + 50) and (30 + 100) nA × 10 s / 1 µF': {
    finding: 'droop',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky({ 'insulation-rc': known(span(100, 200, 400)) }),
      conditions: {
        ...cool,
        ...given({ vdc: 10, 'hold-time': 10 }),
        'other-leakage': span(10e-9, 20e-9, 30e-9),
      },
    },
    value: [0.35, 0.7, 1.3],
    figures: '10–30 nA, 25–100 nA, 10 s, 1 µF, 0.35–1.3 V, 71.4 %',
    properties: [INSULATION],
  },
  '10 V × 1 MΩ / (1, 4 and 9 MΩ + 1 MΩ)': {
    finding: 'leakage-offset',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky(),
      conditions: { ...cool, ...given({ vdc: 10, load: 1e6 }) },
    },
    value: [1, 2, 5],
    figures: '10 V, 1 MΩ, 1–9 MΩ, 1 MΩ, 1–5 V',
    properties: [INSULATION],
  },
  // 10 V × 1 MΩ / (1 and 4 MΩ + 1 MΩ), and nothing behind an insulation without end.
  'a part that may leak nothing': {
    finding: 'leakage-offset',
    spoiling: {
      part: oneMicrofarad,
      figures: { ...leaky(), [INSULATION]: known(span(1, 4, Infinity)) },
      conditions: { ...cool, ...given({ vdc: 10, load: 1e6 }) },
    },
    value: [0, 2, 5],
    words: 'at least 1 MΩ',
    properties: [INSULATION],
  },
  'no voltage, no leakage': {
    finding: 'leakage-offset',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky(),
      conditions: { ...cool, ...given({ vdc: 0, load: 1e6 }) },
    },
    value: [0, 0, 0],
    words: 'no DC',
    properties: [INSULATION],
  },
  // 10 V / (9, 4, 1 MΩ) = 1.111, 2.5, 10 µA; the least charge there may be is what is shared.
  '1.111, 2.5 and 10 µA of 20 to 40 µA': {
    finding: 'leakage-share',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky(),
      conditions: {
        ...cool,
        ...given({ vdc: 10 }),
        'charge-current': span(20e-6, 30e-6, 40e-6),
      },
    },
    value: [0.05556, 0.125, 0.5],
    figures: '1.11–10 µA, 20 µA, 5.56–50 %',
    properties: [INSULATION],
  },
  '10 V / (1, 4 and 9 MΩ)': {
    finding: 'leakage-current',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky(),
      conditions: { ...cool, ...given({ vdc: 10 }) },
    },
    value: [1.1111e-6, 2.5e-6, 10e-6],
    figures: '10 V, 1–9 MΩ, 1.11–10 µA',
    properties: [INSULATION],
  },
  'twenty kelvin warmer, a quarter of the insulation by the usual ten kelvin a halving': {
    finding: 'leakage-current',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky(),
      conditions: given({ vdc: 10, 't-max': 45 }),
    },
    value: [4.4444e-6, 10e-6, 40e-6],
    figures: '10 V, 0.25–2.25 MΩ, 4.44–40 µA',
    properties: [INSULATION],
  },
  // No more than 2 MΩ, of that half at 45 degC; the maker promises no less than 15 µA.
  'halved by twenty kelvin, with a highest insulation and a least leakage': {
    finding: 'leakage-current',
    spoiling: {
      part: oneMicrofarad,
      figures: leaky({
        'insulation-cap': known(2e6),
        'insulation-halving': known(20),
        'leakage-floor': known(span(0, 0, 25e-6)),
      }),
      conditions: given({ vdc: 10, 't-max': 45 }),
    },
    value: [10e-6, 10e-6, 25e-6],
    figures: '10 V, 0.5–1 MΩ, 10–25 µA',
    properties: [INSULATION, 'insulation-cap', 'insulation-halving', 'leakage-floor'],
  },
};

describe('what holds a voltage', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  test.each<[string, Spoiling, string]>([
    ['absorption', { figures: { 'dielectric-absorption': notKnown } }, 'dielectric-absorption'],
    ['droop', { figures: { [INSULATION]: notKnown } }, INSULATION],
    ['leakage-offset', { figures: { [INSULATION]: notKnown } }, INSULATION],
    ['leakage-share', { figures: { [INSULATION]: notKnown } }, INSULATION],
    ['leakage-current', { figures: { [INSULATION]: notKnown } }, INSULATION],
  ])('%s is not known without its property', (id, spoiling, missing) => {
    const conditions = given({
      ...{ step: 5, 'settle-time': 1e-3, 'hold-time': 0.1, 'charge-current': 1 },
      ...{ vdc: 10, load: 1e6, 'other-leakage': 0 },
    });
    holdUnknown(id, { ...spoiling, conditions }, [missing]);
  });
});
