import { describe, expect, it } from 'vitest';
import { deviceModels } from '../../../src/engine/devices/models/index.ts';
import type { DeviceFigureRow } from '../../../src/schemas/devices.ts';
import { figure } from './made-up.ts';
import { circumstances, tried, tryOut, type Figures, type Numbers, type Three } from './tried.ts';

/** What each finding about a device comes to for figures in round numbers, worked by hand. */

const CHARGED = { 'hold-capacitor': 1e-9, 'hold-time': 1, supply: 10 };

const CASES: readonly [string, Figures, Numbers, Three | number, readonly string[], Figures?][] = [
  // finding, figures, numbers of the circuit, what it comes to, what its working names, old figures
  ['supply-high', { 'supply-max': [10, 20, 20] }, { supply: 10 }, [0.5, 0.5, 1], ['10 V', '20 V']],
  ['supply-low', { 'supply-min': [2, 2.5, 5] }, { supply: 10 }, [2, 4, 5], ['10 V', '2–5 V']],
  [
    'span',
    { 'supply-max': [5, 10, 20] },
    { 'signal-span': 8, supply: 16 },
    [0.5, 0.8, 1.6],
    ['8 V', '10 V'],
  ],
  ['span', { 'supply-max': 20 }, { 'signal-span': 8, supply: 16 }, 0.5, ['8 V', '16 V']],
  ['load', { 'load-max': [1, 2, 4] }, { 'load-current': 1 }, [0.25, 0.5, 1], ['1 A', '1–4 A']],
  ['forward', { 'forward-current': 2 }, { 'load-current': 1 }, 0.5, ['1 A', '2 A']],
  ['drop', { drop: [0.5, 0.6, 0.7] }, { 'load-current': 1 }, [0.5, 0.6, 0.7], ['at 1 A']],
  ['reverse-leakage', { 'reverse-leakage': 1e-6 }, {}, 1e-6, ['1 µA']],
  [
    'recovery',
    { recovery: [1e-6, 2e-6, 4e-6] },
    { frequency: 1e5 },
    [0.1, 0.2, 0.4],
    ['1–4 µs', '10 µs'],
  ],
  [
    'drive-high',
    { 'input-high': [2, 2.5, 4] },
    { 'high-level': 5, supply: 5 },
    [1.25, 2, 2.5],
    ['5 V', 'from'],
  ],
  ['drive-low', { 'input-low': 2 }, { 'low-level': 1, supply: 5 }, 0.5, ['1 V', '2 V', 'up to']],
  ['gives-high', { 'output-high': 4 }, { 'next-high': 2, supply: 5 }, 2, ['4 V', '2 V']],
  ['gives-low', { 'output-low': 1 }, { 'next-low': 2, supply: 5 }, 0.5, ['1 V', '2 V']],
  ['sinks', { 'sink-current': 4 }, { 'sink-needed': 2, supply: 5 }, 2, ['4 A', '2 A']],
  ['headroom', { dropout: [1, 2, 4] }, { 'headroom-low': 2, 'load-current': 1 }, [0.5, 1, 2], []],
  [
    'input-limit',
    { 'input-max': [10, 20, 40], 'output-voltage': 5 },
    { 'headroom-high': 15 },
    [0.5, 1, 2],
    ['5 V', '15 V', '10–40 V'],
  ],
  ['least-load', { 'load-min': 0.01 }, {}, 0.01, ['10 mA']],
  [
    'set-output',
    { reference: [1.2, 1.25, 1.3], 'adjust-current': [0, 40e-6, 80e-6] },
    { 'divider-lower': 250, 'divider-upper': 750 },
    [0.96, 1.006, 1.052],
    ['5 V', '250 Ω', '750 Ω'],
    { reference: 1.25, 'adjust-current': 0 },
  ],
  [
    'series-loss',
    { 'on-resistance': [100, 100, 400] },
    { load: 100, supply: 5 },
    [0.5, 0.5, 0.8],
    ['100 Ω'],
  ],
  [
    'resistance-change',
    { 'on-resistance': [300, 300, 400], 'on-resistance-at-rail': [100, 200, 200] },
    { load: 100, supply: 5 },
    [0.25, 0.25, 0.5],
    ['100–200 Ω', '300–400 Ω', 'before 100 Ω'],
  ],
  [
    'settling',
    { 'on-resistance': 100 },
    { ...CHARGED, 'signal-span': Math.E, 'hold-error': 1 },
    100e-9,
    ['100 Ω', '1 nF', '1 V'],
  ],
  // 35 °C is ten kelvin above the 25 °C of the figure: twice as much.
  [
    'hold-droop',
    { 'off-leakage': 1e-12 },
    { ...CHARGED, temperature: 35 },
    2e-3,
    ['1 pA', '35 °C', '1 s', '1 nF'],
  ],
  [
    'charge-step',
    { 'charge-injection': [1e-12, 2e-12, 4e-12] },
    CHARGED,
    [1e-3, 2e-3, 4e-3],
    ['1–4 pC', '1 nF'],
  ],
  // Where no charge is told, the control swings through what couples.
  ['charge-step', { 'feedthrough-capacitance': 1e-12 }, CHARGED, 10e-3, ['1 pF', '10 V', '1 nF']],
  ['input-floor', { 'input-floor': 2 }, { 'room-below': 3 }, 2, ['2 V', '3 V']],
  ['input-ceiling', { 'input-ceiling': 2 }, { 'room-above': 3 }, 2, ['2 V', '3 V']],
  ['swing', { 'swing-lost': 2 }, { 'output-room': 3 }, 2, ['2 V', '3 V']],
  ['reversal', { reverses: 1, 'input-floor': 2 }, { 'room-below': 1 }, 1, ['comes where']],
  ['reversal', { reverses: 1, 'input-floor': 2 }, { 'room-below': 2 }, 0, ['does not come where']],
  ['reversal', { reverses: 0, 'input-floor': 2 }, { 'room-below': 1 }, 0, ['does not turn over']],
  [
    'bias-droop',
    { 'bias-current': 1e-12, 'fet-input': 1 },
    { ...CHARGED, temperature: 45 },
    4e-3,
    ['1 pA', '45 °C', '1 s', '1 nF'],
  ],
  // Of a bipolar input it hardly moves with the warmth.
  [
    'bias-droop',
    { 'bias-current': 1e-12, 'fet-input': 0 },
    { ...CHARGED, temperature: 45 },
    1e-3,
    ['1 pA'],
  ],
  [
    'dc-error',
    { offset: 1e-3, 'bias-current': 1e-6, 'fet-input': 0 },
    { temperature: 25, 'source-resistance': 1000, 'noise-gain': 2 },
    4e-3,
    ['1 mV', '1 µA', '1 kΩ', 'times 2'],
  ],
  [
    'speed',
    { bandwidth: 1e6 },
    { 'noise-gain': 2, 'signal-frequency': 1e5 },
    5,
    ['1 MHz', 'gain of 2', '100 kHz'],
  ],
  [
    'slewing',
    { slew: 2 * Math.PI * 1e4 },
    { 'signal-frequency': 1e3, 'output-peak': 5 },
    2,
    ['5 V', '1 kHz'],
  ],
  ['stable-gain', { 'least-gain': 5 }, { 'noise-gain': 10 }, 0.5, ['gain of 5', 'gain of 10']],
  [
    'load-phase',
    { bandwidth: 1e6 / (2 * Math.PI), 'output-resistance': 100 },
    { 'noise-gain': 1, 'load-capacitance': 1e-8 },
    45,
    ['100 Ω', '10 nF'],
  ],
  [
    'noise-with-source',
    { noise: 4e-9, 'bias-current': 0 },
    { 'source-resistance': 0 },
    4e-9,
    ['4 nV'],
  ],
  ['supply-draw', { 'supply-current': 1e-3 }, {}, 1e-3, ['1 mA']],
  ['own-capacitor', { 'needs-capacitor': 1 }, {}, 1, ['it needs'], { 'needs-capacitor': 0 }],
  ['own-capacitor', { 'needs-capacitor': 1 }, {}, 0, ['nothing'], { 'needs-capacitor': 1 }],
  ['own-capacitor', { 'needs-capacitor': 0 }, {}, 0, ['nothing'], { 'needs-capacitor': 0 }],
  ['fast-enough', { transition: 1e8 }, {}, 1e8, ['100 MHz']],
  [
    'leakage-share',
    { 'reverse-leakage': 1e-6, gain: 99 },
    { temperature: 35, 'top-current': 1e-3 },
    0.2,
    ['1 µA', '200 µA', '35 °C', '1 mA'],
  ],
  ['adds-to-rail', { 'built-in-capacitor': 1e-7 }, { 'rail-capacitor': 1e-5 }, 0.01, ['10 µF']],
  [
    'same-load',
    { 'load-max': [0.5, 1, 2] },
    {},
    [0.25, 0.5, 1],
    ['0.5–2 A instead of 2 A'],
    { 'load-max': 2 },
  ],
  ['same-idss', { idss: 4 }, {}, 2, ['4 A instead of 2 A'], { idss: 2 }],
  ['seat-height', { 'seat-height': 0.005 }, {}, 0.005, ['5 mm']],
  ['contact', { 'contact-resistance': 0.02 }, {}, 0.02, ['20 mΩ']],
  ['built-in-capacitor', { 'built-in-capacitor': 1e-7 }, {}, 1e-7, ['100 nF']],
  ['output-esr', { 'output-esr-min': 0.1 }, {}, 0.1, ['0.1 Ω']],
  [
    'output-esr-most',
    { 'output-esr-max': [1, 2, 4] },
    { 'output-esr': 2 },
    [0.5, 1, 2],
    ['2 Ω of 1–4 Ω'],
  ],
  ['discharge', { 'discharge-safe': 1e-5 }, { 'output-capacitor': 2e-5 }, 2, ['20 µF of 10 µF']],
  [
    'output-capacitor',
    { 'output-capacitor-min': 1e-6 },
    { 'output-capacitor': 1e-5 },
    10,
    ['10 µF of 1 µF'],
  ],
  [
    'output-capacitor',
    { 'output-capacitor-min': 0 },
    { 'output-capacitor': 1e-5 },
    1000,
    ['10 µF'],
  ],
  [
    // Ten million times of next to nothing is told from a thousand times no more than of nothing.
    'output-capacitor',
    { 'output-capacitor-min': 1e-12 },
    { 'output-capacitor': 1e-5 },
    1000,
    ['10 µF of 1 pF'],
  ],
  ['difference-limit', { 'input-max': 40 }, { 'headroom-high': 20 }, 0.5, ['20 V of 40 V']],
  ['same-stages', { stages: 6 }, {}, 0.75, ['6 instead of 8'], { stages: 8 }],
  ['same-rows', { 'row-pitch': 0.01 }, {}, 0.5, ['10 mm instead of 20 mm'], { 'row-pitch': 0.02 }],
  ['same-pitch', { 'pin-pitch': 0.001 }, {}, 0.5, ['1 mm instead of 2 mm'], { 'pin-pitch': 0.002 }],
  [
    'same-current',
    { 'forward-current': 3 },
    {},
    3,
    ['3 A instead of 1 A'],
    { 'forward-current': 1 },
  ],
  [
    'same-collector-current',
    { 'current-max': 4 },
    {},
    2,
    ['4 A instead of 2 A'],
    { 'current-max': 2 },
  ],
  ['same-power', { 'power-max': 65 }, {}, 0.52, ['65 W instead of 125 W'], { 'power-max': 125 }],
  [
    'same-transconductance',
    { transconductance: 0.004 },
    {},
    2,
    ['4 mS instead of 2 mS'],
    { transconductance: 0.002 },
  ],
  // The spread of both is the same.
  ['same-output', { 'output-voltage': [4.5, 5, 5.5] }, {}, 1, ['5'], { 'output-voltage': 5 }],
];

