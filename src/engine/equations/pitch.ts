import { mapRising, type Range } from '../quantities/range.ts';

/** Cents of pitch by which a frequency moves when it changes by a fraction of itself. */
export const cents = (change: Range): Range =>
  mapRising(change, (fraction) => 1200 * Math.log2(1 + fraction));

/** Changes of capacitance beyond this share leave nothing that oscillates. */
const MOST = 1.9;

/**
 * Cents of pitch between the two ends of a drift of capacitance, where frequency goes with 1/C and
 * the drift (fraction of the middle value, without sign) lies half to each side of the middle.
 */
export const centsOfDrift = (drift: Range): Range =>
  mapRising(drift, (fraction) => {
    const half = Math.min(MOST, fraction) / 2;
    return 1200 * Math.log2((1 + half) / (1 - half));
  });

/** Cents of pitch that a voltage (V) is where so many volts make an octave: 1200*V/V_oct. */
export const centsOfVoltage = (volt: Range, perOctave: number): Range =>
  mapRising(volt, (one) => (1200 * one) / perOctave);
