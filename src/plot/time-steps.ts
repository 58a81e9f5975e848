import { DAY, HOUR, MINUTE, YEAR } from '../engine/quantities/si.ts';

/** The unit (s) that marks along a plain time axis are counted in: the largest that fits in twice. */
export const timeUnit = (longest: number): number =>
  [YEAR, DAY, HOUR, MINUTE].find((unit) => longest >= 2 * unit) ?? 1;

/** Times (s) that read well from a second on, for axes of decades. */
const READABLE = [
  1,
  10,
  MINUTE,
  10 * MINUTE,
  HOUR,
  10 * HOUR,
  ...[4, 40].map((days) => days * DAY),
  ...[1, 10, 100, 1000].map((years) => years * YEAR),
];

/** And those that do where an axis has few decades. */
const FINE = [
  ...[1, 2, 5, 10, 20, 50],
  ...[2, 5, 10, 20].map((minutes) => minutes * MINUTE),
  ...[1, 2, 5, 10, 20].map((hours) => hours * HOUR),
  ...[2, 5, 10, 20, 50, 100, 200].map((days) => days * DAY),
  ...[1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].map((years) => years * YEAR),
];

/**
 * Marks along a logarithmic time axis; below a second plain ones are fine as they are.
 * @param fine whether there are so few decades that each has room for several
 */
export const timeMarks = (
  marks: readonly number[],
  from: number,
  to: number,
  fine: boolean,
): number[] => [
  ...marks.filter((mark) => mark < 1),
  ...(fine ? FINE : READABLE).filter((time) => time >= from && time <= to),
];
