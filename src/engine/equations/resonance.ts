import { mapFalling, type Range } from '../quantities/range.ts';

/** Frequency (Hz) at which an inductance (H) and a capacitance (F) cancel: 1/(2*pi*sqrt(L*C)). */
export const selfResonance = (inductance: Range, capacitance: number): Range =>
  mapFalling(inductance, (henry) => 1 / (2 * Math.PI * Math.sqrt(henry * capacitance)));
