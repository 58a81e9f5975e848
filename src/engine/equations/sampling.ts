import { mapFalling, scale, type Range } from '../quantities/range.ts';

/** Step (V) that a charge (C) makes on a capacitance (F) when the switch opens: Q/C. */
export const holdStep = (charge: number, capacitance: Range): Range =>
  mapFalling(capacitance, (farad) => charge / farad);

/** Time constants that a step needs to come within an error of its end: ln(step/error). */
export const settlingConstants = (step: number, error: number): number =>
  Math.max(0, Math.log(step / error));

/** Time (s) to come within an error (V) of the end of a step (V) with a time constant (s). */
export const settlingTime = (timeConstant: Range, step: number, error: number): Range =>
  scale(timeConstant, settlingConstants(step, error));
