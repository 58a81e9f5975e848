import { mapFalling, type Range } from '../quantities/range.ts';

/** Level (dB, zero or below) that a load (ohm) keeps behind a series resistance (ohm): 20*log10(R/(R+r)). */
export const levelBehind = (load: number, series: number): number =>
  -20 * Math.log10(1 + series / load);

/**
 * Change of level (dB, above zero where it is louder) at a load (ohm) when one series resistance
 * (ohm) takes the place of another: 20*log10((R+r_old)/(R+r)).
 */
export const levelChange = (load: number, old: number, series: Range): Range =>
  mapFalling(series, (ohm) => levelBehind(load, ohm) - levelBehind(load, old));

/**
 * Series resistance (ohm) that leaves a load (ohm) so much louder (dB) than another one does:
 * (R+r_old)*10^(-dB/20) - R. Below zero where none does.
 */
export const seriesForChange = (load: number, old: number, change: number): number =>
  (load + old) * 10 ** (-change / 20) - load;
