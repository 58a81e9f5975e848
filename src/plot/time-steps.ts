const MINUTE = 60;
const HOUR = 3600;
const DAY = 24 * HOUR;
const YEAR = 365.25 * DAY;

/** The unit (s) that marks along a plain time axis are counted in: the largest that fits in twice. */
export const timeUnit = (longest: number): number =>
  [YEAR, DAY, HOUR].find((unit) => longest >= 2 * unit) ?? 1;

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

/** Marks along a time axis of decades; below a second powers of ten are fine as they are. */
export const timeMarks = (marks: readonly number[], from: number, to: number): number[] => [
  ...marks.filter((mark) => mark < 1),
  ...READABLE.filter((time) => time >= from && time <= to),
];
