import { describe, test } from 'vitest';
import { given, known, notKnown } from '../assessment/setting.ts';
import { holdTo, holdUnknown, made, span, type ByHand } from './by-hand.ts';
import { PROBE, type Spoiling } from './probe.ts';
import { resistanceRow, wideCan as can } from './probe-rows.ts';

/** Surges, ripple, resonance and losses, worked out by hand. */

const RESISTANCE = 'esr-100khz';
const INDUCTANCE = 'inductance';

const tables = { seriesResistance: [resistanceRow()] };
const byRow = { properties: [], sources: ['sheet-of-resistances'], bases: ['published'] };
const byType = { properties: [RESISTANCE], sources: ['trade'], bases: ['common-practice'] };

const noLoss = {
  'dissipation-factor-120hz': notKnown,
  'dissipation-factor-1khz': notKnown,
  'dissipation-factor-1mhz': notKnown,
};
const unresisting = { ...noLoss, [RESISTANCE]: notKnown };
const losses = {
  'dissipation-factor-120hz': known(span(0.1, 0.2, 0.4)),
  'dissipation-factor-1khz': known(span(0.01, 0.02, 0.04)),
  'dissipation-factor-1mhz': known(span(0.001, 0.002, 0.004)),
};

const switchedOn = {
  'v-surge': span(9, 10, 12),
  ...given({ 'source-resistance': 1, 'f-work': 100 }),
};

