import type { Part } from '../assessment/parts.ts';
import { holdStep as stepOf, settlingConstants, settlingTime } from '../equations/sampling.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { add, exactly, timesPositive, type Range } from '../quantities/range.ts';
import { TABLE_FREQUENCY } from '../sizes/esr-of.ts';
import { asPitch } from './as-pitch.ts';
import { conditionOf, type Circumstances, type FindingModel } from './model.ts';
import { originOf, highFrequencyResistance } from './series-resistance.ts';
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
    `${formatQuantity(capacitanceAsBought(part), 'F')} = ${formatQuantity(value, 'V')}` +
    asPitch(circumstances, value),
};

/** Time constant (s) of a part by its own resistance, where that is known. */
const ownConstant = (part: Part, circumstances: Circumstances): Range => {
  const own = highFrequencyResistance(part, circumstances);
  const farad = capacitanceAsBought(part);
  if (own === undefined) return exactly(0);
  const { min, typ, max } = own.range;
  // By its loss a larger part has less resistance, so that the product does not go with its value.
  return own.by === 'loss'
    ? { min: min * farad.max, typ: typ * farad.typ, max: max * farad.min }
    : timesPositive(own.range, farad);
};

/** Time constant (s) of the part behind the switch. */
const timeConstant = (part: Part, circumstances: Circumstances): Range =>
  add(
    timesPositive(conditionOf(circumstances, 'switch-resistance'), capacitanceAsBought(part)),
    ownConstant(part, circumstances),
  );

const errorOf = (circumstances: Circumstances) =>
  [conditionOf(circumstances, 'step').typ, conditionOf(circumstances, 'error-budget').typ] as const;

/** Time until the part has taken a new voltage within the error allowed. */
export const acquisition: FindingModel = {
  measure: (part, circumstances) => {
    const own = highFrequencyResistance(part, circumstances);
    return {
      status: 'known',
      value: settlingTime(timeConstant(part, circumstances), ...errorOf(circumstances)),
      properties: own?.properties ?? [],
      sources: own?.sources ?? [],
      bases: own?.bases ?? [],
    };
  },
  working: (part, circumstances, value) => {
    const [step, error] = errorOf(circumstances);
    const own = highFrequencyResistance(part, circumstances);
    const switched = conditionOf(circumstances, 'switch-resistance');
    const resistance =
      own === undefined
        ? 'that of the part, not known'
        : `${formatQuantity(own.range, 'ohm')} ${originOf(own, TABLE_FREQUENCY)}`;
    return (
      `ln(${formatValue(step, 'V')} / ${formatValue(error, 'V')}) = ` +
      `${formatValue(settlingConstants(step, error), 'grade')} time constants of ` +
      `(${formatQuantity(switched, 'ohm')} + ${resistance}) × ` +
      `${formatQuantity(capacitanceAsBought(part), 'F')}: ${formatQuantity(value, 's')}`
    );
  },
};
