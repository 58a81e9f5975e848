import type { Basis } from '../catalogue.ts';

/** What figures rest on, the best first. */
export const BASES: readonly Basis[] = ['published', 'common-practice', 'memory'];

/** The weakest of several bases; the best where there is none. */
export const weakestOf = (bases: readonly Basis[]): Basis =>
  BASES[Math.max(0, ...bases.map((one) => BASES.indexOf(one)))] ?? 'published';
