import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../../src/engine/index.ts';
import { catalogue, range, sumOf, valuesOf, type Texts } from './asked.ts';

/** Outputs beside the chief one, each worked by hand from the numbers in its row. */

const outputsOf = (id: string, texts: Texts, facts: unknown = sumOf(id).facts?.(catalogue)) =>
  sumOf(id).at(valuesOf(sumOf(id), facts, texts), facts);

type Row = [what: string, id: string, texts: Texts, expected: Record<string, number | undefined>];

const rows: Row[] = [
  [
    'a bias current on 1 MΩ, and into 100 nF for a second',
    'amplifier-change',
    { old: '80 nA', next: '100 pA', r: '1M', c: '100 nF', t: '1 s' },
    { offset: 1e-4, oldOffset: 0.08, runs: 1e-3, oldRuns: 0.8 },
  ],
  [
    // 10 nF through 100 Ω settle to a ten-thousandth in 9.2103 µs; 20 pC are 2 mV on them.
    'a switch of lower resistance and more charge',
    'switch-change',
    {
      nextOn: '100',
      oldOn: '280',
      nextCharge: '20 pC',
      oldCharge: '10 pC',
      c: '10 nF',
      step: '10',
      error: '1 mV',
      load: '10k',
    },
    {
      time: 9.2103e-6,
      oldTime: 25.789e-6,
      jump: 2e-3,
      oldJump: 1e-3,
      lost: 100 / 10_100,
      oldLost: 280 / 10_280,
    },
  ],
  [
    '10 V on 10 nF at 10 mA',
    'acquisition',
    { c: '10 nF', step: '10', i: '10 mA' },
    { slewing: 1e-5 },
  ],
  ['no limit of the current', 'acquisition', {}, { slewing: undefined }],
  [
    // 100 s on 10 nF are 10 GΩ, through which 5 V drive 500 pA; 510 pA out of 10 nF for a second.
    'insulation that decides',
    'hold-droop',
    { i: '10 pA', tau: '100 s', c: '10 nF', v: '5', temp: '25', t: '1 s' },
    { own: 5e-10, total: 0.051, share: 500 / 510, rate: 0.051, insulation: 1e10 },
  ],
  [
    'a fifth of the power is left 17 K below the end of 155 °C from 70 °C on',
    'resistor-limits',
    { r: '10k', p: '1 W', vmax: '250', knee: '70', end: '155', t: '138', v: '20' },
    // √(0.2 W × 10 kΩ) is 44.7 V, √(1 W × 10 kΩ) 100 V, and 250 V at most is 6.25 times 10 kΩ.
    {
      share: 0.2,
      allowed: 44.721,
      load: 20 / 44.721,
      power: 0.04,
      heat: 0.2,
      rated: 100,
      ratedLoad: 0.2,
      critical: 62_500,
    },
  ],
  [
    'nothing is left at the end of the line',
    'resistor-limits',
    { knee: '70', end: '155', t: '155' },
    { share: 0, allowed: 0, load: undefined, heat: undefined },
  ],
  [
    'all of 10 kΩ in use, which is half of 25 turns away',
    'trimmer-preset',
    { reading: '10k', total: '10k', now: '5k', turns: '25' },
    { set: 10_000, perTurn: 400, go: 12.5 },
  ],
  ['more than it has', 'trimmer-preset', { reading: '11k', total: '10k' }, { set: undefined }],
  [
    '60 mΩ short of its window',
    'resistance-window',
    { esr: '40 mΩ', low: '0.1', high: '5' },
    { least: 0.06, most: 4.96 },
  ],
  [
    'just in it',
    'resistance-window',
    { esr: '0.1', low: '0.1', high: '5' },
    { least: undefined, most: 4.9 },
  ],
  [
    'at its end',
    'resistance-window',
    { esr: '5', low: '0.1', high: '5' },
    { least: undefined, most: 0 },
  ],
  [
    'beyond it',
    'resistance-window',
    { esr: '5.1', low: '0.1', high: '5' },
    { least: undefined, most: undefined },
  ],
  [
    'a step of 150 V at 75 V/µs',
    'pulse-edge',
    { swing: '150', rating: '75 V/µs' },
    { shortest: 2e-6, slope: 20e6 },
  ],
  ['no step', 'pulse-edge', {}, { shortest: undefined }],
  ['150 V in 3 µs', 'pulse-edge', { swing: '150', time: '3 µs' }, { slope: 50e6, share: 50 / 75 }],
  ['no pulse', 'resistor-pulse', { v: '0' }, { long: undefined, peak: 0, energy: 0 }],
  [
    'one that comes once',
    'resistor-pulse',
    {},
    { mean: undefined, loaded: undefined, share: undefined },
  ],
  [
    'capacitors of 10 µF at 100 V hold 50 mJ, a twentieth of 1 J',
    'resistor-pulse',
    { kind: 'capacitor', c: '10 µF', v: '100', r: '100', most: '1 J' },
    // 100 W for 0.5 ms hold as much.
    { energy: 0.05, peak: 100, long: 5e-4, share: 0.05 },
  ],
  [
    // 8 Ω at 1 kHz: 19.894 µF and 1.2732 mH for the first order.
    'a crossover of the first order',
    'crossover',
    { order: 'first', r: '8', f: '1k', c: '20 µF' },
    { capacitance: 19.894e-6, inductance: 1.2732e-3, actual: 994.7 },
  ],
  [
    'by Butterworth',
    'crossover',
    { order: 'second-butterworth', r: '8', f: '1k' },
    { capacitance: 14.067e-6, inductance: 1.8006e-3 },
  ],
  [
    'by Linkwitz',
    'crossover',
    { order: 'second-linkwitz', r: '8', f: '1k' },
    { capacitance: 9.9472e-6, inductance: 2.5465e-3 },
  ],
  [
    // Equal parts: 1/(2π × 10 kΩ × 15.9155 nF) is 1 kHz; two decades off it is 80 dB down.
    'a high pass far below its frequency',
    'second-order-filter',
    { kind: 'high', r1: '10k', r2: '10k', c1: '15.9155 nF', c2: '15.9155 nF', f: '10' },
    { frequency: 1000, level: -80 },
  ],
  [
    'a low pass far above it',
    'second-order-filter',
    { kind: 'low', r1: '10k', r2: '10k', c1: '15.9155 nF', c2: '15.9155 nF', f: '100k' },
    { frequency: 1000, level: -80 },
  ],
  ['no old value', 'rc-timing', {}, { timeMoved: undefined, pitchMoved: undefined }],
];

