import { add, mapRising, scale, type Range } from '../quantities/range.ts';
import { timesAsked } from './beyond-telling.ts';
import { REFERENCE_CELSIUS } from './reference.ts';
import { thermalNoise } from './resistor.ts';

/** Elementary charge, C (SI, exact). */
const ELECTRON = 1.602176634e-19;

/** Steady error (V) at an output: gain times offset plus bias current in the source: G*(V + I*R). */
export const steadyError = (offset: Range, bias: Range, source: number, gain: number): Range =>
  scale(add(offset, scale(bias, source)), gain);

/** Bandwidth left at a gain, as a multiple of a signal frequency (Hz): f_T/(G*f). */
export const bandwidthLeft = (unityGain: Range, gain: number, frequency: number): Range =>
  timesAsked(unityGain, gain * frequency);

/** Slew rate (V/s) as a multiple of what a sine of a peak (V) and frequency (Hz) asks: 2*pi*f*V_P. */
export const slewLeft = (slew: Range, frequency: number, peak: number): Range =>
  timesAsked(slew, 2 * Math.PI * frequency * peak);

/**
 * Phase (degrees) left of the 90 of an integrator-like loop when output resistance (ohm) and load
 * (F) add a pole: 90 - atan(2*pi*(f_T/G)*R_O*C_L). Poles of the amplifier itself come on top.
 */
export const phaseWithLoad = (
  unityGain: Range,
  resistance: Range,
  gain: number,
  load: number,
): Range => {
  const left = (frequency: number, ohm: number): number =>
    90 - (Math.atan((2 * Math.PI * frequency * ohm * load) / gain) * 180) / Math.PI;
  return {
    min: left(unityGain.max, resistance.max),
    typ: left(unityGain.typ, resistance.typ),
    max: left(unityGain.min, resistance.min),
  };
};

/**
 * Noise (V in a band of 1 Hz) of an amplifier with a source resistance (ohm): voltage noise, thermal
 * noise of the resistance and shot noise of the bias current (A) in it. Shot noise alone is a lower
 * bound where an input cancels its bias current.
 * @param temperature degC
 */
export const noiseWithSource = (
  noise: Range,
  bias: Range,
  source: number,
  temperature = REFERENCE_CELSIUS,
): Range => {
  const thermal = thermalNoise(source, temperature, 0, 1);
  const at = (end: keyof Range): number =>
    Math.hypot(noise[end], thermal, Math.sqrt(2 * ELECTRON * bias[end]) * source);
  return { min: at('min'), typ: at('typ'), max: at('max') };
};

/** A part's share of a limit where less of the part is better, such as least gain over gain. */
export const shareOfLimit = (part: Range, limit: number): Range =>
  mapRising(part, (value) => value / limit);
