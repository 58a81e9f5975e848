import type { Sum } from '../sum.ts';
import { snubber } from './snubber.ts';
import { decoupling } from './decoupling.ts';
import { largerRail } from './larger-rail-capacitor.ts';
import { reservoir } from './reservoir.ts';
import { regulatorDump } from './regulator-dump.ts';
import { resistanceWindow } from './resistance-window.ts';

/** Sums of supplies. */
export const supplySums: readonly Sum[] = [
  reservoir,
  largerRail,
  decoupling,
  resistanceWindow,
  regulatorDump,
  snubber,
];
