import { netlistOf, type SimulatedCase } from '../case.ts';
import { polarOf, realOf, type Waves } from '../waves.ts';

/**
 * The loop of a low-drop regulator, opened at its input: an error amplifier with one pole, a pass
 * device with another, which drives load and output capacitor with a current. All numbers are round
 * ones of the order that makers' notes on such regulators give; none is of a certain type.
 */
const GAIN = 10e3;
const AMPLIFIER_POLE = 1e3;
const PASS_POLE = 500e3;
const LOAD = 100;
const OUTPUT = 22e-6;

/** Phase (degrees) that a loop must have left to be called steady, as is customary. */
const STEADY = 45;

/** Ten series resistances a decade from 1 milliohm to 100 ohm. */
export const resistances = Array.from({ length: 51 }, (_, index) => 10 ** (index / 10 - 3));

const poleOf = (hertz: number): number => 1 / (2 * Math.PI * hertz);

export const regulatorNetlist = netlistOf(
  'loops of one regulator with many output capacitors',
  'Vs in 0 0 AC 1',
  `Ga 0 amplifier in 0 ${GAIN}`,
  'Ra amplifier 0 1',
  `Ca amplifier 0 ${poleOf(AMPLIFIER_POLE)}`,
  'Gb 0 pass amplifier 0 1',
  'Rb pass 0 1',
  `Cb pass 0 ${poleOf(PASS_POLE)}`,
  ...resistances.flatMap((ohm, index) => [
    `Go${index} 0 out${index} pass 0 ${1 / LOAD}`,
    `Rl${index} out${index} 0 ${LOAD}`,
    `Re${index} out${index} c${index} ${ohm}`,
    `Co${index} c${index} 0 ${OUTPUT}`,
  ]),
  '.ac dec 50 10 100meg',
);

/** Phase (degrees) left where the gain round the loop has fallen to one. */
const marginOf = (waves: Waves, index: number): number => {
  const points = polarOf(waves, `v(out${index})`);
  const crossing = points.find(({ magnitude }) => magnitude <= 1);
  if (crossing === undefined) throw new Error('the gain never falls to one');
  const lag = crossing.phase > 0 ? crossing.phase - 360 : crossing.phase;
  return 180 + lag;
};

/** The margin of every series resistance, in their order. */
export const marginsOf = (waves: Waves): number[] => {
  if (realOf(waves, 'frequency').length === 0) throw new Error('nothing simulated');
  return resistances.map((_, index) => marginOf(waves, index));
};

const steadyResistances = (waves: Waves): number[] => {
  const margins = marginsOf(waves);
  return resistances.filter((_, index) => (margins[index] ?? NaN) >= STEADY);
};

const plausible = {
  circuit: 'loop of three poles, 22 µF and 100 ohm at its output, 10 000 times gain',
  netlist: regulatorNetlist,
  unit: 'ohm',
  ratio: { low: 1 / Math.sqrt(10), high: Math.sqrt(10) },
  because: 'plausibility only: the window of a type depends on its own poles, load and capacitor',
  catches: 10,
};

/** Ends of the window that one data sheet of such a regulator prints, as the catalogue has them. */
export const regulatorCases: SimulatedCase[] = [
  {
    ...plausible,
    what: 'least series resistance that leaves a regulator 45° of phase',
    simulated: (waves) => Math.min(...steadyResistances(waves)),
    engine: 0.1,
  },
  {
    ...plausible,
    what: 'greatest series resistance that leaves a regulator 45° of phase',
    simulated: (waves) => Math.max(...steadyResistances(waves)),
    engine: 5,
  },
];
