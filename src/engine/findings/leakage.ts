import { leakageOffset as offsetOf } from '../equations/leakage.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { scale, type Range } from '../quantities/range.ts';
import { leakOf } from './insulation.ts';
import { leakageOfMade } from './leakage-of-made.ts';
import { conditionOf, type FindingModel } from './model.ts';

const unknown = { status: 'unknown', missing: ['insulation-rc'] } as const satisfies {
  status: 'unknown';
  missing: string[];
};

/** Insulation resistance (ohm) that a leakage current (A) at a voltage (V) speaks of; infinite for none. */
const insulationFor = (voltage: number, current: Range): Range => ({
  min: voltage / current.max,
  typ: voltage / current.typ,
  max: voltage / current.min,
});

/** The same in words: of a part that may leak nothing at all only its least is a number. */
const insulationInWords = (voltage: number, current: Range): string =>
  current.min > 0
    ? formatQuantity(insulationFor(voltage, current), 'ohm')
    : `at least ${formatValue(voltage / current.max, 'ohm')}`;

/** Voltage that the leakage makes across the resistance behind the part. */
export const leakageOffset: FindingModel = {
  measure: (part, circumstances) => {
    const voltage = conditionOf(circumstances, 'vdc').max;
    const leak = leakOf(part, circumstances, voltage);
    if (leak === undefined) return { ...unknown };
    if (voltage === 0) {
      return { status: 'known', value: { min: 0, typ: 0, max: 0 }, properties: leak.properties };
    }
    const resistance = conditionOf(circumstances, 'load').typ;
    return {
      status: 'known',
      value: offsetOf(voltage, resistance, insulationFor(voltage, leak.current)),
      properties: leak.properties,
    };
  },
  working: (part, circumstances, value) => {
    const voltage = conditionOf(circumstances, 'vdc').max;
    const leak = leakOf(part, circumstances, voltage);
    if (leak === undefined || voltage === 0) return 'no DC across it, so no leakage';
    if (leak.current.max === 0) return 'nothing leaks through it';
    const resistance = formatValue(conditionOf(circumstances, 'load').typ, 'ohm');
    const insulation = insulationInWords(voltage, leak.current);
    return (
      `${formatValue(voltage, 'V')} × ${resistance} / (${insulation} + ${resistance}) = ` +
      formatQuantity(value, 'V')
    );
  },
};

/** Share of the charging current that the part itself eats. */
export const leakageShare: FindingModel = {
  measure: (part, circumstances) => {
    const leak = leakOf(part, circumstances, conditionOf(circumstances, 'vdc').max);
    if (leak === undefined) return { ...unknown };
    const charge = conditionOf(circumstances, 'charge-current').min;
    return {
      status: 'known',
      value: scale(leak.current, 1 / charge),
      properties: leak.properties,
    };
  },
  working: (part, circumstances, value) => {
    const leak = leakOf(part, circumstances, conditionOf(circumstances, 'vdc').max);
    if (leak === undefined) return '';
    return (
      `${formatQuantity(leak.current, 'A')} / ` +
      `${formatValue(conditionOf(circumstances, 'charge-current').min, 'A')} = ` +
      formatQuantity(value, 'fraction')
    );
  },
};

/** DC current through the part at working voltage. */
export const leakageCurrent: FindingModel = {
  measure: (part, circumstances) => {
    const leak = leakOf(part, circumstances, conditionOf(circumstances, 'vdc').max);
    return leak === undefined
      ? { ...unknown }
      : { status: 'known', value: leak.current, properties: leak.properties };
  },
  working: (part, circumstances, value) => {
    if (part.made !== undefined) return leakageOfMade(part.made, circumstances, value);
    const voltage = conditionOf(circumstances, 'vdc').max;
    const leak = leakOf(part, circumstances, voltage);
    if (leak === undefined) return '';
    return (
      `${formatValue(voltage, 'V')} / ${formatQuantity(leak.insulation, 'ohm')} = ` +
      formatQuantity(value, 'A')
    );
  },
};
