import { frequencyShift } from '../equations/shift.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { FindingModel } from './model.ts';
import { oldPartToday, serviceCapacitance } from './service-capacitance.ts';

const shiftModel = (exponent: number, sign: string): FindingModel => ({
  today: oldPartToday,
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    return {
      status: 'known',
      value: frequencyShift(capacitance, circumstances.original.capacitance, exponent),
      properties,
    };
  },
  working: (part, circumstances, value) => {
    const { capacitance } = serviceCapacitance(part, circumstances);
    return (
      `${formatQuantity(capacitance, 'F')} in service for ` +
      `${formatValue(circumstances.original.capacitance, 'F')} marked: frequency off by ` +
      `${formatQuantity(value, 'fraction')}, as it goes with ${sign}`
    );
  },
});

/** Shift of a corner that a resistor sets. */
export const filterShift = shiftModel(1, '1/C');

/** Shift of a resonance with a coil. */
export const tuningShift = shiftModel(1 / 2, '1/√C');
