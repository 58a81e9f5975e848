import { shareOfBorne } from '../../equations/beyond-telling.ts';
import { dissipation } from '../../equations/heat.ts';
import { storedEnergy } from '../../equations/inrush.ts';
import { overloadStood, powerShare, voltageStood } from '../../equations/resistor.ts';
import { conditionOf, rangeOf } from '../../findings/model.ts';
import { overloadBy } from '../../laws.ts';
import { formatValue } from '../../quantities/index.ts';
import { exactly, type Range } from '../../quantities/range.ts';
import type { KindCircumstances, KindModel, KindPart } from '../part.ts';
import { rmsVoltage, fromProperties, spreadOf, valueOf, type Known } from './of-part.ts';

type Line = 'full-power-to' | 'no-power-from';

/** Share of its rated power that a part has where it sits. */
const shareLeft = (
  { 'full-power-to': knee, 'no-power-from': end }: Known<Line>,
  circumstances: KindCircumstances,
): number => powerShare(knee.typ, end.typ, conditionOf(circumstances, 't-max').max) ?? 0;

/** Voltage squared over the resistance, as a share of the power that is left when it is warm. */
const loadOf = (known: Known<Line>, part: KindPart, circumstances: KindCircumstances): Range => {
  const { min, typ, max } = spreadOf(part);
  const allowed = (part.rating ?? 0) * shareLeft(known, circumstances);
  const share = (ohm: number): number =>
    shareOfBorne(dissipation(rmsVoltage(circumstances), ohm), allowed);
  return { min: share(max), typ: share(typ), max: share(min) };
};

/** Power in the part against what its rating leaves at the temperature. */
export const resistorPower: KindModel = fromProperties(
  ['full-power-to', 'no-power-from'],
  loadOf,
  (known, part, circumstances, value) => {
    const volts = rmsVoltage(circumstances);
    const left = shareLeft(known, circumstances);
    return (
      `${formatValue(volts, 'V')} on ${formatValue(valueOf(part), 'ohm')} is ` +
      `${formatValue(dissipation(volts, valueOf(part)), 'W')}; ${formatValue(part.rating ?? NaN, 'W')} × ` +
      `${formatValue(left, 'fraction')} at ` +
      `${formatValue(conditionOf(circumstances, 't-max').max, 'degC')}: ` +
      (left > 0 ? `${formatValue(value.typ, 'fraction')} of it` : 'none is left of its power')
    );
  },
);

/** The voltage limit of the body where makers print one. */
const limitWords = (limit: number, stood: number): string =>
  stood < limit
    ? `its power alone allows ${formatValue(stood, 'V')}`
    : `its body takes ${formatValue(limit, 'V')}, whatever its power`;

/** Voltage across the part against what it stands: by its power, at most by its body. */
export const resistorVoltage: KindModel = fromProperties(
  ['voltage-limit'],
  ({ 'voltage-limit': limit }, part, circumstances) => {
    const { min, typ, max } = spreadOf(part);
    const share = (ohm: number, volts: number): number =>
      rmsVoltage(circumstances) / voltageStood(ohm, part.rating ?? 0, volts);
    return { min: share(max, limit.max), typ: share(typ, limit.typ), max: share(min, limit.min) };
  },
  ({ 'voltage-limit': limit }, part, circumstances, value) =>
    `${limitWords(limit.typ, voltageStood(valueOf(part), part.rating ?? 0, limit.typ))}; ` +
    `${formatValue(rmsVoltage(circumstances), 'V')} is ${formatValue(value.typ, 'fraction')} of that`,
);

