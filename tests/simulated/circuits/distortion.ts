import { cornerFrequency, shareAcross } from '../../../src/engine/equations/coupling.ts';
import { thirdHarmonic } from '../../../src/engine/equations/distortion.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { netlistOf, within, type SimulatedCase } from '../case.ts';
import { harmonicOf, type Waves } from '../waves.ts';

const CAPACITANCE = 100e-9;
const LOAD = 10e3;
const RATED = 50;
/** Change of capacitance at rated voltage, fraction. */
const CHANGE = 0.01;
const CORNER = cornerFrequency(exactly(CAPACITANCE), LOAD).typ;
const PERIODS = 4;

export interface Drive {
  frequency: number;
  /** Peak across the part as a share of rated voltage. */
  peakShare: number;
}

/** Peak of the source (V) that puts the wanted peak across the part. */
const sourcePeak = ({ frequency, peakShare }: Drive): number =>
  (peakShare * RATED) / shareAcross(frequency, CORNER);

/** End of the simulation, s: the last periods follow fourteen time constants of settling. */
const settled = (frequency: number): number =>
  (PERIODS + Math.ceil((14 * frequency) / (2 * Math.PI * CORNER))) / frequency;

/** C(V) = C*(1 - change*(V/rated)^2) into a load; its charge is the integral of that. */
export const quadraticNetlist = (drive: Drive): string => {
  const { frequency } = drive;
  const bend = CHANGE / RATED ** 2;
  const v = 'v(source,load)';
  return netlistOf(
    'capacitance that falls with the square of voltage',
    '.options reltol=1e-7 method=trap',
    `Vs source 0 SIN(0 ${sourcePeak(drive)} ${frequency})`,
    `C1 source load Q='${CAPACITANCE}*(${v}-${bend}*${v}*${v}*${v}/3)'`,
    `R1 load 0 ${LOAD}`,
    `.tran ${1 / (500 * frequency)} ${settled(frequency)} 0 ${1 / (1000 * frequency)}`,
  );
};

/** Third harmonic at the load over the fundamental there. */
export const thirdAtLoad = (waves: Waves, { frequency }: Drive): number =>
  harmonicOf(waves, 'v(load)', frequency, 3, PERIODS) /
  harmonicOf(waves, 'v(load)', frequency, 1, PERIODS);

/**
 * The same by hand, for a small bend a: with the peak A across the part its charge lacks a*A^2/12 of
 * third harmonic, which the part adds in series at three times the frequency.
 */
export const thirdByHand = ({ frequency, peakShare }: Drive): number => {
  const passes = (hertz: number): number => Math.sqrt(1 - shareAcross(hertz, CORNER) ** 2);
  const ofPart = (CHANGE * peakShare ** 2) / 12;
  const share = shareAcross(frequency, CORNER);
  return (ofPart * share * passes(3 * frequency)) / passes(frequency);
};

/** The engine's estimate for the same drive. */
export const estimateFor = (drive: Drive): number =>
  thirdHarmonic(
    CHANGE,
    RATED,
    sourcePeak(drive) / Math.SQRT2,
    shareAcross(drive.frequency, CORNER),
  );

/** Charge along the loop of a ferroelectric, C*((1 + k)*v +- k/(2*A)*(A^2 - v^2)). */
const rayleighCase = (change: number): SimulatedCase => ({
  what: `third harmonic of the charge on a Rayleigh loop of ${change * 100} %`,
  circuit: 'a charge that follows the loop, as a behavioural source, on 50 V peak',
  netlist: netlistOf(
    'Rayleigh loop',
    `Vs v 0 SIN(0 ${RATED} 100)`,
    // Its rate of change gives the branch of the loop; A^2 - v^2 is the square of it.
    `Vr rate 0 SIN(0 ${RATED} 100 0 0 90)`,
    `Bq charge 0 V=${1 + change}*v(v)-${change / (2 * RATED)}*v(rate)*abs(v(rate))`,
    'Rq charge 0 1',
    '.tran 10u 80m 0 10u',
  ),
  simulated: (waves) =>
    harmonicOf(waves, 'v(charge)', 100, 3, PERIODS) /
    harmonicOf(waves, 'v(charge)', 100, 1, PERIODS),
  engine: thirdHarmonic(change, RATED, RATED / Math.SQRT2, 1),
  unit: 'of the fundamental',
  ratio: within(1.5 * change),
  because: 'the estimate is first order in the change',
});

/** Where the two laws meet: as much voltage across the part as it is rated for. */
const meeting = (where: string, frequency: number): SimulatedCase => {
  const drive: Drive = { frequency, peakShare: 1 };
  return {
    what: `third harmonic of a part at its rated voltage, ${where}`,
    circuit: `100 nF that loses 1 % at 50 V, into 10 kΩ, at ${where}`,
    netlist: quadraticNetlist(drive),
    simulated: (waves) => thirdAtLoad(waves, drive),
    // Only the share that stands across the part adds its harmonic to what passes.
    engine: estimateFor(drive) * shareAcross(frequency, CORNER),
    unit: 'of the fundamental',
    ratio: { low: 0.9, high: 1.4 },
    because:
      'a part bent by the square of voltage makes 1/12 of the change, the estimate 4/(15π), 2 % more; ' +
      'the load passes the third harmonic up to 1.34 times as well as the fundamental',
  };
};

export const distortionCases: SimulatedCase[] = [
  ...[0.01, 0.1].map(rayleighCase),
  meeting('the corner', CORNER),
  meeting('three times the corner', 3 * CORNER),
  meeting('ten times the corner', 10 * CORNER),
];

/** At the corner, with all of the rated voltage across the part, half and a quarter of it. */
export const drivesAtCorner = {
  full: { frequency: CORNER, peakShare: 1 },
  half: { frequency: CORNER, peakShare: 0.5 },
  quarter: { frequency: CORNER, peakShare: 0.25 },
} as const satisfies Record<string, Drive>;

/** Drives at which the law by hand and the simulation are held to each other. */
export const drives: Drive[] = [
  ...Object.values(drivesAtCorner),
  { frequency: CORNER / 10, peakShare: 1 },
  { frequency: 10 * CORNER, peakShare: 1 },
];
