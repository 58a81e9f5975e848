import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { spanOf } from '../../../src/engine/sums/span.ts';
import { netlistOf, PRECISE, within, type SimulatedCase } from '../case.ts';
import { between, lastOf, polarOf, realOf, risesThrough, type Waves } from '../waves.ts';

const catalogue = loadCatalogue();

/** What a sum says of inputs as people write them. */
const worked = (id: string, inputs: Record<string, string>, output: string): number => {
  const sum = allSums.find((one) => one.id === id);
  if (sum === undefined) throw new Error(`there is no sum ${id}`);
  const facts = sum.facts?.(catalogue);
  return spanOf(sum, readInputs(sum, facts, inputs).given, facts)[output]?.typ ?? NaN;
};

const linear = { ratio: within(1e-3), because: 'both are exact for a linear circuit' };
const timed = { ratio: within(2e-3), because: 'the solver’s steps part the times' };

const decibels = (waves: Waves, name: string): number =>
  20 * Math.log10(polarOf(waves, name)[0]?.magnitude ?? NaN);

const at = (hertz: number): string => `.ac lin 1 ${hertz} ${hertz}`;

/** A follower without faults, as a source that repeats a node. */
const follower = (from: string, to: string): string => `E1 ${to} 0 ${from} 0 1`;

const lowPass = (hertz: number): SimulatedCase => ({
  what: `level of a second-order low-pass at ${hertz} Hz`,
  circuit: '22 kΩ, 10 kΩ, 22 nF from the output, 10 nF to ground about a follower',
  netlist: netlistOf(
    'low-pass about a follower',
    'V1 in 0 0 AC 1',
    'R1 in a 22k',
    'R2 a b 10k',
    'C1 a out 22n',
    'C2 b 0 10n',
    follower('b', 'out'),
    at(hertz),
  ),
  simulated: (waves) => decibels(waves, 'v(out)'),
  engine: worked(
    'second-order-filter',
    { r1: '22k', r2: '10k', c1: '22n', c2: '10n', f: `${hertz} Hz` },
    'level',
  ),
  unit: 'dB',
  ...linear,
});

const highPass = (hertz: number): SimulatedCase => ({
  what: `level of a second-order high-pass at ${hertz} Hz`,
  circuit: '15 nF, 10 nF, 10 kΩ from the output, 33 kΩ to ground about a follower',
  netlist: netlistOf(
    'high-pass about a follower',
    'V1 in 0 0 AC 1',
    'C1 in a 15n',
    'C2 a b 10n',
    'R1 a out 10k',
    'R2 b 0 33k',
    follower('b', 'out'),
    at(hertz),
  ),
  simulated: (waves) => decibels(waves, 'v(out)'),
  engine: worked(
    'second-order-filter',
    { kind: 'high', r1: '10k', r2: '33k', c1: '15n', c2: '10n', f: `${hertz} Hz` },
    'level',
  ),
  unit: 'dB',
  ...linear,
});

const decoupled = (hertz: number): SimulatedCase => ({
  what: `impedance of three decoupling parts side by side at ${hertz} Hz`,
  circuit: '47 µF 0.3 Ω 15 nH, 100 nF 50 mΩ 6 nH, 1 nF 50 mΩ 4 nH',
  netlist: netlistOf(
    'three parts side by side',
    'I1 0 rail 0 AC 1',
    'R1 rail a1 0.3',
    'L1 a1 b1 15n',
    'C1 b1 0 47u',
    'R2 rail a2 50m',
    'L2 a2 b2 6n',
    'C2 b2 0 100n',
    'R3 rail a3 50m',
    'L3 a3 b3 4n',
    'C3 b3 0 1n',
    'Rdc rail 0 1e12',
    at(hertz),
  ),
  simulated: (waves) => polarOf(waves, 'v(rail)')[0]?.magnitude ?? NaN,
  engine: worked(
    'decoupling',
    {
      parts: 'three',
      c2: '100n',
      r2: '50m',
      l2: '6n',
      c3: '1n',
      r3: '50m',
      l3: '4n',
      f: `${hertz} Hz`,
    },
    'impedance',
  ),
  unit: 'ohm',
  ...linear,
});

