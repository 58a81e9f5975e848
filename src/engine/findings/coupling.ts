import { cornerFrequency, levelPassed, phaseLead, shareAcross } from '../equations/coupling.ts';
import { harmonicAtLoad } from '../equations/distortion.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { Part } from '../assessment/parts.ts';
import { exactly, mapRising } from '../quantities/range.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { oldPartToday, serviceCapacitance } from './service-capacitance.ts';

/**
 * Highest corner allowed: the lowest frequency to pass; or, where the old part's marked value gave
 * a higher corner by design, that of the smallest value that the position allows.
 */
const highestCorner = (circumstances: Circumstances): number => {
  const { original, position } = circumstances;
  const load = conditionOf(circumstances, 'load').typ;
  const least = original.capacitance * position.value_low;
  return Math.max(
    conditionOf(circumstances, 'frequency').typ,
    cornerFrequency(exactly(least), load).typ,
  );
};

/** Corner frequency over tolerance, temperature, ageing and bias. */
export const corner: FindingModel = {
  today: oldPartToday,
  limit: (circumstances) => ({ high: highestCorner(circumstances) }),
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    return {
      status: 'known',
      value: cornerFrequency(capacitance, conditionOf(circumstances, 'load').typ),
      properties,
    };
  },
  working: (part, circumstances, value) => {
    const { capacitance } = serviceCapacitance(part, circumstances);
    const lowest = conditionOf(circumstances, 'frequency').typ;
    const level = (hertz: number): string => formatValue(levelPassed(lowest, hertz), 'dB');
    return (
      `1 / (2π × ${formatValue(conditionOf(circumstances, 'load').typ, 'ohm')} × ` +
      `${formatQuantity(capacitance, 'F')}) = ${formatQuantity(value, 'Hz')}; level at ` +
      `${formatValue(lowest, 'Hz')}: ${level(value.min)} to ${level(value.max)}`
    );
  },
};

/** Lead of the phase at the lowest frequency; allowed is what the corner is allowed. */
export const phase: FindingModel = {
  today: oldPartToday,
  limit: (circumstances) => ({
    high: phaseLead(conditionOf(circumstances, 'frequency').typ, highestCorner(circumstances)),
  }),
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    const hertz = cornerFrequency(capacitance, conditionOf(circumstances, 'load').typ);
    const lowest = conditionOf(circumstances, 'frequency').typ;
    return {
      status: 'known',
      value: mapRising(hertz, (each) => phaseLead(lowest, each)),
      properties,
    };
  },
  working: (part, circumstances, value) => {
    const { capacitance } = serviceCapacitance(part, circumstances);
    const hertz = cornerFrequency(capacitance, conditionOf(circumstances, 'load').typ);
    return (
      `atan(${formatQuantity(hertz, 'Hz')} / ` +
      `${formatValue(conditionOf(circumstances, 'frequency').typ, 'Hz')}) = ` +
      formatQuantity(value, 'deg')
    );
  },
};

const CHANGE = 'voltage-coefficient';

/** Share of the signal across the marked value at the lowest frequency. */
const lowestShare = (part: Part, circumstances: Circumstances): number => {
  const load = conditionOf(circumstances, 'load').typ;
  const hertz = cornerFrequency(exactly(part.capacitance), load).typ;
  return shareAcross(conditionOf(circumstances, 'frequency').typ, hertz);
};

/** Third harmonic at the load by the voltage coefficient; an estimate of the order of magnitude. */
export const distortion: FindingModel = {
  measure: (part, circumstances) => {
    const change = rangeOf(circumstances, part, CHANGE);
    if (change === undefined) return { status: 'unknown', missing: [CHANGE] };
    const signal = conditionOf(circumstances, 'signal').max;
    const share = lowestShare(part, circumstances);
    const harmonic = (coefficient: number): number =>
      harmonicAtLoad(coefficient, part.ratedVoltage, signal, share);
    const ends = [harmonic(change.min), harmonic(change.max)];
    const straddles = change.min < 0 && change.max > 0;
    return {
      status: 'known',
      value: {
        min: straddles ? 0 : Math.min(...ends),
        typ: harmonic(change.typ),
        max: Math.max(...ends),
      },
      properties: [CHANGE],
    };
  },
  working: (part, circumstances, value) => {
    const change = rangeOf(circumstances, part, CHANGE);
    return (
      `0.085 × ${change ? formatQuantity(change, 'fraction') : 'unknown'} × √2 × ` +
      `${formatValue(conditionOf(circumstances, 'signal').max, 'V')} × ` +
      `(${formatValue(lowestShare(part, circumstances), 'grade')} across it)² / ` +
      `${formatValue(part.ratedVoltage, 'V')} = ${formatQuantity(value, 'fraction')}; an estimate`
    );
  },
};
