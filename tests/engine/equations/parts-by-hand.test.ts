import { describe, expect, test } from 'vitest';
import { peakOfSine, rmsOfSine } from '../../../src/engine/equations/sine.ts';
import {
  lossHeat,
  voltageByEdge,
  voltageByHeat,
} from '../../../src/engine/equations/alternating.ts';
import { leftBy, leftInService } from '../../../src/engine/equations/bias.ts';
import {
  capacitanceForCorner,
  resistanceForCorner,
} from '../../../src/engine/equations/coupling.ts';
import { loadedDivider, shareOf } from '../../../src/engine/equations/divider.ts';
import { lossByResistor, qualityOf } from '../../../src/engine/equations/loss.ts';
import { adjustedOutput } from '../../../src/engine/equations/regulator.ts';
import {
  changeByVoltage,
  currentNoise,
  energyOnTop,
  filmDrift,
  filmTemperature,
  noiseOfResistor,
  thermalNoise,
} from '../../../src/engine/equations/resistor.ts';
import {
  rippleTaken,
  rippleTogether,
  triangularRms,
} from '../../../src/engine/equations/ripple.ts';
import { amplifiedLeakage, shareOfWorking } from '../../../src/engine/equations/transistor.ts';
import {
  atWiper,
  contactJump,
  finestStep,
  presetOf,
  turnsToGo,
  type AtWiper,
  type WiperLoad,
} from '../../../src/engine/equations/trimmer.ts';
import { expectNear } from './near.ts';

/** Equations of parts, each held to an arithmetic that its name tells. */

test.each<[said: string, value: number, wanted: number]>([
  ['a sine of 10 V is √2 as high', peakOfSine(10), 14.142136],
  ['on 5 V it is 5 V higher', peakOfSine(10, 5), 19.142136],
  ['a sine as high as 14.142136 V has 10 V', rmsOfSine(14.142136), 10],
  [
    '230 V, 50 Hz, 10 µF and 0.2 % lose 314.159 · 10⁻⁵ · 0.002 · 52 900 W',
    lossHeat(230, { frequency: 50, capacitance: 1e-5, loss: 0.002 }),
    0.3323805,
  ],
  [
    'four times that heat is twice the voltage',
    voltageByHeat(4 * 0.3323805, { frequency: 50, capacitance: 1e-5, loss: 0.002 }),
    460,
  ],
  ['1 V/µs is 10⁶ / (314.159 · 1.41421) V at 50 Hz', voltageByEdge(1e6, 50), 2250.7908],
  ['0.8 and a half of 100 µF', leftBy(1e-4, [0.8, 0.5]), 4e-5],
  ['more than all of it lost', leftBy(1e-4, [0.9, -0.2]), 0],
  ['1 / (2π · 1 µF · 159.154943 Hz)', resistanceForCorner(1e-6, 159.154943), 1000],
  ['1 / (2π · 1 kΩ · 159.154943 Hz)', capacitanceForCorner(1000, 159.154943), 1e-6],
  ['1 of 1 + 3', shareOf(1000, 3000), 0.25],
  ['2π · 1 kHz · 1 Ω · 1 µF', lossByResistor(1000, 1, 1e-6), 0.0062831853],
  ['1.25 V · (1 + 5) and 50 µA in 1.2 kΩ', adjustedOutput(1.25, 240, 1200, 5e-5), 7.56],
  ['a triangle of 2√3 V', triangularRms(3.4641016), 1],
  [
    'heats add up: 3, 4, 5',
    rippleTogether([
      { current: 3, factor: 1 },
      { current: 4, factor: 1 },
    ]),
    5,
  ],
  [
    '3 A where a part takes 1.5 times as much are 2 A',
    rippleTogether([
      { current: 3, factor: 1.5 },
      { current: 4, factor: 1 },
    ]),
    4.472136,
  ],
  ['no current', rippleTogether([]), 0],
  ['2 A, 0.8 times for the frequency and 1.5 for the temperature', rippleTaken(2, 0.8, 1.5), 2.4],
])('%s', (_, value, wanted) => {
  expectNear(value, wanted);
});

