import { mapRising, type Range } from '../quantities/range.ts';

/** Cents of pitch by which a frequency moves when it changes by a fraction of itself. */
export const cents = (change: Range): Range =>
  mapRising(change, (fraction) => 1200 * Math.log2(1 + fraction));
