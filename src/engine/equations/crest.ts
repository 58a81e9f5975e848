/** Highest voltage (V) of a sine, given by its effective value (V), on top of a steady one (V). */
export const crestOf = (effective: number, steady = 0): number => steady + Math.SQRT2 * effective;
