import { surgeCurrent, switchOnPeak } from '../../../src/engine/equations/inrush.ts';
import { rippleVoltage, triangularRms } from '../../../src/engine/equations/ripple.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { ruleOf } from '../../../src/engine/rule-of-thumb.ts';
import { catalogue } from '../../engine/assessment/setting.ts';
import { netlistOf, type SimulatedCase } from '../case.ts';
import { between, realOf, type Waves } from '../waves.ts';

interface Supply {
  /** Peak of the winding, V. */
  peak: number;
  mains: number;
  /** Winding, wiring and rectifier, ohm. */
  source: number;
  capacitance: number;
  esr: number;
  /** A */
  load: number;
  way: keyof typeof RECTIFIERS;
}

const JUNCTION = '.model rectifier d(is=1e-9 n=1.6 rs=0 cjo=50p)';

/** Lines of a rectifier between winding (`a`, `b`) and rail, and how many junctions conduct at a time. */
const RECTIFIERS = {
  bridge: {
    words: 'bridge',
    lines: [
      'D1 a plus rectifier',
      'D2 b plus rectifier',
      'D3 0 a rectifier',
      'D4 0 b rectifier',
      JUNCTION,
      // While no junction conducts, something must say where the winding stands.
      'Rstraya a 0 10meg',
      'Rstrayb b 0 10meg',
    ],
    junctions: 2,
  },
  half: {
    words: 'one diode',
    lines: ['D1 a plus rectifier', JUNCTION, 'Rstrayb b 0 1u'],
    junctions: 1,
  },
} as const;

/** Drop (V) of the junctions in the path at a current (A). */
const dropOf = ({ way }: Supply, current: number): number =>
  RECTIFIERS[way].junctions * 1.6 * 0.025865 * Math.log(current / 1e-9);

/** What the winding and the load do in one simulation. */
interface Run {
  /** Where in its cycle the mains is switched on, degrees. */
  phase: number;
  halfCycles: number;
  /** What the reservoir stands at to begin with, V. */
  charged: number;
}

const netlist = (supply: Supply, { phase, halfCycles, charged }: Run): string => {
  const { peak, mains, source, capacitance, esr, load } = supply;
  const step = 1 / (mains * 2000);
  return netlistOf(
    'rectifier and reservoir',
    '.options reltol=1e-5',
    `Vs winding b SIN(0 ${peak} ${mains} 0 0 ${phase})`,
    `Rs winding a ${source}`,
    ...RECTIFIERS[supply.way].lines,
    'Vsense plus rail 0',
    `Resr rail c ${esr}`,
    `C1 c 0 ${capacitance} IC=${charged}`,
    // A rail that is not up yet gives no current.
    `Bload rail 0 I=${load}*min(1,max(0,v(rail)))`,
    `.tran ${step} ${halfCycles / (2 * mains)} 0 ${step} uic`,
  );
};

const words = ({ peak, source, capacitance, esr, load, way }: Supply): string =>
  `${RECTIFIERS[way].words} on ${peak} V peak behind ${source} ohm, ${capacitance} F with ${esr} ohm, ${load} A drawn`;

const HALF_CYCLES = 16;

/** Two whole pulses of the rail (V) at the end of the simulation. */
const settledRail = (waves: Waves, { mains }: Supply): { volts: number[]; times: number[] } => {
  const end = HALF_CYCLES / (2 * mains);
  const [from, to] = [end - 1 / mains, end];
  return {
    volts: between(waves, 'v(rail)', from, to),
    times: between(waves, 'time', from, to),
  };
};

/** RMS value (V) of what is left of the rail when its mean is taken away. */
const rippleRms = ({ volts, times }: ReturnType<typeof settledRail>): number => {
  const mean = (of: (volt: number) => number): number => {
    const area = volts.slice(1).reduce((sum, volt, index) => {
      const width = (times[index + 1] ?? NaN) - (times[index] ?? NaN);
      return sum + (width * (of(volt) + of(volts[index] ?? NaN))) / 2;
    }, 0);
    return area / ((times.at(-1) ?? NaN) - (times[0] ?? NaN));
  };
  const average = mean((volt) => volt);
  return Math.sqrt(mean((volt) => (volt - average) ** 2));
};

const rippleCases = (supply: Supply): SimulatedCase[] => {
  const { load, mains, capacitance } = supply;
  const peakToPeak = rippleVoltage(load, 2 * mains, exactly(capacitance)).typ;
  const common = {
    circuit: words(supply),
    netlist: netlist(supply, {
      phase: 0,
      halfCycles: HALF_CYCLES,
      charged: 0.9 * supply.peak,
    }),
    unit: 'V',
    ratio: { low: 0.65, high: 1 },
    because:
      'the equation lets the load draw on the reservoir for the whole half cycle, while the ' +
      'rectifier feeds it for a tenth to a third of that; so it is never too low',
  };
  return [
    {
      ...common,
      what: `ripple peak to peak of ${capacitance} F at ${load} A`,
      simulated: (waves) => {
        const { volts } = settledRail(waves, supply);
        return Math.max(...volts) - Math.min(...volts);
      },
      engine: peakToPeak,
    },
    {
      ...common,
      what: `RMS value of the ripple of ${capacitance} F at ${load} A`,
      simulated: (waves) => rippleRms(settledRail(waves, supply)),
      engine: triangularRms(peakToPeak),
    },
  ];
};

