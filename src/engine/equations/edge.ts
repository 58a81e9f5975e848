/** Steepest edge (V/s) as a share of the steepest that a part withstands (V/s). */
export const edgeShare = (edge: number, withstood: number): number => edge / withstood;

/** Edge (V/s) that a current (A) makes on a capacitance (F): I/C. */
export const edgeByCurrent = (current: number, capacitance: number): number =>
  current / capacitance;

/** Current (A) that an edge (V/s) drives through a capacitance (F): C*dV/dt. */
export const edgeCurrent = (capacitance: number, edge: number): number => capacitance * edge;
