import { describe, expect, it } from 'vitest';
import { absorptionError, recoveryDecades } from '../../src/engine/equations/absorption.ts';
import {
  cornerFrequency,
  levelPassed,
  resistanceForCorner,
} from '../../src/engine/equations/coupling.ts';
import { driftBySlope } from '../../src/engine/equations/drift.ts';
import { seriesImpedance } from '../../src/engine/equations/impedance.ts';
import { droop, leakageOfPart, leakageOffset } from '../../src/engine/equations/leakage.ts';
import { cents } from '../../src/engine/equations/pitch.ts';
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

const corner = (farad: number, ohm: number): number => cornerFrequency(exactly(farad), ohm).typ;

const cases: Case[] = [
  {
    what: 'corner of 2 µF into 10 kΩ',
    source: 'printed answer, All About Circuits forum thread 209396',
    got: corner(2e-6, 10e3),
    expected: 7.95,
    within: 0.003,
  },
  {
    what: 'corner of 1000 µF into 4 Ω',
    source: 'printed answer, Electronics Stack Exchange question 298683',
    got: corner(1000e-6, 4),
    expected: 40,
    within: 0.01,
  },
  {
    what: 'corner of 100 nF into 5.6 kΩ',
    source: 'printed answer, article on driving a spring line',
    got: corner(100e-9, 5600),
    expected: 284,
    within: 0.005,
  },
  {
    what: 'corner of 1 µF into 2 kΩ and 5 kΩ in series',
    source: 'printed answer, textbook question on coupling poles',
    got: corner(1e-6, 7000),
    expected: 22.73,
    within: 0.001,
  },
  {
    what: 'corner of an all-pass with 10 kΩ and 0.1 µF',
    source: 'printed values, note on phase shifters',
    got: corner(0.1e-6, 10e3),
    expected: 159,
    within: 0.003,
  },
  {
    what: 'resistance for a corner at 10 Hz with 0.16 µF',
    source: 'printed answer turned round (100 kΩ asks for 0.16 µF), forum thread 143426',
    got: resistanceForCorner(0.16e-6, 10),
    expected: 100e3,
    within: 0.01,
  },
  {
    what: 'level a decade above a corner',
    source: 'identity',
    got: levelPassed(20, 2),
    expected: -0.043,
    within: 0.02,
  },
  {
    what: 'current that makes 1 µF droop 5 mV a minute',
    source: 'droop and capacitance printed, sample-and-hold amplifier data sheet of 1976',
    got: droop(10, 1e-6, exactly(83.3e-12), exactly(0), 60).total.typ,
    expected: 5e-3,
    within: 0.01,
  },
  {
    what: 'droop of 10 nF by 50 pA in 10 ms',
    source: 'identity',
    got: droop(10, 10e-9, exactly(50e-12), exactly(0), 10e-3).total.typ,
    expected: 50e-6,
    within: 0.001,
  },
  {
    what: 'grid offset: 250 V, leak of 50 MΩ, 470 kΩ',
    source: 'identity',
    got: leakageOffset(250, 470e3, exactly(50e6)).typ,
    expected: 2.33,
    within: 0.01,
  },
  {
    what: 'leakage of 1 µF at 100 V with 100 000 MΩ·µF',
    source: 'film comparison table of a maker, 100 000 MΩ·µF at 25 °C',
    got: leakageOfPart({ constant: exactly(1e5), halving: exactly(10) }, 1e-6, 100, 25).current.typ,
    expected: 1e-9,
    within: 0.01,
  },
  {
    what: 'leakage limit by 0.01CV: 2200 µF at 35 V',
    source: 'printed answer, frequently asked questions of an electrolytic maker',
    got: leakageOfPart(
      { constant: exactly(100), halving: exactly(10), floor: 3e-6 },
      2200e-6,
      35,
      25,
    ).current.max,
    expected: 770e-6,
    within: 0.001,
  },
  {
    what: 'absorption error of polyester: 0.2 % of a 10 V step in a one-decade hold',
    source: '0.2 % printed, sample-and-hold amplifier data sheet',
    got: absorptionError(10, exactly(0.002), { short: 1, open: 9 }).typ,
    expected: 20e-3,
    within: 0.01,
  },
  {
    what: 'decades between 10 s short and 15 min open',
    source: 'identity',
    got: recoveryDecades({ short: 10, open: 900 }),
    expected: 1.96,
    within: 0.002,
  },
  {
    what: 'decades between 6 s short and 1 min open',
    source: 'identity',
    got: recoveryDecades({ short: 6, open: 60 }),
    expected: 1.04,
    within: 0.002,
  },
  {
    what: 'cents for 10 K at 100 ppm/K',
    source: 'identity',
    got: cents(driftBySlope(exactly(100e-6), 10)).typ,
    expected: 1.73,
    within: 0.005,
  },
  {
    what: 'impedance of 100 nF and 1 nH is only resistance at 15.9 MHz',
    source: 'printed answer, note on self-resonance',
    got: seriesImpedance(15.9155e6, 0.05, 1e-9, 100e-9),
    expected: 0.05,
    within: 0.001,
  },
];

describe('equations against published or hand-worked answers', () => {
  it.each(cases)('$what ($source)', ({ got, expected, within }) => {
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(Math.abs(expected) * within);
  });
});