const bypassed = (hertz: number): SimulatedCase => ({
  what: `gain that a bypass leaves at ${hertz} Hz`,
  circuit: '22 µF across 820 Ω, 667 Ω into the device',
  netlist: netlistOf(
    'bypassed degeneration',
    'V1 in 0 0 AC 1',
    'R1 in foot 667',
    'R2 foot 0 820',
    'C1 foot 0 22u',
    // Current into the device, as a share of what it would be with the foot at ground.
    'E1 gain 0 in foot 1',
    at(hertz),
  ),
  simulated: (waves) => decibels(waves, 'v(gain)'),
  engine: worked('bypass-shelf', { c: '22u', r: '820', into: '667', f: `${hertz} Hz` }, 'level'),
  unit: 'dB',
  ...linear,
});

/** One way of making the transfer of three time constants: pole, zero and pole, each buffered. */
const replay = (hertz: number): SimulatedCase => ({
  what: `disc replay at ${hertz} Hz against 1 kHz`,
  circuit: '3180, 318 and 75 µs, buffered from each other',
  netlist: netlistOf(
    'disc replay',
    'V1 in 0 0 AC 1',
    'R1 in a 1k',
    'C1 a 0 3.18u',
    'G1 0 b a 0 1',
    'R2 b c 1',
    'L2 c 0 318u',
    'E1 d 0 b 0 1',
    'R3 d out 1k',
    'C3 out 0 75n',
    `.ac lin 3 ${Math.min(hertz, 1000)} ${Math.max(hertz, 1000)}`,
  ),
  simulated: (waves) => {
    const levels = polarOf(waves, 'v(out)');
    const [low, high] = [levels[0], levels.at(-1)];
    const [own, reference] = hertz < 1000 ? [low, high] : [high, low];
    return 20 * Math.log10((own?.magnitude ?? NaN) / (reference?.magnitude ?? NaN));
  },
  engine: worked('disc-equaliser', { f: `${hertz} Hz` }, 'level'),
  unit: 'dB',
  ...linear,
});

const charged: SimulatedCase = {
  what: 'time of a resistor and a capacitor to 40 % of a step',
  circuit: '47 kΩ and 220 nF from 0 towards 1 V',
  netlist: netlistOf(
    'charging',
    'V1 in 0 1',
    'R1 in out 47k',
    'C1 out 0 220n IC=0',
    '.tran 5u 20m uic',
  ),
  simulated: (waves) => risesThrough(waves, 'v(out)', 0.4)[0] ?? NaN,
  engine: worked('rc-timing', { r: '47k', c: '220n', x: '40 %' }, 'time'),
  unit: 's',
  ...timed,
};

/** Charges through both resistors, and is discharged through one, between a third and two thirds. */
const freeRunning: SimulatedCase = {
  what: 'period of the 555 timer',
  circuit: '10 kΩ, 47 kΩ and 100 nF with a switch that turns at one and two thirds of 9 V',
  netlist: netlistOf(
    'timer',
    'V1 supply 0 9',
    'RA supply top 10k',
    'RB top c 47k',
    'C1 c 0 100n IC=3',
    // The switch of the chip: closes above two thirds, opens below one third.
    'S1 top 0 c 0 chip off',
    '.model chip sw(vt=4.5 vh=1.5 ron=1m roff=1e12)',
    '.tran 2u 40m uic',
  ),
  simulated: (waves) => {
    const rises = risesThrough(waves, 'v(c)', 4.5);
    return (rises[2] ?? NaN) - (rises[1] ?? NaN);
  },
  engine: worked('timer-chip', { ra: '10k', rb: '47k', c: '100n' }, 'time'),
  unit: 's',
  ratio: within(5e-3),
  because: 'the switch turns at a step of the solver',
};

const discharged: SimulatedCase = {
  what: 'time to come down to 30 V',
  circuit: '100 µF at 350 V through 2.2 kΩ',
  netlist: netlistOf(
    'discharge',
    'C1 a 0 100u IC=350',
    'R1 a 0 2.2k',
    // What rises through zero as the voltage falls through 30 V.
    'B1 below 0 V=30-V(a)',
    '.tran 0.2m 1 uic',
  ),
  simulated: (waves) => risesThrough(waves, 'v(below)', 0)[0] ?? NaN,
  engine: worked('discharge', { c: '100u', v: '350', end: '30', r: '2.2k' }, 'time'),
  unit: 's',
  ...timed,
};

const swung: SimulatedCase = {
  what: 'voltage to which a coil swings a snubber, undamped',
  circuit: '100 mH with 0.5 A into 100 nF',
  netlist: netlistOf(
    'swing',
    'L1 0 a 100m IC=0.5',
    'C1 a 0 100n IC=0',
    PRECISE,
    '.tran 0.2u 400u uic',
  ),
  simulated: (waves) => Math.max(...realOf(waves, 'v(a)')),
  engine: worked('snubber', { c: '100n', i: '0.5', l: '100m' }, 'swing'),
  unit: 'V',
  ratio: within(5e-3),
  because: 'the solver damps a little',
};

