import { leakageOffset } from '../../../src/engine/equations/leakage.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { netlistOf, within, type SimulatedCase } from '../case.ts';
import { lastOf } from '../waves.ts';

/** Leak of the smallest junction that the solver adds would drown an insulation otherwise. */
const UNLEAKING = '.options gmin=1e-20 reltol=1e-9 abstol=1e-18';

const exact = { ratio: within(1e-4), because: 'both are exact for a linear circuit' };

const gridCase = (what: string, voltage: number, insulation: number, grid: number) =>
  ({
    what,
    circuit: `${voltage} V, part leaking through ${insulation} ohm, grid resistor ${grid} ohm`,
    netlist: netlistOf(
      'leak onto a grid resistor',
      UNLEAKING,
      `Vanode anode 0 ${voltage}`,
      'C1 anode grid 100n',
      `Rins anode grid ${insulation}`,
      `Rgrid grid 0 ${grid}`,
      '.op',
    ),
    simulated: (waves) => lastOf(waves, 'v(grid)'),
    engine: leakageOffset(voltage, grid, exactly(insulation)).typ,
    unit: 'V',
    ...exact,
  }) satisfies SimulatedCase;

const parallel = (a: number, b: number): number => (a * b) / (a + b);

interface Pair {
  voltage: number;
  /** Leakage resistance of the upper and of the lower part, ohm. */
  upper: number;
  lower: number;
  /** Across each of them, ohm. */
  bleeder?: number;
}

const pairCase = (what: string, { voltage, upper, lower, bleeder }: Pair): SimulatedCase => {
  const bled = (ohm: number): number => (bleeder === undefined ? ohm : parallel(ohm, bleeder));
  return {
    what,
    circuit: `two parts in series on ${voltage} V, leaking through ${upper} and ${lower} ohm`,
    netlist: netlistOf(
      'two electrolytics in series',
      UNLEAKING,
      `Vs top 0 ${voltage}`,
      'C1 top middle 100u',
      `R1 top middle ${upper}`,
      'C2 middle 0 100u',
      `R2 middle 0 ${lower}`,
      ...(bleeder === undefined ? [] : [`Rb1 top middle ${bleeder}`, `Rb2 middle 0 ${bleeder}`]),
      '.op',
    ),
    simulated: (waves) => lastOf(waves, 'v(middle)'),
    engine: leakageOffset(voltage, bled(lower), exactly(bled(upper))).typ,
    unit: 'V',
    ...exact,
  };
};

export const leakageCases: SimulatedCase[] = [
  gridCase('shift of a grid by a wax part of 10 MΩ', 300, 10e6, 470e3),
  gridCase('shift of a grid by a wax part of 100 MΩ', 300, 100e6, 470e3),
  gridCase('shift of a grid by a film part of 100 GΩ', 300, 100e9, 470e3),
  pairCase('lower of two electrolytics that leak 1 to 4, no bleeders', {
    voltage: 600,
    upper: 1e6,
    lower: 4e6,
  }),
  pairCase('lower of two electrolytics that leak 1 to 4, bleeders of 150 kΩ', {
    voltage: 600,
    upper: 1e6,
    lower: 4e6,
    bleeder: 150e3,
  }),
];
