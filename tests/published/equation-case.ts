import { expect } from 'vitest';

/** One equation with one answer that was printed somewhere or worked out by hand. */
export interface Case {
  what: string;
  /** Where the answer or the formula was printed; `identity` where it was worked out by hand. */
  source: string;
  got: number;
  expected: number;
  /** Relative. */
  within: number;
}

/** That the equation gives the answer, as near as that is said. */
export const expectAnswer = ({ got, expected, within }: Case): void => {
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(Math.abs(expected) * within);
};
