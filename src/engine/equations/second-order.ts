/** Corner (Hz) and quality of a pair of poles. */
export interface PolePair {
  frequency: number;
  quality: number;
}

/**
 * Unity-gain low-pass of two resistors and two capacitors about a follower: C1 from the output, C2
 * to ground. f0 = 1/(2*pi*sqrt(R1*R2*C1*C2)), Q = sqrt(R1*R2*C1*C2) / (C2*(R1 + R2)).
 */
export const followerLowPass = (r1: number, r2: number, c1: number, c2: number): PolePair => {
  const constant = Math.sqrt(r1 * r2 * c1 * c2);
  return { frequency: 1 / (2 * Math.PI * constant), quality: constant / (c2 * (r1 + r2)) };
};

/** The same with resistors and capacitors exchanged: R1 from the output, R2 to ground, a high-pass. */
export const followerHighPass = (r1: number, r2: number, c1: number, c2: number): PolePair => {
  const constant = Math.sqrt(r1 * r2 * c1 * c2);
  return { frequency: 1 / (2 * Math.PI * constant), quality: constant / (r1 * (c1 + c2)) };
};

/** Level (dB) of a second-order low-pass at a frequency (Hz): above Q = 0.707 it peaks first. */
export const lowPassLevel = ({ frequency, quality }: PolePair, at: number): number => {
  const ratio = at / frequency;
  return -10 * Math.log10((1 - ratio ** 2) ** 2 + (ratio / quality) ** 2);
};

/** Level (dB) of a second-order high-pass at a frequency (Hz). */
export const highPassLevel = ({ frequency, quality }: PolePair, at: number): number =>
  lowPassLevel({ frequency: 1 / frequency, quality }, 1 / at);
