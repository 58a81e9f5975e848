import type { Sum } from '../sum.ts';
import { discharge } from './discharge.ts';
import { touchCurrent } from './touch-current.ts';

/** Sums of the mains and of stored charge. */
export const mainsSums: readonly Sum[] = [discharge, touchCurrent];
