import { formatQuantity, formatValue } from '../quantities/index.ts';
import { mapRising, type Range } from '../quantities/range.ts';
import { conditionOf, type FindingModel } from './model.ts';
import { causesOf, oldPartToday, serviceCapacitance } from './service-capacitance.ts';

/** Moves of less than this (fraction) are not worth a word. */
const SMALLEST = 5e-4;

/** A factor as a move away from one, rid of what the subtraction leaves in the last digits. */
const moveOf = (factor: Range): Range =>
  mapRising(factor, (value) => Number((value - 1).toFixed(9)));

/** Capacitance that tolerance, temperature, age and bias leave, against what the circuit needs. */
export const keptValue: FindingModel = {
  today: oldPartToday,
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    return { status: 'known', value: capacitance, properties };
  },
  working: (part, circumstances, value) => {
    const moves = causesOf(part, circumstances)
      .map(({ cause, factor }) => ({ cause, move: moveOf(factor) }))
      .filter(({ move }) => Math.max(-move.min, move.max) >= SMALLEST)
      .map(({ cause, move }) => `${cause} ${formatQuantity(move, 'fraction')}`);
    const moved = moves.length === 0 ? 'nothing moves it' : moves.join(', ');
    const least = value.min / conditionOf(circumstances, 'needed').typ;
    return (
      `${formatValue(part.capacitance, 'F')} marked; ${moved}: ` +
      `${formatQuantity(value, 'F')}, at the worst ${formatValue(least, 'ratio')} what is needed`
    );
  },
};
