import { rippleVoltage as sagOf, triangularRms } from '../equations/ripple.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly } from '../quantities/range.ts';
import { conditionOf, type Circumstances, type FindingModel } from './model.ts';
import { oldPartToday, serviceCapacitance } from './service-capacitance.ts';

/** Ripple (V) of a part that never goes below its smallest allowed value. */
const designedRipple = (circumstances: Circumstances): number => {
  const { original, position } = circumstances;
  // The current is one and the same for what was designed and for what is found.
  const load = conditionOf(circumstances, 'load-current').max;
  const least = original.capacitance * position.value_low;
  return sagOf(load, conditionOf(circumstances, 'f-work').typ, exactly(least)).typ;
};

/** Ripple, peak to peak over tolerance, temperature and age of the part. */
export const rippleVoltage: FindingModel = {
  today: oldPartToday,
  // What the smallest allowed value lets through was right by design, whatever is asked.
  limit: (circumstances) => ({
    high: Math.max(conditionOf(circumstances, 'ripple-allowed').typ, designedRipple(circumstances)),
  }),
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    const load = conditionOf(circumstances, 'load-current');
    const hertz = conditionOf(circumstances, 'f-work').typ;
    return {
      status: 'known',
      value: {
        min: sagOf(load.min, hertz, capacitance).min,
        typ: sagOf(load.typ, hertz, capacitance).typ,
        max: sagOf(load.max, hertz, capacitance).max,
      },
      properties,
    };
  },
  working: (part, circumstances, value) => {
    const { capacitance } = serviceCapacitance(part, circumstances);
    return (
      `${formatValue(conditionOf(circumstances, 'load-current').typ, 'A')} / ` +
      `(${formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')} × ` +
      `${formatQuantity(capacitance, 'F')}) = ${formatQuantity(value, 'V')} peak to peak, ` +
      `${formatValue(triangularRms(value.typ), 'V')} RMS`
    );
  },
};