test('a divider of 3 and 1 kΩ looks like 750 Ω, of which 2.25 kΩ leave three quarters', () => {
  expect(loadedDivider(3000, 1000, 2250)).toEqual({ ratio: 0.25, source: 750, lost: 0.25 });
});

test('what several causes leave of 100 µF: their ends multiply, and none takes more than all', () => {
  const halved = { min: 0.5, typ: 0.8, max: 1 };
  const gone = { min: -0.1, typ: 0.5, max: 0.9 };
  expectNear(leftInService(1e-4, [halved, gone]), { min: 0, typ: 4e-5, max: 9e-5 });
  expectNear(leftInService(1e-4, []), { min: 1e-4, typ: 1e-4, max: 1e-4 });
});

test('quality is one over the loss, its ends swapped', () => {
  expect(qualityOf({ min: 0.001, typ: 0.002, max: 0.004 })).toEqual({
    min: 250,
    typ: 500,
    max: 1000,
  });
});

describe('a transistor with its base left open', () => {
  const cutoff = { min: 1e-6, typ: 2e-6, max: 5e-6 };
  const gain = { min: 49, typ: 99, max: 199 };

  test.each<[celsius: number, least: number, usual: number, most: number]>([
    [25, 50e-6, 200e-6, 1e-3],
    // Twenty kelvin are two doublings.
    [45, 200e-6, 800e-6, 4e-3],
  ])('at %d °C', (celsius, least, usual, most) => {
    const leakage = amplifiedLeakage(cutoff, gain, { warm: celsius, doubling: 10 });
    expect(leakage.min).toBeCloseTo(least, 9);
    expect(leakage.typ).toBeCloseTo(usual, 9);
    expect(leakage.max).toBeCloseTo(most, 9);
    const share = shareOfWorking(leakage, 2e-3);
    expect(share.min).toBeCloseTo(least / 2e-3, 6);
    expect(share.max).toBeCloseTo(most / 2e-3, 6);
  });

  test('where no current is worked at it is beyond all measure, and a number', () => {
    const share = shareOfWorking({ min: 1e-6, typ: 200e-6, max: 1e-3 }, 0);
    expect(share.typ).toBeCloseTo(200e-6 / 1e-12, -3);
  });
});

describe('a resistor', () => {
  test('has a pulse of 2 J on top of a quarter of its power as one of 2.5 J', () => {
    expect(energyOnTop(2, 1, 4)).toBe(2.5);
  });

  test.each<
    [
      index: number,
      ohm: number,
      volt: number,
      low: number,
      high: number,
      warm: number,
      driven: number,
    ]
  >([
    // 300 K: √(4 · 1.380649 · 10⁻²³ · 300 · 10⁴ · 900) V; a tenth of a microvolt for each of 10 V.
    [-20, 1e4, 10, 100, 1000, 3.86147e-7, 1e-6],
    // Two decades are √2 as loud; 0 dB a microvolt for the volt.
    [0, 1e5, 1, 100, 10_000, 4.04995e-6, 1.414214e-6],
  ])('of %d dB, %d Ω at %d V from %d to %d Hz', (index, ohm, volt, low, high, warm, driven) => {
    expect(thermalNoise(ohm, 26.85, low, high)).toBeCloseTo(warm, 11);
    expect(currentNoise(index, volt, low, high)).toBeCloseTo(driven, 11);
    const both = noiseOfResistor(index, { ohm, celsius: 26.85, volt, low, high });
    expect(both).toBeCloseTo(Math.sqrt(warm ** 2 + driven ** 2), 11);
  });

  test('changes by so much for each volt, a hundred times as much for a hundred', () => {
    const change = changeByVoltage({ min: -350e-6, typ: -200e-6, max: 0 }, 100);
    expect(change.min).toBeCloseTo(-0.035, 12);
    expect(change.typ).toBeCloseTo(-0.02, 12);
    expect(change.max).toBeCloseTo(0, 12);
  });

  const HOUR = 3600;
  const sheet = { change: 0.0025, time: 1000 * HOUR, film: 125 };

  test.each<[hours: number, celsius: number, change: number]>([
    [1000, 125, 0.0025],
    // 225 times as long: 0.25 % · 6.0822, printed as 1.5 %.
    [225_000, 125, 0.0152055],
    // 30 K more: twice as much, printed as 0.5 %.
    [1000, 155, 0.005],
    [8000, 95, 0.0025],
  ])('of metal film drifts in %d h at %d °C by %d', (hours, celsius, change) => {
    expect(filmDrift(sheet, hours * HOUR, celsius, 30)).toBeCloseTo(change, 7);
  });

  test('has its film at half load half as much warmer than at full load', () => {
    expect(filmTemperature(40, 0.125, { knee: 70, film: 125, rated: 0.25 })).toBeCloseTo(67.5, 9);
  });
});

