/** Three time constants (s) of disc replay: bass turnover, middle, treble turnover. */
export interface DiscConstants {
  bass: number;
  middle: number;
  treble: number;
}

const decibels = (frequency: number, constant: number): number =>
  10 * Math.log10(1 + (2 * Math.PI * frequency * constant) ** 2);

const plain = (frequency: number, { bass, middle, treble }: DiscConstants): number =>
  decibels(frequency, middle) - decibels(frequency, bass) - decibels(frequency, treble);

/** Level (dB) of disc replay at a frequency (Hz) against that at 1 kHz. */
export const discReplayLevel = (frequency: number, constants: DiscConstants): number =>
  plain(frequency, constants) - plain(1000, constants);
