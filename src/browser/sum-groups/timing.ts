import type { Sum } from '../../engine/sums/sum.ts';

/** Each sum is a file of its own, so that a page fetches no more than the one that it shows. */
export const files = import.meta.glob<Record<string, Sum>>([
  '../../engine/sums/timing/*.ts',
  '!../../engine/sums/timing/index.ts',
]);
