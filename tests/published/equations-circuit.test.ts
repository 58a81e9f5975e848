import { describe, expect, it } from 'vitest';
import { cornerFrequency, levelPassed, phaseLead } from '../../src/engine/equations/coupling.ts';
import { driftBySlope, driftWithResistor } from '../../src/engine/equations/drift.ts';
import {
  lossResistance,
  storedEnergy,
  surgeCurrent,
  switchOnPeak,
} from '../../src/engine/equations/inrush.ts';

import { voltageLifeFactor, wearLife } from '../../src/engine/equations/life.ts';
import {
  canRise,
  canSurface,
  rippleVoltage,
  triangularRms,
} from '../../src/engine/equations/ripple.ts';
import { reactiveCurrent, timeToFall, voltageLeft } from '../../src/engine/equations/mains.ts';
import { cents } from '../../src/engine/equations/pitch.ts';
import { selfResonance } from '../../src/engine/equations/resonance.ts';
import { holdStep, settlingConstants, settlingTime } from '../../src/engine/equations/sampling.ts';
import { frequencyShift } from '../../src/engine/equations/shift.ts';
import { exactly } from '../../src/engine/quantities/range.ts';

interface Case {
  what: string;
  /** Where the answer or the formula was printed; `identity` where it was worked out by hand. */
  source: string;
  got: number;
  expected: number;
  /** Relative. */
  within: number;
}

const inrush: Case[] = [
  {
    what: 'surge of a 10 V tantalum with 0.9 Ω in a test circuit of 0.65 Ω',
    source: 'printed answer, technical summary of a tantalum maker',
    got: switchOnPeak(10, 0.65 + 0.9),
    expected: 6.45,
    within: 0.001,
  },
  {
    what: 'charge and energy from 47 µF to 220 µF',
    source: 'identity',
    got: storedEnergy(220e-6, 15) / storedEnergy(47e-6, 15),
    expected: 4.681,
    within: 0.001,
  },
  {
    what: 'energy of 220 µF at 15 V',
    source: 'identity',
    got: storedEnergy(220e-6, 15),
    expected: 24.75e-3,
    within: 1e-6,
  },
  {
    what: 'I2t of 1000 µF from 20 V through 0.5 Ω, as that of the half sine found',
    source: 'identity: V²C/(2R) = 0.4 A²s',
    got: (surgeCurrent(20, 0.5, 1000e-6, 0.01) ** 2 * 0.01) / 2,
    expected: 0.4,
    within: 1e-9,
  },
  {
    what: 'surge of 1 F from 20 V through 0.5 Ω, which the half cycle cannot fill',
    source: 'identity: V/R',
    got: surgeCurrent(20, 0.5, 1, 0.01),
    expected: 40,
    within: 1e-9,
  },
  {
    what: 'series resistance of 1000 µF with a loss of 0.20 at 100 Hz',
    source: 'formula and limit printed, data sheet of a radial electrolytic series',
    got: lossResistance(0.2, 100, 1000e-6),
    expected: 0.3183,
    within: 0.001,
  },
  {
    what: 'largest series resistance of 47 µF less 20 % with a loss of 0.18 at 100 Hz',
    source: 'printed answer, ratings table of a solid aluminium series',
    got: lossResistance(0.18, 100, 47e-6 * 0.8),
    expected: 7.6,
    within: 0.02,
  },
  {
    what: 'series resistance of 10 nF with a loss of 0.0006 at 100 kHz',
    source: 'limit printed, data sheet of a polypropylene film and foil series',
    got: lossResistance(6e-4, 100e3, 10e-9),
    expected: 0.09549,
    within: 0.001,
  },
];

const HOUR = 3600;

/** Life in hours by the rule of ten kelvin. */
const hours = (
  rated: number,
  ratedTemperature: number,
  ambient: number,
  more: { rise?: number; riseHalving?: number; doubling?: number; voltageFactor?: number } = {},
): number =>
  wearLife({
    rated: rated * HOUR,
    ratedTemperature,
    ambient,
    doubling: more.doubling ?? 10,
    rise: more.rise ?? 0,
    riseHalving: more.riseHalving ?? 10,
    voltageFactor: more.voltageFactor ?? 1,
  }) / HOUR;

const sag = (ampere: number, hertz: number, farad: number): number =>
  rippleVoltage(ampere, hertz, exactly(farad)).typ;