const shared: SimulatedCase = {
  what: 'most across one of two in a row in the long run',
  circuit: '220 kΩ across each, 550 V, one leaks 300 µA more',
  netlist: netlistOf(
    'two in a row',
    'V1 top 0 550',
    'R1 top middle 220k',
    'R2 middle 0 220k',
    'I1 middle 0 300u',
    'E1 upper 0 top middle 1',
    '.op',
  ),
  simulated: (waves) => lastOf(waves, 'v(upper)'),
  engine: worked('series-pair', { r: '220k', v: '550', leak: '300u' }, 'standing'),
  unit: 'V',
  ...linear,
};

const divided: SimulatedCase = {
  what: 'divider under load',
  circuit: '9.1 kΩ over 1 kΩ with 4.7 kΩ across it, 10 V',
  netlist: netlistOf('divider', 'V1 a 0 10', 'R1 a b 9.1k', 'R2 b 0 1k', 'R3 b 0 4.7k', '.op'),
  simulated: (waves) => lastOf(waves, 'v(b)'),
  engine: worked('divider', { a: '9.1k', b: '1k', load: '4.7k', v: '10' }, 'out'),
  unit: 'V',
  ...linear,
};

const WIPER = { total: '10k', setting: '60 %', v: '10', load: '22k', contact: '1 %' };

const atWiper: SimulatedCase = {
  what: 'wiper of a trimmer under load',
  circuit: '10 kΩ across 10 V, set to 60 %, 22 kΩ at its wiper',
  netlist: netlistOf('wiper', 'V1 a 0 10', 'R1 a b 4k', 'R2 b 0 6k', 'R3 b 0 22k', '.op'),
  simulated: (waves) => lastOf(waves, 'v(b)'),
  engine: worked('trimmer-wiper', WIPER, 'out'),
  unit: 'V',
  ...linear,
};

const jumping: SimulatedCase = {
  what: 'jump of a loaded wiper by its contact',
  circuit: 'the same beside one with 100 Ω in its wiper',
  netlist: netlistOf(
    'jump',
    'V1 a 0 10',
    'R1 a b 4k',
    'R2 b 0 6k',
    'R3 b 0 22k',
    'R4 a c 4k',
    'R5 c 0 6k',
    'R6 c d 100',
    'R7 d 0 22k',
    'E1 jump 0 b d 1',
    '.op',
  ),
  simulated: (waves) => lastOf(waves, 'v(jump)'),
  engine: worked('trimmer-wiper', WIPER, 'jump'),
  unit: 'V',
  ...linear,
};

/** Pulses of charge as they really are, through a little resistance. */
const pulsed: SimulatedCase = {
  what: 'highest of the charging pulses of a reservoir',
  circuit: '15 V at 50 Hz through a bridge and 0.1 Ω into 2200 µF, 300 mA drawn',
  netlist: netlistOf(
    'reservoir',
    'B1 in 0 V=abs(21.2132*sin(2*3.14159265358979*50*time))',
    'D1 in a diode',
    '.model diode D(is=1e-9 n=1.8 rs=0)',
    'R1 a c 0.1',
    'C1 c 0 2200u IC=19',
    'I1 c 0 300m',
    'E1 pulse 0 a c 10',
    '.tran 10u 400m uic',
  ),
  simulated: (waves) => Math.max(...between(waves, 'v(pulse)', 0.3, 0.4)),
  engine: worked(
    'reservoir',
    { vac: '15', drop: '0.8', i: '300m', f: '50', c: '2200u', r: '0.1' },
    'pulse',
  ),
  unit: 'A',
  ratio: { low: 0.6, high: 1.05 },
  because: 'the equation leaves out resistance, which lowers and lengthens the pulse',
};

/** Sums whose circuits are not among the others. */
export const benchSumCases: SimulatedCase[] = [
  ...[200, 800, 3000].map(lowPass),
  ...[200, 1000, 5000].map(highPass),
  ...[1e4, 5e6, 2e7, 2e8].map(decoupled),
  ...[2, 20, 200].map(bypassed),
  ...[20, 100, 10_000].map(replay),
  charged,
  freeRunning,
  discharged,
  swung,
  shared,
  divided,
  atWiper,
  jumping,
  pulsed,
];
