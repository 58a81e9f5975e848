import type { Waves } from './waves.ts';

/** One number, worked out by the engine and by simulating the circuit that it speaks of. */
export interface SimulatedCase {
  what: string;
  /** The circuit in words. */
  circuit: string;
  netlist: string;
  /** Takes the number out of the simulation. */
  simulated: (waves: Waves) => number;
  /** The same number by the engine's equation. */
  engine: number;
  unit: string;
  /** Within these bounds simulated/engine must lie. */
  ratio: { low: number; high: number };
  /** Why the bounds are where they are. */
  because: string;
  /**
   * Factor by which a wrong equation would be caught, either way; 2 unless the case is one of
   * plausibility only.
   */
  catches?: number;
}

/** Bounds of a ratio that should be one: a relative tolerance either way. */
export const within = (tolerance: number): SimulatedCase['ratio'] => ({
  low: 1 - tolerance,
  high: 1 + tolerance,
});

/** Whether a simulated number bears out the engine's. */
export const agrees = (
  simulated: number,
  engine: number,
  { low, high }: SimulatedCase['ratio'],
): boolean => simulated / engine >= low && simulated / engine <= high;

/** A netlist with its title and end. */
export const netlistOf = (title: string, ...lines: string[]): string =>
  [title, ...lines, '.end', ''].join('\n');

/** Tight settings of the solver, for slow circuits of very high resistance. */
export const PRECISE =
  '.options method=gear reltol=1e-6 abstol=1e-17 vntol=1e-9 chgtol=1e-20 gmin=1e-20';