const ripple: Case[] = [
  {
    what: 'sag of 1283 µF by 154 mA in 8.33 ms',
    source:
      'printed answer turned round (1 V asks for 1283 µF), worked solution of a homework site',
    got: sag(0.154, 1 / 8.33e-3, 1283e-6),
    expected: 1,
    within: 0.002,
  },
  {
    what: 'sag of 5300 µF by 2 A in 8 ms',
    source:
      'printed answer turned round (3 V asks for 5300 µF), worked example on a page of filters',
    got: sag(2, 1 / 8e-3, 5300e-6),
    expected: 3,
    within: 0.02,
  },
  {
    what: 'effective ripple of 300 µF by 800 mA behind a full-wave rectifier on 60 Hz',
    source: 'formula printed (2.4 times mA over µF), textbook on power systems, sample problem',
    got: triangularRms(sag(0.8, 120, 300e-6)),
    expected: 6.4,
    within: 0.005,
  },
  {
    what: 'effective value of a triangle of 1 V',
    source: 'formula printed, notes on power supplies',
    got: triangularRms(1),
    expected: 0.2887,
    within: 0.001,
  },
  {
    what: 'ripple of 47 µF by 50 mA at 100 Hz',
    source: 'identity',
    got: sag(0.05, 100, 47e-6),
    expected: 10.64,
    within: 0.001,
  },
  {
    what: 'rise by 1 A in 0.1 Ω on 10 cm²',
    source: 'formula printed, technical notes of an electrolytic maker, equations 4.2 and 4.3',
    got: canRise(1, 0.1, 10e-4),
    expected: 0.1 / (2.3e-3 * 10 ** -0.2 * 10),
    within: 1e-9,
  },
  {
    what: 'cooling surface of a can 10 mm wide and 16 mm long',
    source: 'identity: side and top, in cm²',
    got: canSurface((Math.PI / 4) * 0.01 ** 2 * 0.016) * 1e4,
    expected: Math.PI * 1 * 1.6 + Math.PI / 4,
    within: 1e-9,
  },
  {
    what: 'life of 2000 h at 105 °C, used at 95 °C',
    source: 'printed answer, forum text on life',
    got: hours(2000, 105, 95),
    expected: 4000,
    within: 1e-9,
  },
  {
    what: 'life of 2000 h at 105 °C, used at 85 °C',
    source: 'printed answer, forum text on life',
    got: hours(2000, 105, 85),
    expected: 8000,
    within: 1e-9,
  },
  {
    what: 'life of 1000 h at 105 °C, used at 55 °C',
    source: 'printed answer, questions and answers of a power-supply maker',
    got: hours(1000, 105, 55),
    expected: 32_000,
    within: 1e-9,
  },
  {
    what: 'life of 1000 h at 105 °C, used at 45 °C',
    source: 'printed answer, questions and answers of a power-supply maker',
    got: hours(1000, 105, 45),
    expected: 64_000,
    within: 1e-9,
  },
  {
    what: 'life of 2000 h at 105 °C, used at 65 °C with 5 K of its own heat at 5 K a halving',
    source: 'rule printed, data sheet with a page on life',
    got: hours(2000, 105, 65, { rise: 5, riseHalving: 5 }),
    expected: 16_000,
    within: 1e-9,
  },
  {
    what: 'life of a polymer part of 2000 h at 105 °C, used at 85 °C',
    source: 'rule printed (ten times per 20 K), design guide of a component maker',
    got: hours(2000, 105, 85, { doubling: 20 * Math.log10(2) }),
    expected: 20_000,
    within: 1e-9,
  },
  {
    what: 'longest life that is vouched for',
    source: 'printed answer, table of a power supply: fifteen years',
    got: hours(2000, 105, 25),
    expected: 131_400,
    within: 1e-9,
  },
  {
    what: 'life factor at 80 % of the rated voltage',
    source: 'formula printed, note on the life model of an electrolytic maker',
    got: voltageLifeFactor(8, 10),
    expected: 1.747,
    within: 0.001,
  },
  {
    what: 'life factor below 60 % of the rated voltage',
    source: 'printed answer, note on the life model of an electrolytic maker',
    got: voltageLifeFactor(1, 10),
    expected: 3.59,
    within: 0.002,
  },
];

const shifts: Case[] = [
  {
    what: 'shift of a corner by a part of +1 %, of which the root counts',
    source: 'sensitivity of -1/2 printed, application note on active filters',
    got: frequencyShift(exactly(1.01), 1, 1 / 2).typ,
    expected: 0.00496,
    within: 0.01,
  },
  {
    what: 'shift of a corner by a part of +25 %',
    source: 'identity',
    got: frequencyShift(exactly(1.25), 1, 1).typ,
    expected: 0.2,
    within: 1e-9,
  },
  {
    what: 'pitch over 10 K with +50 ppm/K in the resistor and −150 ppm/K in the part',
    source: 'identity: net −1000 ppm',
    got: cents(driftWithResistor(exactly(-150e-6), exactly(50e-6), 10)).typ,
    expected: 1.73,
    within: 0.005,
  },
  {
    what: 'polystyrene of −120 ppm/K balanced by a resistor of +120 ppm/K',
    source: 'identity',
    got: driftWithResistor(exactly(-120e-6), exactly(120e-6), 20).max,
    expected: 0,
    within: 0,
  },
  {
    what: 'polyester of +400 ppm/K in its place: the two add',
    source: 'identity',
    got: driftWithResistor(exactly(400e-6), exactly(120e-6), 20).typ,
    expected: driftBySlope(exactly(520e-6), 20).typ,
    within: 1e-9,
  },
];

