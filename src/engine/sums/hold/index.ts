import type { Sum } from '../sum.ts';
import { switchChange } from './switch-change.ts';
import { amplifierChange } from './amplifier-change.ts';
import { absorption } from './absorption.ts';
import { acquisition } from './acquisition.ts';
import { holdDroop } from './hold-droop.ts';
import { holdStep } from './hold-step.ts';
import { integratorDrift } from './integrator-drift.ts';

/** Sums about holding a voltage. */
export const holdSums: readonly Sum[] = [
  holdDroop,
  holdStep,
  acquisition,
  absorption,
  integratorDrift,
  amplifierChange,
  switchChange,
];
