import type { Part } from '../assessment/parts.ts';
import { holdStep as stepOf, settlingConstants, settlingTime } from '../equations/sampling.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { add, exactly, timesPositive, type Range } from '../quantities/range.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { capacitanceAsBought } from './service-capacitance.ts';

/** Step of the held voltage when the switch opens. */
export const holdStep: FindingModel = {
  measure: (part, circumstances) => {
    const charge = conditionOf(circumstances, 'charge-injected');
    const farad = capacitanceAsBought(part);
    return {
      status: 'known',
      value: {
        min: stepOf(charge.min, farad).min,
        typ: stepOf(charge.typ, farad).typ,
        max: stepOf(charge.max, farad).max,
      },
      properties: [],
    };
  },
  working: (part, circumstances, value) =>
    `${formatValue(conditionOf(circumstances, 'charge-injected').typ, 'C')} / ` +
    `${formatQuantity(capacitanceAsBought(part), 'F')} = ${formatQuantity(value, 'V')}`,
};

const ESR = 'esr-100khz';

/** Resistance (ohm) through which the part is charged; that of the part where it is known. */
const chargingResistance = (part: Part, circumstances: Circumstances): Range =>
  add(
    conditionOf(circumstances, 'switch-resistance'),
    rangeOf(circumstances, part, ESR) ?? exactly(0),
  );

const errorOf = (circumstances: Circumstances) =>
  [conditionOf(circumstances, 'step').typ, conditionOf(circumstances, 'error-budget').typ] as const;

/** Time until the part has taken a new voltage within the error allowed. */
export const acquisition: FindingModel = {
  measure: (part, circumstances) => ({
    status: 'known',
    value: settlingTime(
      timesPositive(chargingResistance(part, circumstances), capacitanceAsBought(part)),
      ...errorOf(circumstances),
    ),
    properties: rangeOf(circumstances, part, ESR) === undefined ? [] : [ESR],
  }),
  working: (part, circumstances, value) => {
    const [step, error] = errorOf(circumstances);
    return (
      `ln(${formatValue(step, 'V')} / ${formatValue(error, 'V')}) = ` +
      `${formatValue(settlingConstants(step, error), 'grade')} time constants of ` +
      `${formatQuantity(chargingResistance(part, circumstances), 'ohm')} × ` +
      `${formatQuantity(capacitanceAsBought(part), 'F')}: ${formatQuantity(value, 's')}`
    );
  },
};
