import { describe, expect, test } from 'vitest';
import { given, known, notKnown } from '../assessment/setting.ts';
import { modelOf, span, tryOut } from './by-hand.ts';
import { PROBE, type Spoiling } from './probe.ts';
import { resistanceRow, wideCan as can } from './probe-rows.ts';

/** Limits that follow from the circuit and from what the old part did in it, worked out by hand. */

const INDUCTANCE = 'inductance';

const tables = { seriesResistance: [resistanceRow()] };

const switchedOn = {
  'v-surge': span(9, 10, 12),
  ...given({ 'source-resistance': 1, 'f-work': 100 }),
};

describe('a limit that the old part raises or lowers', () => {
  const old = { type: PROBE, ...can };

  test.each<[string, string, Spoiling, { low?: number; high?: number }]>([
    // 12/1.5 × √(1.875/8.3) A is what 1000 µF drew.
    [
      'inrush',
      'the surge that it drew',
      { tables, conditions: { ...switchedOn, ...given({ 'surge-current': 3 }) } },
      { high: 3.8024 },
    ],
    [
      'inrush',
      'the rating where it drew less',
      { tables, conditions: { ...switchedOn, ...given({ 'surge-current': 5 }) } },
      { high: 5 },
    ],
    // 0.4 A at 100 Hz on half of 1000 µF, the least that the position takes for it.
    [
      'ripple-voltage',
      'the ripple that was right by design',
      {
        position: { value_low: 0.5 },
        conditions: {
          ...given({ 'f-work': 100, 'ripple-allowed': 2 }),
          'load-current': span(0.1, 0.2, 0.4),
        },
      },
      { high: 8 },
    ],
    [
      'ripple-voltage',
      'what is asked, where that is more',
      {
        position: { value_low: 0.5 },
        conditions: given({ 'f-work': 100, 'ripple-allowed': 9, 'load-current': 0.4 }),
      },
      { high: 9 },
    ],
    // 1 / (2π × 159.2 Ω × 500 µF) = 2 Hz.
    [
      'corner',
      'the corner of the least value that the position takes',
      { position: { value_low: 0.5 }, conditions: given({ load: 159.155, frequency: 1 }) },
      { high: 2 },
    ],
    [
      'corner',
      'the lowest frequency, where that is higher',
      { position: { value_low: 0.5 }, conditions: given({ load: 159.155, frequency: 20 }) },
      { high: 20 },
    ],
    // atan(2 Hz / 1 Hz).
    [
      'phase',
      'the lead that goes with that corner',
      { position: { value_low: 0.5 }, conditions: given({ load: 159.155, frequency: 1 }) },
      { high: 63.435 },
    ],
    [
      'regulator-dump',
      'what it held',
      { conditions: given({ 'diode-free': 25e-6 }) },
      { high: 1e-3 },
    ],
    ['regulator-dump', 'what is free', { conditions: given({ 'diode-free': 1 }) }, { high: 1 }],
    // 1 / (2π √(25.33 nH × 1000 µF)) = 31.62 kHz; a quarter of 100 kHz and of 200 kHz.
    [
      'self-resonance',
      'a quarter of the working frequency',
      { figures: { [INDUCTANCE]: known(25.33e-9) }, conditions: given({ 'f-work': 1e5 }) },
      { low: 25e3 },
    ],
    [
      'self-resonance',
      'its own resonance, where that is lower',
      { figures: { [INDUCTANCE]: known(25.33e-9) }, conditions: given({ 'f-work': 2e5 }) },
      { low: 31.623e3 },
    ],
    [
      'self-resonance',
      'what is asked, where its own is not known',
      { figures: { [INDUCTANCE]: notKnown }, conditions: given({ 'f-work': 2e5 }) },
      { low: 50e3 },
    ],
    [
      'esr-window',
      'the window that is asked',
      { conditions: given({ 'esr-min': 0.1, 'esr-max': 10 }) },
      { low: 0.1, high: 10 },
    ],
  ])('%s: %s', (id, _what, spoiling, wanted) => {
    const { circumstances } = tryOut(id, { part: can, original: old, ...spoiling });
    const limit = modelOf(id).limit?.(circumstances);
    expect(Object.keys(limit ?? {})).toEqual(Object.keys(wanted));
    expect((limit?.low ?? 1) / (wanted.low ?? 1)).toBeCloseTo(1, 3);
    expect((limit?.high ?? 1) / (wanted.high ?? 1)).toBeCloseTo(1, 3);
  });
});
