export { inMicrofarads } from './bare-capacitance.ts';
export { formatCode } from './code.ts';
export { formatQuantity, formatValue } from './format.ts';
export type { Habit } from './habit.ts';
export { parseQuantity } from './parse.ts';
export type { Range } from './range.ts';
export type { Unit } from './unit.ts';
export { UNITS } from './unit-facts.ts';
export { writeQuantity } from './write.ts';
