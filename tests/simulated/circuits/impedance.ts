import { seriesImpedance } from '../../../src/engine/equations/impedance.ts';
import { netlistOf, within, type SimulatedCase } from '../case.ts';
import { polarOf } from '../waves.ts';

interface Element {
  capacitance: number;
  resistance: number;
  inductance: number;
}

const disc: Element = { capacitance: 100e-9, resistance: 0.05, inductance: 5e-9 };
const electrolytic: Element = { capacitance: 100e-6, resistance: 0.3, inductance: 15e-9 };

const impedanceCase = (name: string, element: Element, frequency: number): SimulatedCase => {
  const { capacitance, resistance, inductance } = element;
  return {
    what: `impedance of ${name} at ${frequency} Hz`,
    circuit: `${capacitance} F, ${resistance} ohm and ${inductance} H in series, 1 A through them`,
    netlist: netlistOf(
      'impedance of a real capacitor',
      'I1 0 part 0 AC 1',
      `R1 part a ${resistance}`,
      `L1 a b ${inductance}`,
      `C1 b 0 ${capacitance}`,
      // A path for DC, a thousand million times what is measured.
      'Rdc part 0 1e12',
      `.ac lin 1 ${frequency} ${frequency}`,
    ),
    simulated: (waves) => polarOf(waves, 'v(part)')[0]?.magnitude ?? NaN,
    engine: seriesImpedance(frequency, resistance, inductance, capacitance),
    unit: 'ohm',
    ratio: within(1e-4),
    because: 'both are exact for a linear circuit',
  };
};

export const impedanceCases: SimulatedCase[] = [
  ...[100, 100e3, 7e6, 100e6].map((hertz) => impedanceCase('a 100 nF disc', disc, hertz)),
  ...[100, 10e3, 100e3, 10e6].map((hertz) =>
    impedanceCase('a 100 µF electrolytic', electrolytic, hertz),
  ),
];
