import { describe, it } from 'vitest';
import { cornerFrequency, levelPassed, phaseLead } from '../../src/engine/equations/coupling.ts';
import { driftBySlope, driftWithResistor } from '../../src/engine/equations/drift.ts';
import {
  insulationAt,
  insulationResistance,
  leakageThrough,
} from '../../src/engine/equations/leakage.ts';
import { levelBehind, levelChange, seriesForChange } from '../../src/engine/equations/level.ts';
import { reactiveCurrent, timeToFall, voltageLeft } from '../../src/engine/equations/mains.ts';
import { cents } from '../../src/engine/equations/pitch.ts';
import { selfResonance } from '../../src/engine/equations/resonance.ts';
import { holdStep, settlingConstants, settlingTime } from '../../src/engine/equations/sampling.ts';
import { frequencyShift, timeShift } from '../../src/engine/equations/shift.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { expectAnswer, type Case } from './equation-case.ts';

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
    what: 'shift of a time by a part that keeps 70 to 110 % of its mark, at the worse end',
    source: 'identity: a time goes with R*C',
    got: timeShift({ min: 0.7e-6, typ: 0.95e-6, max: 1.1e-6 }, 1e-6).max,
    expected: 0.3,
    within: 1e-9,
  },
  {
    what: 'the same at its best, since it passes its mark on the way',
    source: 'identity',
    got: timeShift({ min: 0.7e-6, typ: 0.95e-6, max: 1.1e-6 }, 1e-6).min,
    expected: 0,
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

/** Insulation (ohm) promised as 1000 MΩ·µF or 100 000 MΩ, whichever is less. */
const promised = (farad: number): number =>
  insulationResistance(exactly(1000), farad, exactly(1e11)).typ;

const insulation: Case[] = [
  {
    what: 'insulation of 1 nF where 1000 MΩ·µF or 100 GΩ are promised',
    source: 'rule printed, general specifications of leaded C0G and X7R parts',
    got: promised(1e-9),
    expected: 1e11,
    within: 1e-9,
  },
  {
    what: 'insulation of 100 nF by the same rule',
    source: 'rule printed, general specifications of leaded C0G and X7R parts',
    got: promised(100e-9),
    expected: 1e10,
    within: 1e-9,
  },
  {
    what: 'insulation of 1 µF polypropylene of 30 000 s',
    source: 'formula printed, data sheet of a pulse series',
    got: insulationResistance(exactly(30_000), 1e-6).typ,
    expected: 30e9,
    within: 1e-9,
  },
  {
    what: 'insulation of mica of 100 000 MΩ at 25 °C, at 125 °C',
    source: 'printed answer (10 000 MΩ), application guide of a mica maker',
    got: insulationAt(exactly(1e11), exactly(30.1), 125).typ,
    expected: 1e10,
    within: 0.01,
  },
  {
    what: 'leakage of a 1 nF disc of 10 000 MΩ at 100 V',
    source: 'limit printed, specification of ceramic discs',
    got: leakageThrough(100, insulationResistance(exactly(1000), 1e-9, exactly(1e10))).typ,
    expected: 10e-9,
    within: 1e-9,
  },
];

const levels: Case[] = [
  {
    what: 'level at 8 Ω behind 1 Ω',
    source: 'identity: 20·log10(8/9)',
    got: levelBehind(8, 1),
    expected: -1.0231,
    within: 1e-4,
  },
  {
    what: 'treble gained at 8 Ω where a film takes the place of a bipolar part of 1 Ω',
    source: 'common practice: up to 1 dB, by the 0.3 to 1 Ω of such parts',
    got: levelChange(8, 1, exactly(0.008)).typ,
    expected: 1,
    within: 0.03,
  },
  {
    what: 'resistance in series with 8 Ω that makes up for 1 Ω taken away',
    source: 'identity',
    got: seriesForChange(8, 1, 0),
    expected: 1,
    within: 1e-9,
  },
  {
    what: 'resistance in series with 8 Ω that leaves 6 dB less than none',
    source: 'identity: half the voltage at 8 Ω in series with 8 Ω',
    got: seriesForChange(8, 0, -20 * Math.log10(2)),
    expected: 8,
    within: 1e-9,
  },
];

const cases = [...shifts, ...sampling, ...mains, ...passive, ...insulation, ...levels];

describe('equations of circuits against published or hand-worked answers', () => {
  it.each(cases)('$what ($source)', expectAnswer);
});
