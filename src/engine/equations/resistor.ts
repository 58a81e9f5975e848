import { scale, type Range } from '../quantities/range.ts';
import { voltageForHeat } from './heat.ts';

/** J/K; fixed by the definition of the kelvin (SI Brochure, 9th edition). */
const BOLTZMANN = 1.380649e-23;
const ZERO_C = 273.15;

/** 0 dB of the noise index: a microvolt for each volt and decade. */
const MICRO = 1e-6;

/**
 * Share of the rated power that is left at a temperature (degC): all of it up to `knee`, none from
 * `end` on, a straight line between. `undefined` where the line does not fall.
 */
export const powerShare = (knee: number, end: number, temperature: number): number | undefined =>
  end <= knee ? undefined : Math.min(1, Math.max(0, (end - temperature) / (end - knee)));

/**
 * Voltage (V) that a resistance (ohm) stands: what its power (W) allows, at most the limit (V) of
 * its body. MIL-PRF-39005G, 3.5.8.
 */
export const voltageStood = (ohm: number, watt: number, limit: number): number =>
  Math.min(limit, voltageForHeat(watt, ohm));

/**
 * Share of the voltage that the largest of some resistors in series bears, all of one mark, where it lies
 * at the upper end of its tolerance and all others at the lower one.
 */
export const largestShare = (count: number, tolerance: number): number =>
  (1 + tolerance) / (1 + tolerance + (count - 1) * (1 - tolerance));

/** The overload test of a sheet: what a resistor stands for seconds. */
export interface Overload {
  /** Of the rated voltage. */
  times: number;
  /** Of the voltage limit of the body, which it does not go beyond. */
  timesLimit: number;
  /** How long it lasts, s. */
  time: number;
}

/** Energy (J) that the overload test puts into a part of a rated power (W). */
export const overloadEnergy = (watt: number, { times, time }: Overload): number =>
  times ** 2 * watt * time;

/**
 * Voltage (V) that a resistance (ohm) stands for as long as the overload test lasts, by its power (W) and
 * the voltage limit of its body (V).
 */
export const overloadStood = (
  ohm: number,
  watt: number,
  limit: number,
  { times, timesLimit }: Overload,
): number => Math.min(timesLimit * limit, times * voltageForHeat(watt, ohm));

/**
 * Energy (J) of a pulse in a part that works already, as that of a single one in a cold part:
 * E*(1 + P_a/P_r) by its mean and rated power (W). DTO25 data sheet of a maker, energy curve.
 */
export const energyOnTop = (energy: number, mean: number, rated: number): number =>
  energy * (1 + mean / rated);

/** Thermal noise (V) of a resistance (ohm) at a temperature (degC) in a band (Hz): sqrt(4*k*T*R*B). */
export const thermalNoise = (ohm: number, celsius: number, low: number, high: number): number =>
  Math.sqrt(4 * BOLTZMANN * (celsius + ZERO_C) * ohm * (high - low));

/** Noise (V) that DC voltage (V) across a resistor adds in a band (Hz), by its noise index (dB). */
export const currentNoise = (index: number, volt: number, low: number, high: number): number =>
  MICRO * 10 ** (index / 20) * volt * Math.sqrt(Math.log10(high / low));

/** A resistor (ohm) at a temperature (degC) with a DC voltage (V) across it, heard in a band (Hz). */
export interface Heard {
  ohm: number;
  celsius: number;
  volt: number;
  low: number;
  high: number;
}

/** Thermal noise and that of the DC voltage together (V), by the noise index (dB). */
export const noiseOfResistor = (index: number, { ohm, celsius, volt, low, high }: Heard): number =>
  Math.hypot(thermalNoise(ohm, celsius, low, high), currentNoise(index, volt, low, high));

/** Reactance of the self-inductance (H) at a frequency (Hz) as a share of the resistance (ohm). */
export const inductiveShare = (henry: number, hertz: number, ohm: number): number =>
  (2 * Math.PI * hertz * henry) / ohm;

/** Change of a resistance, fraction, by the voltage (V) across it and the change for each volt. */
export const changeByVoltage = (each: Range, volt: number): Range => scale(each, volt);

/** How a film resistor is loaded in the test of its life, and what that does to it. */
export interface LoadLife {
  /** Fraction that its sheet promises. */
  change: number;
  /** s */
  time: number;
  /** Of its film at full load, degC. */
  film: number;
}

/**
 * Drift (fraction) of a film resistor over time (s) with its film at a temperature (degC): with the
 * cube root of time, half as much for each so many kelvin less. Both follow from the figures of one sheet
 * of metal film: 0.25 % after 1000 h and 1.5 % after 225 000 h at 125 degC, 0.5 % after 1000 h at 155 degC.
 * @param halving kelvin that halve it
 */
export const filmDrift = (
  { change, time, film }: LoadLife,
  life: number,
  warm: number,
  halving: number,
): number => change * Math.cbrt(life / time) * 2 ** ((warm - film) / halving);

/** Temperature (degC) of a film: heat (W) warms it from its surroundings as its sheet has it at full load. */
export const filmTemperature = (
  ambient: number,
  heat: number,
  { knee, film, rated }: { knee: number; film: number; rated: number },
): number => ambient + ((film - knee) * heat) / rated;
