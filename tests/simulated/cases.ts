import type { SimulatedCase } from './case.ts';
import { absorptionCases } from './circuits/absorption.ts';
import { benchSumCases } from './circuits/bench-sums.ts';
import { couplingCases } from './circuits/coupling.ts';
import { distortionCases } from './circuits/distortion.ts';
import { holdCases } from './circuits/hold.ts';
import { impedanceCases } from './circuits/impedance.ts';
import { leakageCases } from './circuits/leakage.ts';
import { pitchCases } from './circuits/pitch.ts';
import { regulatorCases } from './circuits/regulator.ts';
import { reservoirCases } from './circuits/reservoir.ts';

/** Every number that the engine works out and a simulation checks, by subject. */
export const simulatedCases: Readonly<Record<string, readonly SimulatedCase[]>> = {
  'hold droop': holdCases,
  absorption: absorptionCases,
  coupling: couplingCases,
  'leakage into a grid, and between parts in series': leakageCases,
  'reservoir and switching on': reservoirCases,
  impedance: impedanceCases,
  pitch: pitchCases,
  'series resistance of a regulator': regulatorCases,
  distortion: distortionCases,
  'bench sums': benchSumCases,
};
