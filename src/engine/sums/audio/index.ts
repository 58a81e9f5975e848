import type { Sum } from '../sum.ts';
import { couplingCorner } from './coupling-corner.ts';

/** Sums of the signal path. */
export const audioSums: readonly Sum[] = [couplingCorner];
