/**
 * Third harmonic (fraction of the fundamental) that a part makes whose capacitance moves with
 * voltage, by the Rayleigh law of small signals in a ferroelectric: 4/(15*pi) times the relative
 * change of capacitance at the peak. The law from memory, source not seen; an estimate of the
 * order of magnitude, for comparing parts.
 *
 * @param change of capacitance at rated voltage, fraction, sign ignored
 * @param rated voltage, V
 * @param signal RMS value in the circuit, V
 * @param share of it that stands across the part, 0 to 1
 */
export const thirdHarmonic = (
  change: number,
  rated: number,
  signal: number,
  share: number,
): number => ((4 / (15 * Math.PI)) * Math.abs(change) * Math.SQRT2 * signal * share) / rated;

/**
 * The same at the load behind a coupling part. The share counts twice: it sets the swing across the
 * part, and how much of what the part makes of it reaches the load beside the signal.
 */
export const harmonicAtLoad = (
  change: number,
  rated: number,
  signal: number,
  share: number,
): number => share * thirdHarmonic(change, rated, signal, share);
