import { mapRising, type Range } from '../quantities/range.ts';

/** A share of a limit, or a multiple of what is asked, beyond which nobody tells more from less. */
export const BEYOND_TELLING = 1000;

/**
 * What is asked as a share of what is borne, both in one unit and nowhere below zero. Of what bears
 * nothing at all anything asks more than can be told, and nothing asks nothing.
 */
export const shareOfBorne = (asked: number, borne: number): number => {
  if (asked === 0) return 0;
  return borne > 0 ? asked / borne : BEYOND_TELLING;
};

/** What a part gives as a multiple of what is asked; where nothing is, more than can be told. */
export const timesAsked = (gives: Range, asked: number): Range =>
  mapRising(gives, (one) => (asked > 0 ? one / asked : BEYOND_TELLING));
