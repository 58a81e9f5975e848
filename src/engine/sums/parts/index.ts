import type { Sum } from '../sum.ts';
import { backToBack } from './back-to-back.ts';
import { combineCapacitors } from './combine-capacitors.ts';
import { combineResistors } from './combine-resistors.ts';
import { divider } from './divider.ts';
import { seriesPair } from './series-pair.ts';
import { twoTogether } from './two-together.ts';

/** Sums that put values together. */
export const partsSums: readonly Sum[] = [
  combineCapacitors,
  combineResistors,
  twoTogether,
  seriesPair,
  backToBack,
  divider,
];
