import { impedanceSpan } from '../equations/impedance.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly } from '../quantities/range.ts';
import { conditionOf, rangeOf, type FindingModel } from './model.ts';

const RESISTANCE = 'esr-100khz';
const INDUCTANCE = 'inductance';

/** Series resistance against the window that keeps the circuit stable. */
export const esrWindow: FindingModel = {
  measure: (part, circumstances) => {
    const range = rangeOf(circumstances, part, RESISTANCE);
    return range === undefined
      ? { status: 'unknown', missing: [RESISTANCE] }
      : { status: 'known', value: range, properties: [RESISTANCE] };
  },
  working: (_part, circumstances, value) =>
    `${formatQuantity(value, 'ohm')}, wanted ` +
    `${formatValue(conditionOf(circumstances, 'esr-min').typ, 'ohm')} to ` +
    formatValue(conditionOf(circumstances, 'esr-max').typ, 'ohm'),
  limit: (circumstances) => ({
    low: conditionOf(circumstances, 'esr-min').typ,
    high: conditionOf(circumstances, 'esr-max').typ,
  }),
};

/** Impedance at the highest frequency that a bypass must serve. */
export const impedance: FindingModel = {
  measure: (part, circumstances) => {
    const inductance = rangeOf(circumstances, part, INDUCTANCE);
    if (inductance === undefined) return { status: 'unknown', missing: [INDUCTANCE] };
    const resistance = rangeOf(circumstances, part, RESISTANCE);
    return {
      status: 'known',
      value: impedanceSpan(
        conditionOf(circumstances, 'f-work').typ,
        resistance ?? exactly(0),
        inductance,
        part.capacitance,
      ),
      properties: resistance === undefined ? [INDUCTANCE] : [INDUCTANCE, RESISTANCE],
    };
  },
  working: (part, circumstances, value) => {
    const inductance = rangeOf(circumstances, part, INDUCTANCE) ?? exactly(NaN);
    const resistance = rangeOf(circumstances, part, RESISTANCE);
    return (
      `${formatQuantity(inductance, 'H')}, ` +
      `${resistance ? formatQuantity(resistance, 'ohm') : 'series resistance not known'} and ` +
      `${formatValue(part.capacitance, 'F')} at ` +
      `${formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')}: ${formatQuantity(value, 'ohm')}`
    );
  },
};
