/** Peak voltage (V) of a sine, given by its RMS value (V), on top of a steady voltage (V). */
export const peakOfSine = (rms: number, steady = 0): number => steady + Math.SQRT2 * rms;

/** RMS value (V) of a sine whose peak is as high as a steady voltage (V): V/sqrt(2). */
export const rmsOfSine = (peak: number): number => peak / Math.SQRT2;
