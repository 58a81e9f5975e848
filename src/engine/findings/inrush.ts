import type { Part } from '../assessment/parts.ts';
import { lossResistance, storedEnergy, surgeCurrent, switchOnPeak } from '../equations/inrush.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { capacitanceAsBought } from './service-capacitance.ts';

const LOSS = 'dissipation-factor-120hz';
/** Frequency (Hz) that this loss is given at; charging takes about as long. */
const LOSS_HERTZ = 120;

/** Resistance (ohm) of source and part together, by the loss of the part at its capacitance. */
const resistanceWith = (circumstances: Circumstances, loss: number, farad: number): number =>
  conditionOf(circumstances, 'source-resistance').typ + lossResistance(loss, LOSS_HERTZ, farad);

/** Loss of the part; none where no figure is known, which errs on the side of a larger surge. */
const lossOf = (part: Part, circumstances: Circumstances): Range =>
  rangeOf(circumstances, part, LOSS) ?? exactly(0);

const surgeOf = (part: Part, circumstances: Circumstances): Range => {
  const voltage = conditionOf(circumstances, 'v-surge');
  const halfCycle = 1 / conditionOf(circumstances, 'f-work').typ;
  const farad = capacitanceAsBought(part);
  const loss = lossOf(part, circumstances);
  const surge = (volt: number, capacitance: number, tan: number): number =>
    surgeCurrent(volt, resistanceWith(circumstances, tan, capacitance), capacitance, halfCycle);
  return {
    min: surge(voltage.min, farad.min, loss.max),
    typ: surge(voltage.typ, farad.typ, loss.typ),
    max: surge(voltage.max, farad.max, loss.min),
  };
};

/**
 * Surge of charging current at switch-on against the surge rating of the rectifier. A rectifier has
 * proved itself with the old part, so what that drew is allowed where it is more than the rating.
 */
export const inrush: FindingModel = {
  limit: (circumstances) => ({
    high: Math.max(
      conditionOf(circumstances, 'surge-current').typ,
      surgeOf(circumstances.original, circumstances).max,
    ),
  }),
  measure: (part, circumstances) => ({
    status: 'known',
    value: surgeOf(part, circumstances),
    properties: rangeOf(circumstances, part, LOSS) === undefined ? [] : [LOSS],
  }),
  working: (part, circumstances, value) => {
    const voltage = conditionOf(circumstances, 'v-surge').typ;
    const source = conditionOf(circumstances, 'source-resistance').typ;
    const resistance = resistanceWith(
      circumstances,
      lossOf(part, circumstances).typ,
      part.capacitance,
    );
    const old = circumstances.original.capacitance;
    return (
      `${formatValue(voltage, 'V')} / (${formatValue(source, 'ohm')} + ` +
      `${formatValue(resistance - source, 'ohm')}) = ` +
      `${formatValue(switchOnPeak(voltage, resistance), 'A')} at the first instant; as hot as a ` +
      `half sine of ${formatQuantity(value, 'A')}; charge ` +
      `${formatValue(part.capacitance / old, 'ratio')} that of the old part, energy ` +
      formatValue(storedEnergy(part.capacitance, voltage), 'J')
    );
  },
};
