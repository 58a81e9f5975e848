import type { Sum } from '../sum.ts';
import { class2Left } from './class2-left.ts';
import { insulation } from './insulation.ts';
import { loss } from './loss.ts';

/** Sums of what the dielectric does. */
export const dielectricSums: readonly Sum[] = [class2Left, insulation, loss];
