/** Share of a voltage that stands across one of two resistances (ohm) in series: R/(R + R_o). */
export const shareOf = (ohm: number, other: number): number => ohm / (ohm + other);

/** A divider with a load across its lower resistor. */
export interface LoadedDivider {
  /** Without the load, 0 to 1. */
  ratio: number;
  /** Resistance that it looks like from the load, ohm. */
  source: number;
  /** Share of the voltage without load that the load takes, 0 to 1. */
  lost: number;
}

/** What a divider of two resistors (ohm) gives to a load (ohm) across the lower one. */
export const loadedDivider = (upper: number, lower: number, load: number): LoadedDivider => {
  const source = (upper * lower) / (upper + lower);
  return { ratio: shareOf(lower, upper), source, lost: shareOf(source, load) };
};