/** Voltage at switch-on against what the part stands for a few seconds. */
export const overloadVoltage: KindModel = fromProperties(
  ['voltage-limit'],
  ({ 'voltage-limit': limit }, part, circumstances) => {
    const { min, typ, max } = spreadOf(part);
    const volts = conditionOf(circumstances, 'v-surge').max;
    const test = overloadBy(circumstances.catalogue);
    const share = (ohm: number, most: number): number =>
      volts / overloadStood(ohm, part.rating ?? 0, most, test);
    return { min: share(max, limit.max), typ: share(typ, limit.typ), max: share(min, limit.min) };
  },
  ({ 'voltage-limit': limit }, part, circumstances, value) => {
    const test = overloadBy(circumstances.catalogue);
    const stood = overloadStood(valueOf(part), part.rating ?? 0, limit.typ, test);
    return (
      `for a few seconds ${formatValue(stood, 'V')}, ` +
      `${formatValue(test.times, 'number')} times the rated voltage but at most ` +
      `${formatValue(test.timesLimit, 'number')} times the limit; ` +
      `${formatValue(conditionOf(circumstances, 'v-surge').max, 'V')} is ${formatValue(value.typ, 'fraction')} of that`
    );
  },
);

/** What charging a capacitor through the part puts into it: at first, and until it is charged. */
const pulseWords = (part: KindPart, circumstances: KindCircumstances): string => {
  const volts = conditionOf(circumstances, 'v-surge').max;
  const farad = conditionOf(circumstances, 'charged').max;
  const peak = dissipation(volts, valueOf(part));
  return (
    `charging ${formatValue(farad, 'F')} to ${formatValue(volts, 'V')} puts ` +
    `${formatValue(storedEnergy(farad, volts), 'J')} into it, ${formatValue(peak, 'W')} at first, ` +
    `${formatValue(peak / (part.rating ?? NaN), 'ratio')} its ${formatValue(part.rating ?? NaN, 'W')}`
  );
};

/** What an element does in a surge, by its grade. */
const surgeWords = (grade: number): string => {
  if (grade >= 1) return 'the thin element burns open at a surge that a solid one takes';
  return grade > 0
    ? 'takes moderate surges only: see the pulse curve of its sheet'
    : 'the whole body or the wire takes the heat of a surge';
};

/** Whether the element takes short heavy surges. */
export const surgeDuty: KindModel = {
  measure: (part, circumstances) => {
    const weak = rangeOf(circumstances, part, 'surge-weak');
    return weak === undefined
      ? { status: 'unknown', missing: ['surge-weak'] }
      : { status: 'known', value: exactly(weak.max), properties: ['surge-weak'] };
  },
  working: (part, circumstances, value) =>
    `${pulseWords(part, circumstances)}: ${surgeWords(value.typ)}`,
};

/** Heat (W) that the voltage of a fault makes in a resistance (ohm). */
const heatOfFault = (ohm: number, circumstances: KindCircumstances): number =>
  dissipation(conditionOf(circumstances, 'v-fault').max, ohm);

/** What a body does that is heated beyond its rating, by its grade. */
const flameWords = (grade: number, overheated: boolean): string => {
  if (!overheated) return 'not enough to burn it';
  if (grade >= 1) return 'the coat or the body may catch fire';
  return grade > 0
    ? 'may flame for some seconds, then goes out by itself'
    : 'does not burn and lights nothing, though it may glow';
};

/**
 * How the body behaves when a fault elsewhere overheats it. Within its rating nothing burns; a part
 * whose rating nobody knows is taken to be overheated.
 */
export const flammability: KindModel = fromProperties(
  ['flame'],
  ({ flame }, part, circumstances) => {
    const { min, typ, max } = spreadOf(part);
    const burns = (grade: number, ohm: number): number =>
      heatOfFault(ohm, circumstances) > (part.rating ?? 0) ? grade : 0;
    return { min: burns(flame.min, max), typ: burns(flame.typ, typ), max: burns(flame.max, min) };
  },
  (_known, part, circumstances, value) => {
    const volts = conditionOf(circumstances, 'v-fault').max;
    const heat = heatOfFault(valueOf(part), circumstances);
    const rating = part.rating ?? NaN;
    return (
      `a fault with ${formatValue(volts, 'V')} across ${formatValue(valueOf(part), 'ohm')} makes ` +
      `${formatValue(heat, 'W')}, ${formatValue(heat / rating, 'ratio')} its ${formatValue(rating, 'W')}: ` +
      flameWords(value.typ, !(heat <= rating))
    );
  },
);
