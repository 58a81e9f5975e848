import type { Sum } from '../sum.ts';
import { resistorDrift } from './resistor-drift.ts';
import { resistorLimits } from './resistor-limits.ts';
import { resistorNoise } from './resistor-noise.ts';
import { resistorPulse } from './resistor-pulse.ts';
import { resistorVoltage } from './resistor-voltage.ts';
import { trimmerPreset } from './trimmer-preset.ts';
import { trimmerWiper } from './trimmer-wiper.ts';

/** Sums of resistors and trimmers. */
export const resistorSums: readonly Sum[] = [
  resistorLimits,
  resistorPulse,
  resistorDrift,
  resistorVoltage,
  resistorNoise,
  trimmerPreset,
  trimmerWiper,
];
