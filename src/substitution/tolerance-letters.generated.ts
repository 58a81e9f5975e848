// Written by scripts/generate-tolerance-letters.ts from data/markings, whose rows name the sources.
/** Letters of capacitors, per cent minus and plus. */
export const OF_CAPACITORS = {
  B: [0.1, 0.1],
  C: [0.25, 0.25],
  D: [0.5, 0.5],
  E: [0.5, 0.5],
  F: [1, 1],
  G: [2, 2],
  H: [3, 3],
  J: [5, 5],
  K: [10, 10],
  M: [20, 20],
  L: [15, 15],
  N: [30, 30],
  Q: [10, 30],
  S: [20, 50],
  T: [10, 50],
  Z: [20, 80],
} as const;

/** Letters that mean picofarads on the smallest ones, minus and plus. */
export const OF_SMALL_CAPACITORS = {
  B: [0.1, 0.1],
  C: [0.25, 0.25],
  D: [0.5, 0.5],
  F: [1, 1],
  G: [2, 2],
} as const;

/** The smallest ones are below this, F. */
export const SMALL_BELOW = 1e-11;

/** Letters of resistors, per cent each way. */
export const OF_RESISTORS = {
  B: [0.1, 0.1],
  C: [0.25, 0.25],
  D: [0.5, 0.5],
  F: [1, 1],
  G: [2, 2],
  J: [5, 5],
  K: [10, 10],
  M: [20, 20],
} as const;