test.each(rows)('%s', (_what, id, texts, expected) => {
  const outputs = outputsOf(id, texts);
  for (const [key, value] of Object.entries(expected)) {
    const got = outputs[key];
    if (value === undefined) expect(Number.isFinite(got), key).toBe(false);
    else if (value === 0) expect(got, key).toBeCloseTo(0, 12);
    else expect((got ?? NaN) / value, `${key}: ${String(got)}`).toBeCloseTo(1, 3);
  }
});

/** What a catalogue knows of a made-up type. */
const known = (min: number, typ: number, max: number) => ({
  status: 'known',
  range: range(min, typ, max),
  basis: 'published',
  sources: [],
});

describe('insulation by what is known of a type', () => {
  const made = {
    types: { a: { id: 'a', name: 'A' }, b: { id: 'b', name: 'B' }, c: { id: 'c', name: 'C' } },
    knowledge: {
      a: { 'insulation-rc': known(1000, 10_000, 20_000), 'insulation-halving': known(10, 10, 10) },
      b: {
        'insulation-rc': known(1000, 10_000, 20_000),
        'insulation-halving': known(10, 10, 10),
        'insulation-cap': known(5e8, 1e9, 2e9),
        'leakage-floor': known(1e-8, 1e-7, 1e-6),
      },
      c: { 'insulation-rc': { status: 'unknown', sources: [] } },
    },
  } as unknown as Catalogue;
  const facts: unknown = sumOf('insulation').facts?.(made);

  test('types of which nothing is known are not asked about', () => {
    expect((facts as { id: string }[]).map(({ id }) => id)).toEqual(['a', 'b']);
  });

  test('the time constant over the value, half of it ten kelvin warmer', () => {
    // 10 000 s on 1 µF are 10 GΩ, at the poor end 1 GΩ; 100 V drive 10 nA and 100 nA.
    const at = (t: string) => outputsOf('insulation', { kind: 'a', c: '1 µF', v: '100', t }, facts);
    const cool = at('25');
    expect(cool['resistance']).toBeCloseTo(1e10, -4);
    expect(cool['least']).toBeCloseTo(1e9, -3);
    expect(cool['current']).toBeCloseTo(1e-8, 14);
    expect(cool['most']).toBeCloseTo(1e-7, 13);
    expect(cool['hold']).toBeCloseTo(1e4, 1);
    expect((at('35')['resistance'] ?? 0) / 1e10).toBeCloseTo(0.5, 6);
  });

  test('no more than the resistance of the case, and a leakage that never goes', () => {
    const capped = outputsOf('insulation', { kind: 'b', c: '1 µF', v: '100', t: '25' }, facts);
    // 1 GΩ at most lets 100 nA through; what the maker does not promise moves the poor end alone.
    expect(capped['resistance']).toBeCloseTo(1e9, -3);
    // A poor case insulates with half of that: the promise is its least.
    expect(capped['least']).toBeCloseTo(5e8, -3);
    expect(capped['current']).toBeCloseTo(1e-7, 13);
    expect(capped['most']).toBe(1e-6);
  });

  test('of a type that there is not nothing is said', () => {
    const values = { kind: 'c', c: 1e-6, v: 100, t: 25 };
    expect(Object.keys(sumOf('insulation').at(values, facts))).toHaveLength(5);
    expect(
      Object.values(sumOf('insulation').at(values, facts)).every((one) => one === undefined),
    ).toBe(true);
  });
});

