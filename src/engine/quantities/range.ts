/** A quantity with its spread, in SI units: `min <= typ <= max`. */
export interface Range {
  min: number;
  typ: number;
  max: number;
}

/** A range of no width. */
export const exactly = (value: number): Range => ({ min: value, typ: value, max: value });

/** A range from its ends; the typical value is the arithmetic middle unless given. */
export const between = (min: number, max: number, typ = (min + max) / 2): Range => ({
  min,
  typ,
  max,
});

/** The same operation on each of the three values; only for operations that rise with the value. */
export const mapRising = (range: Range, f: (value: number) => number): Range => ({
  min: f(range.min),
  typ: f(range.typ),
  max: f(range.max),
});

/** The same operation on each of the three values; only for operations that fall with the value. */
export const mapFalling = (range: Range, f: (value: number) => number): Range => ({
  min: f(range.max),
  typ: f(range.typ),
  max: f(range.min),
});

/** A range times a plain number of either sign. */
export const scale = (range: Range, factor: number): Range =>
  factor >= 0
    ? mapRising(range, (value) => value * factor)
    : mapFalling(range, (value) => value * factor);

/** The sum of two independent ranges. */
export const add = (a: Range, b: Range): Range => ({
  min: a.min + b.min,
  typ: a.typ + b.typ,
  max: a.max + b.max,
});

/** The product of two independent ranges that are nowhere negative. */
export const timesPositive = (a: Range, b: Range): Range => ({
  min: a.min * b.min,
  typ: a.typ * b.typ,
  max: a.max * b.max,
});

/** The quotient of two independent ranges, both nowhere negative and the divisor nowhere zero. */
export const overPositive = (a: Range, b: Range): Range => ({
  min: a.min / b.max,
  typ: a.typ / b.typ,
  max: a.max / b.min,
});

/** Whether two ranges are one and the same, or neither is there. */
export const isSameRange = (a: Range | undefined, b: Range | undefined): boolean =>
  a?.min === b?.min && a?.typ === b?.typ && a?.max === b?.max;

/** The lesser of two, end by end: what two separate limits leave. */
export const lesserOf = (a: Range, b: Range): Range => ({
  min: Math.min(a.min, b.min),
  typ: Math.min(a.typ, b.typ),
  max: Math.min(a.max, b.max),
});

/** The smallest range that holds all of the given ones; the typical value is the middle one. */
export const hull = (ranges: readonly [Range, ...Range[]]): Range => {
  const typical = ranges.map((range) => range.typ).sort((a, b) => a - b);
  const middle = (typical.length - 1) / 2;
  const low = typical[Math.floor(middle)] as number;
  const high = typical[Math.ceil(middle)] as number;
  return {
    min: Math.min(...ranges.map((range) => range.min)),
    // The geometric mean keeps a pair of values decades apart from being read as the larger one.
    typ: low > 0 && high > 0 ? Math.sqrt(low * high) : (low + high) / 2,
    max: Math.max(...ranges.map((range) => range.max)),
  };
};
