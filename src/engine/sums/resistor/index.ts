import type { Sum } from '../sum.ts';
import { resistorLimits } from './resistor-limits.ts';
import { resistorNoise } from './resistor-noise.ts';
import { trimmerPreset } from './trimmer-preset.ts';

/** Sums of resistors and trimmers. */
export const resistorSums: readonly Sum[] = [resistorLimits, resistorNoise, trimmerPreset];
