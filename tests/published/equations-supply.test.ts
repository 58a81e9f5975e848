import { describe, it } from 'vitest';
import {
  storedEnergy,
  surgeCurrent,
  surgeShare,
  switchOnPeak,
} from '../../src/engine/equations/inrush.ts';
import { lossResistance } from '../../src/engine/equations/loss.ts';
import { voltageLifeFactor, wearLife } from '../../src/engine/equations/life.ts';
import {
  canRise,
  currentForRise,
  rippleVoltage,
  triangularRms,
} from '../../src/engine/equations/ripple.ts';
import { resistanceBetween } from '../../src/engine/equations/series-resistance.ts';
import { canSurface } from '../../src/engine/equations/surface.ts';
import { coolingBy, voltageGainBy } from '../../src/engine/laws.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { ruleOf } from '../../src/engine/rule-of-thumb.ts';
import { catalogue } from '../engine/assessment/setting.ts';
import { expectAnswer, type Case } from './equation-case.ts';

const inrush: Case[] = [
  {
    what: 'surge of a 10 V tantalum with 0.9 Ω in a test circuit of 0.65 Ω',
    source: 'printed answer, technical summary of a tantalum maker',
    got: switchOnPeak(10, 0.65 + 0.9),
    expected: 6.45,
    within: 0.001,
  },
  {
    what: 'share of that surge which the test itself makes up',
    source: 'identity: the circuit is that of the test',
    got: surgeShare({ voltage: 10, source: 0.65, own: 0.9, rated: 10, test: 0.65 }),
    expected: 1,
    within: 1e-9,
  },
  {
    what: 'surge of a 25 V tantalum of 0.45 Ω switched to 13.6 V behind 0.33 Ω',
    source: 'the same rule, worked out by hand: 17.44 A of 22.73 A',
    got: surgeShare({ voltage: 13.6, source: 0.33, own: 0.45, rated: 25, test: 0.65 }),
    expected: 0.767,
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
    longest: ruleOf(catalogue, 'longest-life'),
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
    what: 'RMS ripple of 300 µF by 800 mA behind a full-wave rectifier on 60 Hz',
    source: 'formula printed (2.4 times mA over µF), textbook on power systems, sample problem',
    got: triangularRms(sag(0.8, 120, 300e-6)),
    expected: 6.4,
    within: 0.005,
  },
  {
    what: 'RMS value of a triangle of 1 V',
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
    got: canRise(1, 0.1, 10e-4, coolingBy(catalogue)),
    expected: 0.1 / (2.3e-3 * 10 ** -0.2 * 10),
    within: 1e-9,
  },
  {
    what: 'current that warms 0.1 Ω on 10 cm² by as much as 1 A does',
    source: 'formula printed, technical notes of an electrolytic maker, equations 4.2 and 4.3',
    got: currentForRise(0.1 / (2.3e-3 * 10 ** -0.2 * 10), 0.1, 10e-4, coolingBy(catalogue)),
    expected: 1,
    within: 1e-9,
  },
  {
    what: 'series resistance at 1 kHz of a part of 10 mΩ and a loss that makes 90 mΩ more at 100 Hz',
    source: 'identity: 10 mΩ + 9 Ω·Hz/f',
    got: resistanceBetween(
      { frequency: 100, resistance: exactly(0.1) },
      { frequency: 1e5, resistance: exactly(0.01 + 9 / 1e5) },
      1000,
    ).typ,
    expected: 0.019,
    within: 1e-9,
  },
  {
    what: 'cooling surface of a can 10 mm wide and 16 mm long',
    source: 'identity: side and top, in cm²',
    got: canSurface((Math.PI / 4) * 0.01 ** 2 * 0.016, 1.6) * 1e4,
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
    what: 'life of 2000 h at 105 °C, used at 65 °C with 5 K of self-heating at 5 K a halving',
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
    got: voltageLifeFactor(8, 10, voltageGainBy(catalogue)),
    expected: 1.747,
    within: 0.001,
  },
  {
    what: 'life factor below 60 % of the rated voltage',
    source: 'printed answer, note on the life model of an electrolytic maker',
    got: voltageLifeFactor(1, 10, voltageGainBy(catalogue)),
    expected: 3.59,
    within: 0.002,
  },
];

const cases = [...inrush, ...ripple];

describe('equations of supplies against published or hand-worked answers', () => {
  it.each(cases)('$what ($source)', expectAnswer);
});
