import { describe, expect, it } from 'vitest';
import {
  lossResistance,
  storedEnergy,
  surgeCurrent,
  switchOnPeak,
} from '../../src/engine/equations/inrush.ts';

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

const cases = [...inrush];

describe('equations of circuits against published or hand-worked answers', () => {
  it.each(cases)('$what ($source)', ({ got, expected, within }) => {
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(Math.abs(expected) * within);
  });
});
