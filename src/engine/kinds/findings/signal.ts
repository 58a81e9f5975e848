import { driftBySlope } from '../../equations/drift.ts';
import {
  changeByVoltage,
  currentNoise,
  inductiveShare,
  noiseOfResistor,
  thermalNoise,
  type Heard,
} from '../../equations/resistor.ts';
import { conditionOf } from '../../findings/model.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { exactly, mapRising, type Range } from '../../quantities/range.ts';
import type { KindCircumstances, KindModel, KindPart } from '../part.ts';
import { rmsVoltage, fromProperties, spreadOf, valueOf, warmingSpan } from './of-part.ts';

/** Change of resistance from the coldest to the warmest. */
export const resistanceDrift: KindModel = fromProperties(
  ['resistance-tc'],
  ({ 'resistance-tc': slope }, _part, circumstances) =>
    driftBySlope(slope, warmingSpan(circumstances)),
  ({ 'resistance-tc': slope }, _part, circumstances, value) =>
    `${formatQuantity(slope, '1/K')} over ${formatValue(warmingSpan(circumstances), 'K')}: ` +
    formatQuantity(value, 'fraction'),
);

/** Change of resistance because voltage stands across the part. */
export const voltageShift: KindModel = fromProperties(
  ['voltage-change'],
  ({ 'voltage-change': each }, _part, circumstances) =>
    changeByVoltage(each, rmsVoltage(circumstances)),
  ({ 'voltage-change': each }, _part, circumstances, value) =>
    `${formatQuantity(each, 'fraction')} for each volt, ${formatValue(rmsVoltage(circumstances), 'V')} across it: ` +
    formatQuantity(value, 'fraction'),
);

/** Change in a thousand hours at full load, as makers promise it. */
export const lifeDrift: KindModel = fromProperties(
  ['full-load-change'],
  ({ 'full-load-change': change }) => change,
  ({ 'full-load-change': change }) =>
    `up to ${formatValue(change.max, 'fraction')} in a thousand hours at full load`,
);

/** How far the marked value is from the old one, as a share. */
const offBy = (part: KindPart, { original }: KindCircumstances): number =>
  Math.abs(valueOf(part) / valueOf(original) - 1);

const passedOn = (circumstances: KindCircumstances): number =>
  conditionOf(circumstances, 'sensitivity').max;

const gainShiftOf = (slope: Range, part: KindPart, circumstances: KindCircumstances): Range => {
  const off = offBy(part, circumstances);
  const { minus = 0, plus = 0 } = part.tolerance ?? {};
  const bought = Math.max(minus, plus);
  const drift = driftBySlope(slope, warmingSpan(circumstances));
  const share = passedOn(circumstances);
  return {
    min: share * Math.max(0, off - bought),
    // The usual part lies half-way to the end of its tolerance.
    typ: share * (off + bought / 2 + drift.typ),
    max: share * (off + bought + drift.max),
  };
};

/** Change of the gain, level or voltage that the part sets. */
export const gainShift: KindModel = fromProperties(
  ['resistance-tc'],
  ({ 'resistance-tc': slope }, part, circumstances) => gainShiftOf(slope, part, circumstances),
  ({ 'resistance-tc': slope }, part, circumstances, value) => {
    const { minus = 0, plus = 0 } = part.tolerance ?? {};
    const drift = driftBySlope(slope, warmingSpan(circumstances));
    return (
      `${formatValue(passedOn(circumstances), 'fraction')} of (mark off by ${formatValue(offBy(part, circumstances), 'fraction')}, ` +
      `tolerance ${formatValue(Math.max(minus, plus), 'fraction')}, drift up to ${formatValue(drift.max, 'fraction')}): ` +
      `up to ${formatValue(value.max, 'fraction')}`
    );
  },
);

/** The part in the band between its two frequencies, whichever is the higher one. */
const heard = (part: KindPart, circumstances: KindCircumstances): Heard => {
  const ends = ['frequency', 'f-work'].map((id) => conditionOf(circumstances, id).typ);
  return {
    ohm: valueOf(part),
    celsius: conditionOf(circumstances, 't-max').max,
    volt: conditionOf(circumstances, 'vdc').max,
    low: Math.min(...ends),
    high: Math.max(...ends),
  };
};

/** Thermal noise and what DC voltage adds to it, in the band of the position. */
export const partNoise: KindModel = fromProperties(
  ['noise-index'],
  ({ 'noise-index': index }, part, circumstances) => {
    const place = heard(part, circumstances);
    return mapRising(index, (decibel) => noiseOfResistor(decibel, place));
  },
  ({ 'noise-index': index }, part, circumstances, value) => {
    const { ohm, celsius, volt, low, high } = heard(part, circumstances);
    const thermal = thermalNoise(ohm, celsius, low, high);
    const excess = currentNoise(index.typ, volt, low, high);
    return (
      `thermal ${formatValue(thermal, 'V')}; by ${formatValue(volt, 'V')} at ${formatQuantity(index, 'dB')} ` +
      `${formatValue(excess, 'V')} from ${formatValue(low, 'Hz')} to ${formatValue(high, 'Hz')}: ` +
      `together ${formatValue(value.typ, 'V')}`
    );
  },
);

/** Whether the old part was as much of a coil: the circuit has proved itself with that. */
const wasCoiled = ({ catalogue, original }: KindCircumstances, { type }: KindPart): boolean =>
  type === original.type && catalogue.kindTypes[type]?.wound === true;

/** Reactance of the winding at the highest frequency against the resistance, beyond that of the old part. */
export const selfInductance: KindModel = fromProperties(
  ['winding-inductance'],
  ({ 'winding-inductance': inductance }, part, circumstances) => {
    if (wasCoiled(circumstances, part)) return exactly(0);
    const hertz = conditionOf(circumstances, 'f-work').max;
    const { min, typ, max } = spreadOf(part);
    return {
      min: inductiveShare(inductance.min, hertz, max),
      typ: inductiveShare(inductance.typ, hertz, typ),
      max: inductiveShare(inductance.max, hertz, min),
    };
  },
  ({ 'winding-inductance': inductance }, part, circumstances, value) =>
    wasCoiled(circumstances, part)
      ? 'wound, as the old part was'
      : `${formatQuantity(inductance, 'H')} at ${formatValue(conditionOf(circumstances, 'f-work').max, 'Hz')} ` +
        `is ${formatValue(value.typ, 'fraction')} of ${formatValue(valueOf(part), 'ohm')}`,
);
