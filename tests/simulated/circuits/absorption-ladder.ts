/** Resistance (ohm) and capacitance (F) in series; the pair stands across the main capacitor. */
export interface RelaxationBranch {
  resistance: number;
  capacitance: number;
}

/** Where a ladder begins and ends in log time, and how fine it is. */
export interface LadderSpan {
  /** Time constants begin here, s, above zero; well below the shortest time of interest. */
  fastest: number;
  /** They end here, s, above `fastest`; well above the longest time of interest. */
  slowest: number;
  /** Branches a decade; two are enough for 0.1 %, one is good to about 2 %. */
  branchesPerDecade: number;
}

/**
 * Branches that make an ideal capacitor absorb as the log-time law of `engine/equations/absorption.ts` says. Derived,
 * not published.
 *
 * After a long soak at V every branch stands at V. A short of t_s leaves a branch of time constant
 * T the share exp(-t_s/T) of it; in the open time t_o it gives up 1 - exp(-t_o/T) of that to the main
 * capacitor. With capacitance g*C lying in each unit of ln(T), what comes back is
 *
 *     V * g * integral of (exp(-t_s/T) - exp(-(t_s + t_o)/T)) d ln T = V * g * ln((t_s + t_o)/t_s),
 *
 * by Frullani's integral. The law gives V * x * log10((t_s + t_o)/t_s), so g = x/ln(10): each decade
 * of time constants holds the capacitance x*C, shared evenly by its branches, each of which stands
 * in the middle of its part of the decade.
 *
 * True to first order in x: the branches that have already settled share the charge with the main
 * capacitor, so that a ladder recovers less than the law by about x times their decades. A branch
 * slower than `slowest` would add t_o/slowest/ln(10) decades; those missing make the second error.
 *
 * @param capacitance of the main capacitor without its branches, F
 * @param perDecade absorption per decade, fraction
 * @param span of time constants; the last branch is left out or added where they do not divide it
 */
export const absorptionLadder = (
  capacitance: number,
  perDecade: number,
  { fastest, slowest, branchesPerDecade }: LadderSpan,
): RelaxationBranch[] => {
  const count = Math.round(Math.log10(slowest / fastest) * branchesPerDecade);
  const share = (perDecade * capacitance) / branchesPerDecade;
  return Array.from({ length: count }, (_, index) => {
    const timeConstant = fastest * 10 ** ((index + 0.5) / branchesPerDecade);
    return { resistance: timeConstant / share, capacitance: share };
  });
};
