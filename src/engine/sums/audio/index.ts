import type { Sum } from '../sum.ts';
import { crossover } from './crossover.ts';
import { bypassShelf } from './bypass-shelf.ts';
import { couplingCorner } from './coupling-corner.ts';
import { discEqualiser } from './disc-equaliser.ts';
import { harmonic } from './harmonic.ts';

/** Sums of the signal path. */
export const audioSums: readonly Sum[] = [
  couplingCorner,
  harmonic,
  discEqualiser,
  bypassShelf,
  crossover,
];
