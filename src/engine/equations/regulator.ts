/**
 * Output (V) that two resistors set: the reference (V) stands across the lower one (ohm), and what
 * flows out of the adjust pin (A) adds its drop in the upper one (ohm). LM317 data sheet, figure 1.
 */
export const adjustedOutput = (
  reference: number,
  lower: number,
  upper: number,
  adjustCurrent: number,
): number => reference * (1 + upper / lower) + adjustCurrent * upper;
