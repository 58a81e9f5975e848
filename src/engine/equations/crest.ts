/** Highest voltage (V) of a sine, given by its effective value (V), on top of a steady one (V). */
export const crestOf = (effective: number, steady = 0): number => steady + Math.SQRT2 * effective;

/** Effective value (V) of a sine that is as high as a steady voltage (V): V/sqrt(2). */
export const effectiveOf = (crest: number): number => crest / Math.SQRT2;
