/** What voltage that is left unused does for a life. */
export interface VoltageGain {
  /** Share of the rated voltage below which a part gains no more, above 0. */
  least: number;
  /** Power of that share that the life falls with. */
  power: number;
}

/** How much longer a part lives below its rated voltage: (U/U_R)^-n, and no more than at the least share. */
export const voltageLifeFactor = (
  used: number,
  rated: number,
  { least, power }: VoltageGain,
): number => Math.max(least, Math.min(1, used / rated)) ** -power;

/** What the life of a wet electrolytic follows from. */
export interface Wear {
  /** Life (s) that the maker promises at the rated temperature. */
  rated: number;
  /** degC */
  ratedTemperature: number;
  /** Of what surrounds the part, degC. */
  ambient: number;
  /** Kelvin cooler that double the life: ten for a wet part. */
  doubling: number;
  /** Kelvin that the current warms the part. */
  rise: number;
  /** Kelvin of such a rise that halve the life. */
  riseHalving: number;
  /** Factor for the voltage that is left unused. */
  voltageFactor: number;
  /** Time (s) beyond which nobody vouches for the part. */
  longest: number;
}

/**
 * Life (s) in use: L0 * 2^((T0 - T)/H) * 2^(-dT/h) * K_V, and no more than is vouched for. Warmer
 * than rated it shortens by the same rule.
 */
export const wearLife = (wear: Wear): number =>
  Math.min(
    wear.longest,
    wear.rated *
      2 ** ((wear.ratedTemperature - wear.ambient) / wear.doubling - wear.rise / wear.riseHalving) *
      wear.voltageFactor,
  );
