import type { Tolerance } from '../engine/index.ts';

/** A tolerance as an address carries it. */
export const writeTolerance = ({ minus, plus }: Tolerance): string => {
  const percent = (fraction: number): string => String(Number((fraction * 100).toPrecision(6)));
  return minus === plus ? percent(plus) : `${percent(minus)}/${percent(plus)}`;
};