const cases: Record<string, ByHand> = {
  '0.1 / (100 × 1250 µ), 0.2 / (100 × 1000 µ) and 0.4 / (100 × 800 µ)': {
    finding: 'ripple-voltage',
    spoiling: {
      part: can,
      figures: { 'temperature-coefficient': notKnown, ageing: notKnown, 'life-change': notKnown },
      conditions: { ...given({ 'f-work': 100, vdc: 0 }), 'load-current': span(0.1, 0.2, 0.4) },
    },
    value: [0.8, 2, 5],
    // Of a triangle 1 / √12: 577 mV.
    figures: '200 mA, 100 Hz, 800–1250 µF, 0.8–5 V, 577 mV',
    properties: [],
  },
  // V/R × √(R C / 8.3 ms), however far apart the pulses: 9/3 × √(2.4/8.3), 10/2 × √(2/8.3) and 12/1.5 × √(1.875/8.3).
  'a surge as a half sine of 1.61, 2.45 and 3.8 A': {
    finding: 'inrush',
    spoiling: {
      part: can,
      tables,
      conditions: switchedOn,
      original: { type: PROBE, capacitance: 5e-4 },
    },
    value: [1.6132, 2.4544, 3.8024],
    figures: '10 V, 1 Ω, 1 Ω, 5 A, 1.61–3.8 A, 8.3 ms, 2 ×, 50 mJ',
    words: 'for its value and voltage',
    ...byRow,
  },
  // 9 √(0.8/8.3), 10 √(1/8.3) and 12 √(1.25/8.3) by one ohm in front.
  'a surge that only what stands in front limits': {
    finding: 'inrush',
    spoiling: { part: can, figures: unresisting, conditions: switchedOn },
    value: [2.7941, 3.471, 4.6569],
    words: 'not known',
    properties: [],
  },
  // 8/(4+1) over 20/(1+1) is less than 8/(4+4) over 20/(1+4); 12/(1+1) over 20/(4+1) more than
  // 12/(1+4) over 20/(4+4).
  'a surge of 16 % at the least, 10/(2+2) over 20/(2+2), and 150 % at the most': {
    finding: 'own-surge',
    spoiling: {
      part: can,
      figures: {
        [RESISTANCE]: known(span(1, 2, 4)),
        'surge-resistance': known(span(1, 2, 4)),
      },
      conditions: { 'v-surge': span(8, 10, 12), 'source-resistance': span(1, 2, 4) },
    },
    value: [0.16, 0.5, 1.5],
    figures: '10 V, 2 Ω, 1–4 Ω, 20 V, 2 Ω, 1–4 Ω, 16–150 %',
    ...byType,
    properties: ['surge-resistance', RESISTANCE],
  },
  // (8 + 2) over (8 + 1), (8 + 2) and (8 + 4): 0.915, 0 and −1.584 dB.
  'up to 1.58 dB with 1 to 4 ohm in place of 2 before 8 ohm': {
    finding: 'level-shift',
    spoiling: {
      part: can,
      figures: { [RESISTANCE]: known(span(1, 2, 4)) },
      conditions: given({ load: 8, 'esr-old': 2, 'f-work': 1e5 }),
    },
    value: [0, 0, 1.5836],
    figures: '8 Ω, 2 Ω, 8 Ω, 1–4 Ω, 0–1.58 dB',
    words: 'usually none',
    ...byType,
  },
  // 20 log10(11 / 10) = 0.828 dB with an ohm, 1.94 dB with none.
  '0.828 dB louder with an ohm in place of two before nine': {
    finding: 'level-shift',
    spoiling: {
      part: can,
      figures: { [RESISTANCE]: known(span(1e-9, 1, 2)) },
      conditions: given({ load: 9, 'esr-old': 2, 'f-work': 1e5 }),
    },
    value: [0, 0.8279, 1.743],
    words: '0.828 dB louder',
    ...byType,
  },
  '1 to 4 ohm where 0.1 to 10 are wanted': {
    finding: 'esr-window',
    spoiling: {
      part: can,
      figures: { [RESISTANCE]: known(span(1, 2, 4)) },
      conditions: given({ 'esr-min': 0.1, 'esr-max': 10 }),
    },
    value: [1, 2, 4],
    figures: '1–4 Ω, 0.1 Ω, 10 Ω',
    words: 'as of its type',
    ...byType,
  },
  // 2π × 1 MHz × 1.592 µH = 10 Ω, less 2 Ω of 79.58 nF; √(1 + 3²), √(6² + 8²), √(8² + 18²) Ω.
  'impedances of 3.16, 10 and 19.7 ohm by inductance less capacitance, and resistance': {
    finding: 'impedance',
    spoiling: {
      part: { capacitance: 79.577e-9 },
      figures: {
        [INDUCTANCE]: known(span(0.79577e-6, 1.59155e-6, 3.1831e-6)),
        [RESISTANCE]: known(span(1, 6, 8)),
      },
      conditions: given({ 'f-work': 1e6 }),
    },
    value: [3.1623, 10, 19.698],
    figures: '0.796–3.18 µH, 1–8 Ω, 79.6 nF, 1 MHz, 3.16–19.7 Ω',
    ...byType,
    properties: [INDUCTANCE, RESISTANCE],
  },
  'the reactance alone where no resistance is known': {
    finding: 'impedance',
    spoiling: {
      part: { capacitance: 79.577e-9 },
      figures: { ...unresisting, [INDUCTANCE]: known(1.59155e-6) },
      conditions: given({ 'f-work': 1e6 }),
    },
    value: [8, 8, 8],
    words: 'not known',
    properties: [INDUCTANCE],
  },
  // 1 / (2π √(25.33 nH × 1 nF)) = 31.62 MHz; four times the inductance, half of it.
  'resonances of 15.8, 31.6 and 63.2 MHz': {
    finding: 'self-resonance',
    spoiling: {
      part: { capacitance: 1e-9 },
      figures: { [INDUCTANCE]: known(span(6.3326e-9, 25.33e-9, 101.32e-9)) },
      conditions: given({ 'f-work': 1e7 }),
    },
    value: [15.81e6, 31.623e6, 63.25e6],
    figures: '1, 6.33–101 nH, 1 nF, 15.8–63.2 MHz, 10 MHz',
    properties: [INDUCTANCE],
  },
  // The ratio of 400 Hz to 1 kHz is 2.5, to 120 Hz 3.3.
  'the loss at a kilohertz for 400 Hz': {
    finding: 'loss',
    spoiling: { figures: losses, conditions: given({ 'f-work': 400 }) },
    value: [0.01, 0.02, 0.04],
    figures: '1–4 %, 1 kHz, 400 Hz, 25–100',
    properties: ['dissipation-factor-1khz'],
  },
  'the loss at 120 Hz for 300 Hz': {
    finding: 'loss',
    spoiling: { figures: losses, conditions: given({ 'f-work': 300 }) },
    value: [0.1, 0.2, 0.4],
    figures: '10–40 %, 120 Hz, 300 Hz, 2.5–10',
    properties: ['dissipation-factor-120hz'],
  },
  // 2π × 1 kHz × 79.58 ohm × 1000 µF = 500; the Q of it 1/500.
  'the loss at a megahertz, of what is known, and what a resistor in it adds': {
    finding: 'loss',
    spoiling: {
      part: made({ kind: 'with-resistor', resistor: 79.577e-3 }),
      figures: { ...noLoss, 'dissipation-factor-1mhz': known(0.1) },
      conditions: given({ 'f-work': 1000 }),
    },
    value: [0.6, 0.6, 0.6],
    figures: '60 %, 1 MHz, 1 kHz, 50 %, 79.6 mΩ, 1.67',
    properties: ['dissipation-factor-1mhz'],
  },
};

describe('surges, ripple, resonance and losses', () => {
  test.each(Object.entries(cases))('%s', (_what, wanted) => {
    holdTo(wanted);
  });

  test.each<[string, Spoiling, string]>([
    ['own-surge', { figures: { ...unresisting, 'surge-resistance': known(1) } }, RESISTANCE],
    ['level-shift', { figures: unresisting }, 'dissipation-factor-1khz'],
    ['esr-window', { figures: unresisting }, RESISTANCE],
    ['impedance', { figures: { [INDUCTANCE]: notKnown } }, INDUCTANCE],
    ['self-resonance', { figures: { [INDUCTANCE]: notKnown } }, INDUCTANCE],
    ['loss', { figures: noLoss }, 'dissipation-factor-1khz'],
  ])('%s is not known without what it rests on', (id, spoiling, missing) => {
    const conditions = given({
      ...{ 'f-work': 1000, load: 8, 'esr-old': 1, 'esr-min': 1, 'esr-max': 2 },
      ...{ 'v-surge': 10, 'source-resistance': 1 },
    });
    holdUnknown(id, { part: can, conditions, ...spoiling }, [missing]);
  });
});
