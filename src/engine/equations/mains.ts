import { exactly, scale, type Range } from '../quantities/range.ts';

/** Current (A) through a capacitance (F) at an AC voltage (V): 2*pi*f*C*V. */
export const reactiveCurrent = (frequency: number, capacitance: Range, voltage: number): Range =>
  scale(capacitance, 2 * Math.PI * frequency * voltage);

/** Capacitance (F) that lets so much current (A) through at an AC voltage (V). */
export const capacitanceForCurrent = (
  current: number,
  frequency: number,
  voltage: number,
): number => current / reactiveCurrent(frequency, exactly(1), voltage).typ;

/** Voltage (V) left a time (s) after the plug was pulled: U*exp(-t/tau). */
export const voltageLeft = (start: number, time: number, timeConstant: number): number =>
  start * Math.exp(-time / timeConstant);

/** Time (s) until a voltage has fallen from one to another: tau*ln(U/U_end). */
export const timeToFall = (start: number, end: number, timeConstant: number): number =>
  timeConstant * Math.max(0, Math.log(start / end));
