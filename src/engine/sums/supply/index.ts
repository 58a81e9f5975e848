import type { Sum } from '../sum.ts';
import { snubber } from './snubber.ts';
import { decoupling } from './decoupling.ts';
import { largerRail } from './larger-rail-capacitor.ts';
import { reservoir } from './reservoir.ts';

/** Sums of supplies. */
export const supplySums: readonly Sum[] = [reservoir, largerRail, decoupling, snubber];
