import { audioSums } from './audio/index.ts';
import { dielectricSums } from './dielectric/index.ts';
import { holdSums } from './hold/index.ts';
import { mainsSums } from './mains/index.ts';
import { timingSums } from './timing/index.ts';
import { partsSums } from './parts/index.ts';
import { ratingSums } from './rating/index.ts';
import { resistorSums } from './resistor/index.ts';
import type { Sum } from './sum.ts';
import { supplySums } from './supply/index.ts';

/** Every sum, in the order in which a group lists them. */
export const allSums: readonly Sum[] = [
  ...ratingSums,
  ...dielectricSums,
  ...holdSums,
  ...timingSums,
  ...audioSums,
  ...supplySums,
  ...mainsSums,
  ...partsSums,
  ...resistorSums,
];
