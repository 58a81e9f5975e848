import { add, type Range } from '../quantities/range.ts';

/** How far a part may be off its mark, as positive fractions. */
interface Tolerance {
  minus: number;
  plus: number;
}

/** What of a part counts when it is joined to another: marked value (F) and tolerance. */
interface Joined {
  capacitance: number;
  tolerance: Tolerance;
}

/** Capacitance (F) of parts in parallel: the sum. */
export const parallelCapacitance = (farads: readonly number[]): number =>
  farads.reduce((sum, farad) => sum + farad, 0);

/**
 * Capacitance (F) of parts in series: 1 / (1/C1 + 1/C2). Two equal ones give half the value,
 * whichever way round they are; makers say the same of two polar ones back to back.
 */
export const seriesCapacitance = (farads: readonly number[]): number =>
  1 / farads.reduce((sum, farad) => sum + 1 / farad, 0);

const toleranceBy = (
  parts: readonly Joined[],
  whole: (farads: readonly number[]) => number,
): Tolerance => {
  const marked = whole(parts.map(({ capacitance }) => capacitance));
  const least = whole(
    parts.map(({ capacitance, tolerance }) => capacitance * (1 - tolerance.minus)),
  );
  const most = whole(parts.map(({ capacitance, tolerance }) => capacitance * (1 + tolerance.plus)));
  return { minus: 1 - least / marked, plus: most / marked - 1 };
};

/**
 * Tolerance of parts in parallel where all of them are off the same way, as parts of one batch
 * are: the tolerances weighted by value. Two of 1 % are 1 % together, not less.
 */
export const parallelTolerance = (parts: readonly Joined[]): Tolerance =>
  toleranceBy(parts, parallelCapacitance);

/** The same for parts in series; for equal parts, the tolerance of each. */
export const seriesTolerance = (parts: readonly Joined[]): Tolerance =>
  toleranceBy(parts, seriesCapacitance);

/**
 * Largest share of the voltage that one of two parts of the same mark in series takes while they
 * charge: voltage divides inversely to capacitance, so the one that is low, beside one that is
 * high, takes (1 + plus) / (2 + plus - minus). Never below a half.
 */
export const worstShare = ({ minus, plus }: Tolerance): number => (1 + plus) / (2 + plus - minus);

/**
 * Largest share of a standing voltage that one of two parts in series takes, with an equal resistor
 * across each, where the other leaks more: (V + R*dI) / (2*V), by Kirchhoff's laws. At most all.
 * @param voltage across both, V, above zero
 * @param resistor across each, ohm
 * @param difference of the two leakage currents, A
 */
export const standingShare = (voltage: number, resistor: number, difference: number): number =>
  Math.min(1, (voltage + resistor * difference) / (2 * voltage));

/**
 * Largest resistor (ohm) across each of two parts in series that keeps a standing voltage (V) shared
 * no worse than a share allows: (2*s - 1)*V / dI. With s*V as the rated voltage U_R of each this is
 * the (2*U_R - V) / dI of makers' application notes.
 * @param difference of the two leakage currents, A; at most the leakage limit of one
 */
export const equalisingResistor = (voltage: number, share: number, difference: number): number =>
  difference > 0 ? ((2 * share - 1) * voltage) / difference : Infinity;

/** A resistance or an inductance of parts in series: the sum. */
export const sumOf = (ranges: readonly [Range, ...Range[]]): Range =>
  ranges.slice(1).reduce(add, ranges[0]);

/** A resistance or an inductance of parts in parallel: 1 / (1/R1 + 1/R2), none where one is none. */
export const besideEachOther = (ranges: readonly Range[]): Range => ({
  min: seriesCapacitance(ranges.map(({ min }) => min)),
  typ: seriesCapacitance(ranges.map(({ typ }) => typ)),
  max: seriesCapacitance(ranges.map(({ max }) => max)),
});