describe('a trimmer', () => {
  test('as a rheostat may not reach: 12 kΩ of 10', () => {
    expect(
      presetOf({ use: 'rheostat', reading: 12_000, oldTotal: 20_000, total: 10_000, turns: 1 }),
    ).toEqual({ set: 12_000, fromEnd: 1.2, perTurn: 10_000, ratio: 0.6, newRatio: 1.2 });
  });

  test('is turned on or back', () => {
    expect(turnsToGo(3000, 1000, 400)).toBe(5);
    expect(turnsToGo(1000, 3000, 400)).toBe(-5);
  });

  test('is set no finer than a share of it', () => {
    expect(finestStep(0.0005, 10_000)).toBe(5);
  });

  const half: WiperLoad = { total: 10_000, setting: 0.5, voltage: 10, load: 10_000, bias: 0 };

  test.each<[said: string, load: WiperLoad, wanted: AtWiper]>([
    [
      'in the middle: 2.5 kΩ into 10 kΩ take a fifth of 5 V; above it (10 − 4) V / 5 kΩ flow',
      half,
      { ideal: 5, out: 4, source: 2500, lost: 0.2, shift: 0.2, current: 4e-4, track: 1.2e-3 },
    ],
    [
      'with a bias of 0.1 mA: (5 − 0.25) V · 0.8, and (10 − 3.8) V / 5 kΩ above it',
      { ...half, bias: 1e-4 },
      { ideal: 5, out: 3.8, source: 2500, lost: 0.2, shift: 0.24, current: 4.8e-4, track: 1.24e-3 },
    ],
    [
      'with a bias that flows in: more below than above, (5 + 0.5) V · 0.8 / 5 kΩ',
      { ...half, bias: -6e-4, load: 1e12 },
      { ideal: 5, out: 6.5, source: 2500, lost: 0, shift: -0.3, current: -6e-4, track: 1.3e-3 },
    ],
    [
      'at its upper end: the load hangs on the terminal, and 10 V / 10 kΩ flow in the track',
      { ...half, setting: 1 },
      { ideal: 10, out: 10, source: 0, lost: 0, shift: 0, current: 1e-3, track: 1e-3 },
    ],
    [
      'at its lower end: 10 V / 10 kΩ in all of the track, the bias from the terminal',
      { ...half, setting: 0, bias: 1e-4 },
      { ideal: 0, out: 0, source: 0, lost: 0, shift: 0, current: 1e-4, track: 1e-3 },
    ],
    [
      'with no voltage: the share that the load would take',
      { ...half, voltage: 0 },
      { ideal: 0, out: 0, source: 2500, lost: 0.2, shift: 0.2, current: 0, track: 0 },
    ],
  ])('%s', (_, load, wanted) => {
    const got = atWiper(load);
    for (const key of Object.keys(wanted) as (keyof AtWiper)[])
      expect(got[key], key).toBeCloseTo(wanted[key], 7);
  });

  test.each<[said: string, bias: number, out: number, jump: number]>([
    ['5 V · 10 kΩ / 12.6 kΩ are 31.746 mV less than 4 V', 0, 4, 0.031746],
    ['(5 − 0.26) V · 10 kΩ / 12.6 kΩ are 38.095 mV less than 3.8 V', 1e-4, 3.8, 0.038095],
  ])('whose contact adds 100 Ω: %s', (_, bias, out, jump) => {
    expect(contactJump({ out, source: 2500 }, { load: 10_000, bias }, 100)).toBeCloseTo(jump, 6);
  });
});