describe('a finding about a device', () => {
  it.each(CASES)('%s of %o with %o is %o', (id, figures, numbers, expected, words, old = {}) => {
    const { outcome, working } = tryOut(id, figures, numbers, old);
    if (outcome.status === 'unknown') throw new Error(`unknown: ${outcome.missing.join()}`);
    const [min, typ, max] =
      typeof expected === 'number' ? [expected, expected, expected] : expected;
    const near = (value: number) => (value === 0 ? 0 : expect.closeTo(1, 9));
    const ratio = (mine: number, value: number) => (value === 0 ? mine : mine / value);
    expect([
      ratio(outcome.value.min, min),
      ratio(outcome.value.typ, typ),
      ratio(outcome.value.max, max),
    ]).toEqual([near(min), near(typ), near(max)]);
    const said = working(outcome.value);
    for (const word of words) expect(said).toContain(word);
    expect(said).not.toMatch(/NaN|undefined/u);
    // It rests on every sheet that it takes a figure from.
    expect(outcome.bases?.length).toBeGreaterThan(0);
    expect(outcome.sources).toContain('sheet-of-tried');
  });

  it.each(CASES)('%s of %o with %o is not known without its figures', (id, _f, numbers) => {
    const { outcome } = tryOut(id, {}, numbers);
    expect(outcome.status).toBe('unknown');
    if (outcome.status === 'unknown') expect(outcome.missing.length).toBeGreaterThan(0);
  });

  it.each(CASES.filter(([, , , , , old]) => old !== undefined))(
    '%s of %o with %o is not known without the old part',
    (id, figures, numbers) => {
      expect(tryOut(id, figures, numbers).outcome.status).toBe('unknown');
    },
  );

  it('takes every figure that it needs, or says which is missing', () => {
    const { outcome } = tryOut('dc-error', { offset: 1e-3, 'fet-input': 0 }, {});
    expect(outcome).toEqual({ status: 'unknown', missing: ['bias-current'] });
  });

  it('rests on all figures of both parts where two resistors set the output', () => {
    const divider = { 'divider-lower': 250, 'divider-upper': 750 };
    const figures = { reference: 1.25, 'adjust-current': 0 };
    const { outcome } = tryOut('set-output', figures, divider, figures);
    expect(outcome).toMatchObject({
      properties: ['reference', 'adjust-current'],
      sources: ['sheet-of-tried', 'sheet-of-old'],
      bases: ['published', 'published', 'published', 'published'],
    });
    for (const lacking of [{ reference: 1.25 }, { 'adjust-current': 0 }]) {
      const missing = { status: 'unknown', missing: ['reference', 'adjust-current'] };
      expect(tryOut('set-output', lacking, divider, figures).outcome).toEqual(missing);
      expect(tryOut('set-output', figures, divider, lacking).outcome).toEqual(missing);
    }
  });

  it('rests on both parts where they are compared', () => {
    const { outcome } = tryOut('same-load', { 'load-max': 1 }, {}, { 'load-max': 2 });
    expect(outcome).toMatchObject({
      properties: ['load-max'],
      sources: ['sheet-of-tried', 'sheet-of-old'],
    });
    expect(tryOut('same-load', {}, {}, { 'load-max': 2 }).outcome).toEqual({
      status: 'unknown',
      missing: ['load-max'],
    });
  });

  it('rests on both parts where one lacks what the other has, or may go by how the other is fitted', () => {
    const both = { status: 'known', sources: ['sheet-of-tried', 'sheet-of-old'] };
    const bare = { 'needs-capacitor': 1 };
    const own = tryOut('own-capacitor', bare, {}, { 'needs-capacitor': 0 }).outcome;
    expect(own).toMatchObject({ ...both, bases: ['published', 'published'] });
    const fitted = { 'least-gain': 10, 'compensated-gain': 1 };
    const stable = tryOut('stable-gain', fitted, { 'noise-gain': 2 }, fitted).outcome;
    expect(stable).toMatchObject({ ...both, bases: ['published', 'published', 'published'] });
  });

  it('compares with nothing where a sheet promises only the least', () => {
    const figures = [figure('tried', 'idss', { min: 1 }), figure('old', 'idss', { typ: 2 })];
    const outcome = (row: Partial<DeviceFigureRow>) =>
      deviceModels['same-idss']?.measure(
        tried,
        circumstances([figure('tried', 'idss', row), ...figures.slice(1)], {}),
      );
    expect(outcome({ min: 1 })).toEqual({ status: 'unknown', missing: ['idss'] });
    expect(outcome({ min: 1, max: 4 })?.status).toBe('known');
    expect(outcome({ min: 1, typ: 2 })?.status).toBe('known');
  });

  it('needs the numbers of its use', () => {
    expect(() => tryOut('load', { 'load-max': 1 }, {})).toThrow('load-current');
  });
});