const sampling: Case[] = [
  {
    what: 'hold step of 1 nF by 11 pC',
    source: 'charge printed, design idea on a single-supply track and hold of 1995',
    got: holdStep(11e-12, exactly(1e-9)).typ,
    expected: 11e-3,
    within: 1e-9,
  },
  {
    what: 'hold step of 10 nF by 5 pC',
    source: 'step and capacitor printed, sample-and-hold data sheet',
    got: holdStep(5e-12, exactly(10e-9)).typ,
    expected: 0.5e-3,
    within: 1e-9,
  },
  {
    what: 'time constants to 10 bits',
    source: 'printed answer, pocket reference of a semiconductor maker',
    got: settlingConstants(2 ** 10, 1),
    expected: 6.93,
    within: 0.001,
  },
  {
    what: 'time constants to 20 bits',
    source: 'printed answer, pocket reference of a semiconductor maker',
    got: settlingConstants(2 ** 20, 1),
    expected: 13.86,
    within: 0.001,
  },
  {
    what: 'time constants to a tenth of a per cent',
    source: 'identity',
    got: settlingConstants(1, 0.001),
    expected: 6.908,
    within: 0.001,
  },
  {
    what: 'settling of 12 pF behind 10 kΩ to a quarter of 1 LSB of 6 bits',
    source: 'printed answer, Electronics Stack Exchange question 180057',
    got: settlingTime(exactly(10e3 * 12e-12), 2 ** 6, 0.25).typ,
    expected: 665.421e-9,
    within: 0.001,
  },
];

const mains: Case[] = [
  {
    what: 'current through 4.7 nF at 240 V and 50 Hz',
    source: 'printed answer, forum thread 59315',
    got: reactiveCurrent(50, exactly(4.7e-9), 240).typ,
    expected: 0.354e-3,
    within: 0.005,
  },
  {
    what: 'current through 1 nF at 230 V and 50 Hz',
    source: 'printed answer, page on leakage currents',
    got: reactiveCurrent(50, exactly(1e-9), 230).typ,
    expected: 73e-6,
    within: 0.015,
  },
  {
    what: 'largest part for 3.5 mA at 250 V and 50 Hz',
    source: 'limit printed, application note on leakage current',
    got: reactiveCurrent(50, exactly(44.6e-9), 250).typ,
    expected: 3.5e-3,
    within: 0.005,
  },
  {
    what: 'voltage left of 340 V after one time constant',
    source: 'printed answer (125.8 V with 37 %), quotation of a safety standard on a forum',
    got: voltageLeft(340, 1, 1),
    expected: 125.8,
    within: 0.006,
  },
  {
    what: 'time from 325 V to 34 V with 1 µF and 780 kΩ',
    source: 'identity: longer than the second that one standard allows',
    got: timeToFall(325, 34, 0.78),
    expected: 1.761,
    within: 0.001,
  },
];

const passive: Case[] = [
  {
    what: 'phase lead a decade above the corner',
    source: 'identity',
    got: phaseLead(20, 2),
    expected: 5.71,
    within: 0.003,
  },
  {
    what: 'phase lead at the corner, where 3 dB are lost',
    source: 'identity',
    got: phaseLead(20, 20) * (levelPassed(20, 20) / -3.0103),
    expected: 45,
    within: 1e-4,
  },
  {
    what: 'corner that leads by 45° at 7.95 Hz',
    source: 'printed answer (2 µF and 10 kΩ), forum thread 209396',
    got: phaseLead(7.95, cornerFrequency(exactly(2e-6), 10e3).typ),
    expected: 45,
    within: 0.003,
  },
  {
    what: 'self-resonance of 100 nF and 1 nH',
    source: 'printed answer, note on self-resonance',
    got: selfResonance(exactly(1e-9), 100e-9).typ,
    expected: 15.9e6,
    within: 0.003,
  },
  {
    what: 'self-resonance of 100 µF and 13 nH',
    source: 'inductance printed, data sheet of a radial electrolytic series',
    got: selfResonance(exactly(13e-9), 100e-6).typ,
    expected: 1.396e5,
    within: 0.01,
  },
  {
    what: 'resonance of 13.5 pF and 0.2 µH',
    source: 'printed answer, analysis of a Colpitts oscillator',
    got: selfResonance(exactly(0.2e-6), 13.5e-12).typ,
    expected: 96.8e6,
    within: 0.002,
  },
];

const cases = [...inrush, ...ripple, ...shifts, ...sampling, ...mains, ...passive];

describe('equations of circuits against published or hand-worked answers', () => {
  it.each(cases)('$what ($source)', ({ got, expected, within }) => {
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(Math.abs(expected) * within);
  });
});
