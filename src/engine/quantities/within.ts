/** Share by which a number may lie outside a bound and still count as it: rounding only. */
export const ROUNDING = 1e-6;

/** Share by which two ways of working out one number may differ: the rounding of a computer's sums. */
export const FLOAT_ERROR = 1e-9;

/** Whether a number is no less than another, in the same unit and above zero, save for rounding. */
export const isAtLeast = (value: number, least: number): boolean => value >= least * (1 - ROUNDING);

/** Whether a number lies between two others, both included, above zero, save for rounding. */
export const isBetween = (value: number, least: number, most: number): boolean =>
  isAtLeast(value, least) && value <= most * (1 + ROUNDING);
