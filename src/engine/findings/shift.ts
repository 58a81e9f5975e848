import { frequencyShift, timeShift as shiftOfTime } from '../equations/shift.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { Range } from '../quantities/range.ts';
import type { FindingModel } from './model.ts';
import { oldPartToday, serviceCapacitance } from './service-capacitance.ts';

/** How something that the circuit does moves with the capacitance in service. */
interface Shift {
  /** Change, as a fraction without sign, from the capacitance in service and the one marked, F. */
  of: (capacitance: Range, designed: number) => Range;
  what: string;
  goesWith: string;
}

const shiftModel = ({ of, what, goesWith }: Shift): FindingModel => ({
  today: oldPartToday,
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    return {
      status: 'known',
      value: of(capacitance, circumstances.original.capacitance),
      properties,
    };
  },
  working: (part, circumstances, value) => {
    const { capacitance } = serviceCapacitance(part, circumstances);
    return (
      `${formatQuantity(capacitance, 'F')} in service for ` +
      `${formatValue(circumstances.original.capacitance, 'F')} marked: ${what} off by ` +
      `${formatQuantity(value, 'fraction')}, as it goes with ${goesWith}`
    );
  },
});

/** Shift of a corner that a resistor sets. */
export const filterShift = shiftModel({
  of: (capacitance, designed) => frequencyShift(capacitance, designed, 1),
  what: 'frequency',
  goesWith: '1/C',
});

/** Shift of a resonance with a coil. */
export const tuningShift = shiftModel({
  of: (capacitance, designed) => frequencyShift(capacitance, designed, 1 / 2),
  what: 'frequency',
  goesWith: '1/√C',
});

/** Shift of a time that a resistor or a current sets. */
export const timeShift = shiftModel({ of: shiftOfTime, what: 'time', goesWith: 'C' });
