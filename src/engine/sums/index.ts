import type { Catalogue } from '../catalogue.ts';
import type { Range } from '../quantities/index.ts';
import { audioSums } from './audio/index.ts';
import { dielectricSums } from './dielectric/index.ts';
import { holdSums } from './hold/index.ts';
import { mainsSums } from './mains/index.ts';
import { timingSums } from './timing/index.ts';
import { partsSums } from './parts/index.ts';
import { ratingSums } from './rating/index.ts';
import { resistorSums } from './resistor/index.ts';
import { runSumOf, type SumResult } from './run-sum.ts';
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

/** Works one of the bench sums out; see runSumOf. @throws RangeError for a sum that there is not */
export const runSum = (
  catalogue: Catalogue,
  name: string,
  inputs: Readonly<Record<string, Range | string>>,
): SumResult => {
  const sum = allSums.find(({ id }) => id === name);
  if (sum === undefined) throw new RangeError(`there is no sum ${name}`);
  return runSumOf(sum, catalogue, inputs);
};
