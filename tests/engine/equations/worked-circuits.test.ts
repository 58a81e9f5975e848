import { describe, expect, it } from 'vitest';
import {
  bandwidthLeft,
  noiseWithSource,
  phaseWithLoad,
  shareOfLimit,
  slewLeft,
  steadyError,
} from '../../../src/engine/equations/amplifier.ts';
import {
  besideEachOther,
  equalisingResistor,
  standingShare,
  sumOf,
  worstShare,
} from '../../../src/engine/equations/combinations.ts';
import { dissipation } from '../../../src/engine/equations/heat.ts';
import { lossByResistor } from '../../../src/engine/equations/loss.ts';
import { recoveryShare } from '../../../src/engine/equations/diode.ts';
import { thirdHarmonic } from '../../../src/engine/equations/distortion.ts';
import { edgeCurrent, edgeShare } from '../../../src/engine/equations/edge.ts';
import { discReplayLevel } from '../../../src/engine/equations/equaliser.ts';
import { impedanceSpan, parallelImpedance } from '../../../src/engine/equations/impedance.ts';
import { rectified } from '../../../src/engine/equations/rectifier.ts';
import {
  followerHighPass,
  followerLowPass,
  highPassLevel,
  lowPassLevel,
} from '../../../src/engine/equations/second-order.ts';
import { gainChange, leakageWhenWarm, seriesLoss } from '../../../src/engine/equations/switch.ts';
import { chargingTime, timerAstable, timerPulse } from '../../../src/engine/equations/timing.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import { expectNear } from './near.ts';

/** Numbers are chosen so that each answer is worked out by hand. */

const to = (min: number, typ: number, max: number): Range => ({ min, typ, max });

/** Two diodes of 1 V in the path, full wave, whose peak is 10 V. */
const supply = { rms: 12 / Math.SQRT2, drop: 2, current: 1, mains: 50, pulses: 2 } as const;

/** Hz, for so many radians a second. */
const hertz = (omega: number): number => omega / (2 * Math.PI);

const q = 3 ** (1 / 4);