describe('what is left of a class 2 ceramic, by what is known of it', () => {
  const all = {
    'voltage-coefficient': known(-0.6, -0.4, -0.2),
    'capacitance-change-temperature': known(-0.15, 0, 0.15),
    ageing: known(0.01, 0.02, 0.03),
  };
  const without = (key: keyof typeof all) =>
    Object.fromEntries(Object.entries(all).filter(([one]) => one !== key));
  const made = {
    types: Object.fromEntries(
      ['whole', 'steady', 'unbiased', 'untried', 'ageless', 'doubtful'].map((id) => [
        id,
        { id, name: id },
      ]),
    ),
    knowledge: {
      whole: all,
      steady: { ...all, ageing: known(0, 0, 0) },
      unbiased: without('voltage-coefficient'),
      untried: without('capacitance-change-temperature'),
      ageless: without('ageing'),
      doubtful: { ...all, ageing: { status: 'unknown', sources: [] } },
    },
  } as unknown as Catalogue;
  const facts: unknown = sumOf('class2-left').facts?.(made);

  test('only types that bias, heat and age all change are asked about', () => {
    expect((facts as { id: string }[]).map(({ id }) => id)).toEqual(['whole']);
  });

  test('at its rating after a thousand hours, three decades from the first hour on', () => {
    const outputs = outputsOf(
      'class2-left',
      { kind: 'whole', c: '100 nF', v: '50', rating: '50', age: '1000 h' },
      facts,
    );
    // 40 % by the voltage, 6 % by age: 100 nF × 0.6 × 0.94; at worst 0.4 × 0.85 × 0.91.
    expect((outputs['left'] ?? 0) / (100e-9 * 0.6 * 0.94)).toBeCloseTo(1, 6);
    expect((outputs['worst'] ?? 0) / (100e-9 * 0.4 * 0.85 * 0.91)).toBeCloseTo(1, 6);
    expect(outputs['bias']).toBeCloseTo(-0.4, 9);
    expect(outputs['aged']).toBeCloseTo(0.06, 9);
    expect(outputs['cold']).toBeCloseTo(-0.15, 9);
  });

  test('by the curve of its sheet where that is known', () => {
    const texts = {
      kind: 'whole',
      c: '100 nF',
      v: '50',
      rating: '50',
      curve: '-10 %',
      age: '1000 h',
    };
    expect(outputsOf('class2-left', texts, facts)['bias']).toBeCloseTo(-0.1, 9);
  });

  test('of a type that there is not nothing is said', () => {
    const values = { kind: 'none', c: 1e-7, v: 1, rating: 50, age: 1e6 };
    const outputs = sumOf('class2-left').at(values, facts);
    expect(Object.keys(outputs)).toHaveLength(5);
    expect(Object.values(outputs).every((one) => one === undefined)).toBe(true);
  });
});

describe('ripple current without a table', () => {
  const type = { type: 'ta-mno2-solid', c: '220 µF' };
  test('needs no factor for a frequency without current, and has no answer without one otherwise', () => {
    const none = { i2: '0', i3: '0', f1: '1 Hz' };
    expect(outputsOf('ripple-current', { ...type, ...none, i1: '0' })['whole']).toBe(0);
    const lacking = outputsOf('ripple-current', { ...type, ...none, i1: '1' });
    expect([lacking['whole'], lacking['share'], lacking['warm']]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    const typed = outputsOf('ripple-current', {
      ...type,
      ...none,
      i1: '1',
      k1: '0.5',
      kt: '1',
      rating: '4',
      rise: '8 K',
    });
    // 1 A counts as 2 A of 4 A: half of it, and a quarter of 8 K.
    expect([typed['whole'], typed['share'], typed['warm']]).toEqual([2, 0.5, 2]);
  });
});
