import { cents } from '../../../src/engine/equations/pitch.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { netlistOf, within, type SimulatedCase } from '../case.ts';
import { risesThrough, type Waves } from '../waves.ts';

const CAPACITANCE = 10e-9;
const RESISTANCE = 10e3;
const PERIODS = 12;

/** A comparator with positive feedback charges and discharges the capacitor through a resistor. */
const comparator = (name: string, capacitance: number): string[] => [
  `Bamp${name} drive${name} 0 V=5*tanh(1e5*(v(plus${name})-v(cap${name})))`,
  `Rlag${name} drive${name} out${name} 100`,
  `Clag${name} out${name} 0 1p IC=5`,
  `Ra${name} out${name} plus${name} 100k`,
  `Rb${name} plus${name} 0 100k`,
  `Rt${name} out${name} cap${name} ${RESISTANCE}`,
  `Ct${name} cap${name} 0 ${capacitance} IC=-2`,
];

const frequencyOf = (waves: Waves, name: string): number => {
  const rises = risesThrough(waves, `v(cap${name})`, 0).slice(1);
  const [first, last] = [rises[0] ?? NaN, rises.at(-1) ?? NaN];
  return (rises.length - 1) / (last - first);
};

/** Two integrators in a ring: a state-variable filter without damping, which rings for ever. */
const ring = (name: string, capacitance: number): string[] => [
  `Gp${name} 0 cap${name} low${name} 0 ${1 / RESISTANCE}`,
  `Cp${name} cap${name} 0 ${capacitance} IC=0`,
  `Gq${name} low${name} 0 cap${name} 0 ${1 / RESISTANCE}`,
  `Cq${name} low${name} 0 ${capacitance} IC=1`,
];

interface Oscillator {
  words: string;
  lines: (name: string, capacitance: number) => string[];
  options: string;
  period: number;
  stepsPerPeriod: number;
  tolerance: number;
  because: string;
}

const relaxation: Oscillator = {
  words: 'relaxation oscillator with a comparator, 10 kΩ and 10 nF',
  lines: comparator,
  options: '.options reltol=1e-5 method=gear',
  period: 2 * RESISTANCE * CAPACITANCE * Math.log(3),
  stepsPerPeriod: 500,
  tolerance: 0.02,
  because: 'the solver places the jumps of a comparator to a few ten-thousandths of a period',
};

const filter: Oscillator = {
  words: 'ring of two integrators, 10 kΩ and twice 10 nF',
  lines: ring,
  options: '.options reltol=1e-6 method=trap',
  period: 2 * Math.PI * RESISTANCE * CAPACITANCE,
  stepsPerPeriod: 500,
  tolerance: 0.002,
  because: 'the solver slows both rings alike, by a part in a hundred thousand',
};

const driftCase = (oscillator: Oscillator, change: number): SimulatedCase => {
  const { words, lines, options, period, stepsPerPeriod, tolerance, because } = oscillator;
  const step = period / stepsPerPeriod;
  return {
    what: `pitch when capacitance changes by ${change * 100} % in a ${words}`,
    circuit: `${words}, beside the same with changed capacitance`,
    netlist: netlistOf(
      'pitch of two oscillators',
      options,
      ...lines('a', CAPACITANCE),
      ...lines('b', CAPACITANCE * (1 + change)),
      `.tran ${step} ${PERIODS * period} 0 ${step} uic`,
    ),
    simulated: (waves) => 1200 * Math.log2(frequencyOf(waves, 'a') / frequencyOf(waves, 'b')),
    // Frequency goes with 1/C, so it falls by as many cents as C rises.
    engine: cents(exactly(change)).typ,
    unit: 'cents',
    ratio: within(tolerance),
    because,
  };
};

export const pitchCases: SimulatedCase[] = [
  ...[0.001, -0.001, 0.01, -0.01].map((change) => driftCase(filter, change)),
  ...[0.1, -0.1].map((change) => driftCase(relaxation, change)),
];
