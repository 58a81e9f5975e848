import { scale, type Range } from '../quantities/range.ts';

/** Share of a cycle in which a diode still conducts backwards: t_rr * f. */
export const recoveryShare = (recovery: Range, frequency: number): Range =>
  scale(recovery, frequency);
