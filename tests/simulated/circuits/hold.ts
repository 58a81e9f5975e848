import { droop, leakageOfPart } from '../../../src/engine/equations/leakage.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { netlistOf, PRECISE, within, type SimulatedCase } from '../case.ts';
import { valueAt } from '../waves.ts';

interface Hold {
  voltage: number;
  capacitance: number;
  /** Insulation time constant, s. */
  insulation: number;
  /** Current of switch, amplifier and board, A. */
  other: number;
  time: number;
}

const netlist = ({ voltage, capacitance, insulation, other, time }: Hold): string =>
  netlistOf(
    'droop of a held voltage',
    PRECISE,
    `C1 hold 0 ${capacitance} IC=${voltage}`,
    `Rins hold 0 ${insulation / capacitance}`,
    `Iother hold 0 ${other}`,
    `.tran ${time / 100} ${time * 1.001} 0 ${time / 100} uic`,
  );

const holdCase = (
  what: string,
  hold: Hold,
  bounds: Pick<SimulatedCase, 'ratio' | 'because'>,
): SimulatedCase => {
  const { voltage, capacitance, insulation, other, time } = hold;
  const dielectric = { constant: exactly(insulation), halving: exactly(10) };
  const own = leakageOfPart(dielectric, capacitance, voltage, 25).current;
  return {
    what,
    circuit: `${capacitance} F at ${voltage} V, insulation ${insulation} s, ${other} A drawn`,
    netlist: netlist(hold),
    simulated: (waves) => voltage - valueAt(waves, 'v(hold)', time),
    engine: droop(voltage, capacitance, exactly(other), own, time).total.typ,
    unit: 'V',
    ...bounds,
  };
};

const straight = { ratio: within(0.001), because: 'the hold is a ten-thousandth of the decay' };

export const holdCases: SimulatedCase[] = [
  holdCase(
    'droop by the switch: 10 nF, 50 pA, 10 ms',
    { voltage: 5, capacitance: 10e-9, insulation: 1e5, other: 50e-12, time: 10e-3 },
    straight,
  ),
  holdCase(
    'droop by both: 100 nF, 10 pA, 1 s of an insulation of 10 000 s',
    { voltage: 10, capacitance: 100e-9, insulation: 1e4, other: 10e-12, time: 1 },
    straight,
  ),
  holdCase(
    'droop by the part alone: 1 µF, 30 s of an insulation of 1000 s',
    { voltage: 10, capacitance: 1e-6, insulation: 1e3, other: 0, time: 30 },
    {
      ratio: { low: 0.98, high: 1 },
      because: 'a straight line overstates a decay by half the hold over the time constant',
    },
  ),
  holdCase(
    'droop by the part alone: 1 µF, 200 s of an insulation of 1000 s',
    { voltage: 10, capacitance: 1e-6, insulation: 1e3, other: 0, time: 200 },
    {
      ratio: { low: 0.9, high: 1 },
      because: 'a straight line overstates a decay by half the hold over the time constant',
    },
  ),
];
