import {
  cornerFrequency,
  levelPassed,
  shareAcross,
} from '../../../src/engine/equations/coupling.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { netlistOf, within, type SimulatedCase } from '../case.ts';
import { polarOf, type Waves } from '../waves.ts';

const netlist = (capacitance: number, load: number, frequency: number): string =>
  netlistOf(
    'coupling capacitor into its load',
    'Vs source 0 0 AC 1',
    `C1 source load ${capacitance}`,
    `R1 load 0 ${load}`,
    // The voltage across the part, as a node of its own.
    'E1 across 0 source load 1',
    `.ac lin 1 ${frequency} ${frequency}`,
  );

const only = (waves: Waves, name: string): { magnitude: number; phase: number } =>
  polarOf(waves, name)[0] ?? { magnitude: NaN, phase: NaN };

const exact = { ratio: within(1e-4), because: 'both are exact for a linear circuit' };

const at = (
  where: string,
  capacitance: number,
  load: number,
  frequency: number,
): SimulatedCase[] => {
  const corner = cornerFrequency(exactly(capacitance), load).typ;
  const common = {
    circuit: `${capacitance} F into ${load} ohm at ${frequency} Hz`,
    netlist: netlist(capacitance, load, frequency),
    ...exact,
  };
  return [
    {
      ...common,
      what: `level passed ${where}`,
      simulated: (waves) => 20 * Math.log10(only(waves, 'v(load)').magnitude),
      engine: levelPassed(frequency, corner),
      unit: 'dB',
    },
    {
      ...common,
      what: `share across the part ${where}`,
      simulated: (waves) => only(waves, 'v(across)').magnitude,
      engine: shareAcross(frequency, corner),
      unit: '',
    },
    {
      ...common,
      what: `phase ${where}`,
      simulated: (waves) => only(waves, 'v(load)').phase,
      // The share across the part is the sine of the angle by which the output leads.
      engine: (Math.asin(shareAcross(frequency, corner)) * 180) / Math.PI,
      unit: '°',
    },
  ];
};

const cornerOf = (capacitance: number, load: number): number =>
  cornerFrequency(exactly(capacitance), load).typ;

export const couplingCases: SimulatedCase[] = [
  ...at('at the corner of 10 nF into 1 MΩ', 10e-9, 1e6, cornerOf(10e-9, 1e6)),
  ...at('a decade above the corner of 10 nF into 1 MΩ', 10e-9, 1e6, 10 * cornerOf(10e-9, 1e6)),
  ...at('at 20 Hz, 10 nF into 1 MΩ', 10e-9, 1e6, 20),
  ...at('at 20 Hz, 10 nF into 47 kΩ', 10e-9, 47e3, 20),
  ...at('at 20 Hz, 2.2 µF into 10 kΩ', 2.2e-6, 10e3, 20),
];