const cases: [what: string, got: number | object, expected: number | object][] = [
  [
    'offset and bias current in 1 MΩ at a gain of 10',
    steadyError(to(1e-3, 2e-3, 3e-3), to(1e-9, 2e-9, 3e-9), 1e6, 10),
    to(20e-3, 40e-3, 60e-3),
  ],
  [
    'bandwidth at a gain of 10 for 20 kHz',
    bandwidthLeft(to(1e6, 2e6, 3e6), 10, 20e3),
    to(5, 10, 15),
  ],
  ['slew for 10 V at 1000 rad/s', slewLeft(to(5e5, 6e5, 7e5), hertz(1000), 10), to(50, 60, 70)],
  [
    'phase left with poles at √3, 1 and 1/√3 of the crossing: tangents of 60, 45 and 30 degrees',
    phaseWithLoad(
      to(hertz(1e6) / q, hertz(1e6), hertz(1e6) * q),
      to(100 / q, 100, 100 * q),
      10,
      1e-7,
    ),
    to(30, 45, 60),
  ],
  ['noise without a source', noiseWithSource(to(3, 4, 5), exactly(1e-9), 0), to(3, 4, 5)],
  ['noise of 1 kΩ, 4.06 nV', noiseWithSource(exactly(0), exactly(0), 1e3), exactly(4.05778462e-9)],
  [
    'shot noise of 1 µA in 1 MΩ, 566 nV, beside 128 nV of the resistance',
    noiseWithSource(exactly(0), exactly(1e-6), 1e6),
    exactly(5.804316e-7),
  ],
  [
    'a cold resistance has no noise of its own',
    noiseWithSource(exactly(2), exactly(0), 1e6, -273.15),
    exactly(2),
  ],
  ['share of a limit', shareOfLimit(to(1, 2, 3), 2), to(0.5, 1, 1.5)],
  ['two of 20 % in a row: 1.2/2', worstShare({ minus: 0.2, plus: 0.2 }), 0.6],
  ['two of -10 +30 % in a row: 1.3/2.2', worstShare({ minus: 0.1, plus: 0.3 }), 13 / 22],
  ['100 V shared over 100 kΩ, 100 µA apart', standingShare(100, 1e5, 1e-4), 0.55],
  ['one takes all of 100 V at most', standingShare(100, 1e7, 1e-4), 1],
  ['resistors that share 100 V no worse than 55 %', equalisingResistor(100, 0.55, 1e-4), 1e5],
  ['parts that leak alike need none', equalisingResistor(100, 0.5, 0), Infinity],
  ['10 V across 5 Ω', dissipation(10, 5), 20],
  ['resistances in a row', sumOf([to(1, 2, 3), to(4, 5, 6), to(7, 8, 9)]), to(12, 15, 18)],
  ['resistances side by side', besideEachOther([to(2, 3, 6), to(2, 6, 6)]), to(1, 2, 3)],
  ['nothing beside a resistance', besideEachOther([to(0, 3, 6), to(2, 6, 6)]), to(0, 2, 3)],
  ['10 Ω before 1 µF at 10 000 rad/s', lossByResistor(hertz(1e4), 10, 1e-6), 0.1],
  ['diode of 1 to 3 µs at 100 kHz', recoveryShare(to(1e-6, 2e-6, 3e-6), 1e5), to(0.1, 0.2, 0.3)],
  [
    'half of 10 V at the peak on a part that loses 30 % at 50 V: 4/(15·π)·0.3·0.1',
    thirdHarmonic(-0.3, 50, 10 / Math.SQRT2, 0.5),
    0.002546479,
  ],
  ['edge of 1 V/µs on a part that stands 4', edgeShare(1e6, 4e6), 0.25],
  ['edge of 2 V/µs into 1 µF', edgeCurrent(1e-6, 2e6), 2],
  [
    'R 4 to 7.5 Ω beside a reactance from −4 by way of −3 to 3 Ω: R alone where they cancel',
    impedanceSpan(hertz(1e4), to(4, 4, 7.5), to(0.6e-3, 0.7e-3, 1.3e-3), 1e-5),
    to(4, 5, 8.5),
  ],
  [
    '10 Ω at its resonance beside 10 Ω of reactance: 10/√2',
    parallelImpedance(hertz(1e4), [
      { resistance: 10, inductance: 1e-3, capacitance: 1e-5 },
      { resistance: 0, inductance: 2e-3, capacitance: 1e-5 },
    ]),
    10 / Math.SQRT2,
  ],
  [
    'two of 3 Ω and 4 Ω of reactance: half of 5 Ω',
    parallelImpedance(hertz(1e4), [
      { resistance: 3, inductance: 1.4e-3, capacitance: 1e-5 },
      { resistance: 3, inductance: 1.4e-3, capacitance: 1e-5 },
    ]),
    2.5,
  ],
  [
    'peak of 10 V that sags by half: conducts from 60 degrees before the peak',
    rectified({ ...supply, farad: 2e-3 }),
    { peak: 10, ripple: 5, trough: 5, conduction: 1 / 3, pulse: 6 },
  ],
  [
    'too small a reservoir empties',
    rectified({ ...supply, farad: 1e-4 }),
    { peak: 10, ripple: 10, trough: 0, conduction: 0.5, pulse: 4 },
  ],
  [
    'a winding below the drop of its diodes',
    rectified({ ...supply, rms: 1, farad: 1e-3 }),
    { peak: 0, ripple: 0, trough: 0, conduction: 0.5, pulse: 4 },
  ],
  [
    'no load',
    rectified({ ...supply, current: 0, farad: 1e-3 }),
    { peak: 10, ripple: 0, trough: 10, conduction: 0, pulse: 0 },
  ],
  [
    'low-pass about a follower, time constant of 400 µs',
    followerLowPass(10e3, 40e3, 40e-9, 10e-9),
    { frequency: hertz(2500), quality: 0.8 },
  ],
  [
    'high-pass about a follower, time constant of 400 µs',
    followerHighPass(10e3, 40e3, 10e-9, 40e-9),
    { frequency: hertz(2500), quality: 0.8 },
  ],
  [
    'low-pass of Q 0.5 an octave up: 1/5',
    lowPassLevel({ frequency: 1000, quality: 0.5 }, 2000),
    -20 * Math.log10(5),
  ],
  [
    'high-pass of Q 0.5 an octave down: 1/5',
    highPassLevel({ frequency: 1000, quality: 0.5 }, 500),
    -20 * Math.log10(5),
  ],
  ['resistances before 90 Ω', seriesLoss(to(10, 30, 90), 90), to(0.1, 0.25, 0.5)],
  [
    'a switch of 110 Ω at its peak into 90 Ω, whose least resistance is not known well',
    gainChange(exactly(110), to(10, 60, 110), 90),
    to(0, 0.25, 0.5),
  ],
  ['a switch that has no peak', gainChange(exactly(10), exactly(60), 90), exactly(0)],
  ['junction 20 K warmer', leakageWhenWarm(to(1, 2, 3), 45, 10), to(4, 8, 12)],
  ['junction 20 K warmer that doubles each 5', leakageWhenWarm(to(1, 2, 3), 45, 5), to(16, 32, 48)],
  ['junction 20 K cooler', leakageWhenWarm(to(1, 2, 3), 5, 10), to(1, 2, 3)],
  ['to 1 - 1/e² in two time constants', chargingTime(1e3, 1e-6, 1 - Math.E ** -2), 2e-3],
  [
    'timer running free with 1 kΩ, 2 kΩ, 1 µF: ln 2 of 3 ms and of 2 ms',
    timerAstable(1e3, 2e3, 1e-6) ?? {},
    { high: 2.0794415e-3, low: 1.3862944e-3 },
  ],
  ['timer triggered once with 1 kΩ, 1 µF: ln 3 of 1 ms', timerPulse(1e3, 1e-6) ?? 0, 1.0986123e-3],
  [
    'the same with 0.5 mA of leakage from 3 V: it makes for 5/6, ln 5 of 1 ms',
    timerPulse(1e3, 1e-6, { leak: 0.5e-3, supply: 3 }) ?? 0,
    1.6094379e-3,
  ],
  [
    'timer running free with 1 kΩ twice, 0.25 mA from 3 V: ln 3 of 2 ms up to 5/6, ln 1.8 of 1 ms down',
    timerAstable(1e3, 1e3, 1e-6, { leak: 0.25e-3, supply: 3 }) ?? {},
    { high: 2.1972246e-3, low: 0.5877867e-3 },
  ],
];

it('a timer whose leakage takes all of the current at two thirds never gets there', () => {
  const leaking = { leak: 1.1e-3, supply: 3 };
  expect(timerPulse(1e3, 1e-6, leaking)).toBeUndefined();
  expect(timerAstable(500, 500, 1e-6, leaking)).toBeUndefined();
});

describe('equations of circuits worked out by hand', () => {
  it.each(cases)('%s', (_what, got, expected) => expectNear(got, expected));
});

describe('disc replay against 1 kHz', () => {
  it.each([
    [20, 19.27],
    [100, 13.09],
    [1000, 0],
    [10_000, -13.73],
    [20_000, -19.62],
  ])('%d Hz', (frequency, level) =>
    expect(
      discReplayLevel(frequency, { bass: 3180e-6, middle: 318e-6, treble: 75e-6 }),
    ).toBeCloseTo(level, 2),
  );
});