/** What is left for the resistance at the first instant, by the drop at the current that flows. */
const peakAfterRectifier = (supply: Supply): number =>
  supply.peak - dropOf(supply, supply.peak / (supply.source + supply.esr));

const firstInstant = (supply: Supply): SimulatedCase => ({
  what: `first instant through ${supply.source} ohm into ${supply.capacitance} F, switched on at the peak`,
  circuit: words(supply),
  netlist: netlist(supply, { phase: 90, halfCycles: 1, charged: 0 }),
  simulated: (waves) => Math.max(...realOf(waves, 'i(vsense)')),
  engine: switchOnPeak(peakAfterRectifier(supply), supply.source + supply.esr),
  unit: 'A',
  ratio: { low: 0.97, high: 1.01 },
  because: 'the first step of the solver charges the reservoir a little; the drop is taken at V/R',
});

/** Integral of the square of a current over time, A2s. */
const heatOf = (waves: Waves, name: string): number => {
  const time = realOf(waves, 'time');
  return realOf(waves, name).reduce((sum, ampere, index) => {
    const before = time[index - 1];
    return before === undefined ? 0 : sum + ampere ** 2 * ((time[index] ?? NaN) - before);
  }, 0);
};

const surgeCase = (supply: Supply, ratio: SimulatedCase['ratio']): SimulatedCase => {
  const halfSine = ruleOf(catalogue, 'surge-half-sine');
  return {
    what: `surge of half a cycle of ${supply.mains} Hz into ${supply.capacitance} F, switched on near the peak`,
    circuit: words(supply),
    netlist: netlist(supply, { phase: 70, halfCycles: 1, charged: 0 }),
    simulated: (waves) => Math.sqrt((2 * heatOf(waves, 'i(vsense)')) / halfSine),
    engine: surgeCurrent(
      peakAfterRectifier(supply),
      supply.source + supply.esr,
      supply.capacitance,
      halfSine,
    ),
    unit: 'A',
    ratio,
    // As long a half sine as the pulses are apart, of which one diode gives half as many, is off by this.
    catches: Math.SQRT2,
    because:
      'the engine charges from a voltage that stands still, the mains falls from its peak: it is ' +
      'never too low, and most too high where charging takes about half a cycle',
  };
};

const lowVoltage: Supply = {
  peak: 24,
  mains: 50,
  source: 0.4,
  capacitance: 2200e-6,
  esr: 0.05,
  load: 0.5,
  way: 'bridge',
};
const highVoltage: Supply = {
  peak: 400,
  mains: 50,
  source: 100,
  capacitance: 32e-6,
  esr: 2,
  load: 0.08,
  way: 'bridge',
};
const unloaded = (supply: Supply): Supply => ({ ...supply, load: 0 });

export const reservoirCases: SimulatedCase[] = [
  ...rippleCases(lowVoltage),
  ...rippleCases({ ...lowVoltage, capacitance: 10e-3 }),
  ...rippleCases({ ...lowVoltage, load: 0.1 }),
  ...rippleCases(highVoltage),
  firstInstant(unloaded(lowVoltage)),
  firstInstant(unloaded({ ...lowVoltage, source: 2 })),
  firstInstant(unloaded(highVoltage)),
  surgeCase(unloaded({ ...lowVoltage, capacitance: 1000e-6 }), { low: 0.9, high: 1 }),
  surgeCase(unloaded(lowVoltage), { low: 0.9, high: 1 }),
  surgeCase(unloaded({ ...lowVoltage, capacitance: 22e-3 }), { low: 0.75, high: 1 }),
  surgeCase(unloaded(highVoltage), { low: 0.8, high: 1 }),
  surgeCase(unloaded({ ...lowVoltage, way: 'half', capacitance: 1000e-6 }), { low: 0.9, high: 1 }),
  surgeCase(unloaded({ ...lowVoltage, way: 'half' }), { low: 0.9, high: 1 }),
  surgeCase(unloaded({ ...lowVoltage, way: 'half', capacitance: 22e-3 }), { low: 0.72, high: 1 }),
  surgeCase(unloaded({ ...lowVoltage, way: 'half', mains: 60 }), { low: 0.9, high: 1 }),
  surgeCase(unloaded({ ...highVoltage, way: 'half' }), { low: 0.8, high: 1 }),
];
