import type { Part } from '../assessment/parts.ts';
import { storedEnergy, surgeCurrent, switchOnPeak } from '../equations/inrush.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { conditionOf, type Circumstances, type FindingModel } from './model.ts';
import { originOf, resistanceOf, type PartResistance } from './series-resistance.ts';
import { capacitanceAsBought } from './service-capacitance.ts';

/** Charging takes about as long as one of the pulses, which come at the working frequency. */
const pulseFrequency = (circumstances: Circumstances): number =>
  conditionOf(circumstances, 'f-work').typ;

const ownResistance = (part: Part, circumstances: Circumstances): PartResistance | undefined =>
  resistanceOf(part, circumstances, pulseFrequency(circumstances));

/** Resistance (ohm) of source and part together; without that of a part whose own is not known. */
const resistanceWith = (part: Part, circumstances: Circumstances): Range => {
  const source = conditionOf(circumstances, 'source-resistance').typ;
  // None where no figure is known, which errs on the side of a larger surge.
  const own = ownResistance(part, circumstances)?.range ?? exactly(0);
  return { min: source + own.min, typ: source + own.typ, max: source + own.max };
};

const surgeOf = (part: Part, circumstances: Circumstances): Range => {
  const voltage = conditionOf(circumstances, 'v-surge');
  const halfSine = ruleOf(circumstances.catalogue, 'surge-half-sine');
  const farad = capacitanceAsBought(part);
  const resistance = resistanceWith(part, circumstances);
  return {
    min: surgeCurrent(voltage.min, resistance.max, farad.min, halfSine),
    typ: surgeCurrent(voltage.typ, resistance.typ, farad.typ, halfSine),
    max: surgeCurrent(voltage.max, resistance.min, farad.max, halfSine),
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
  measure: (part, circumstances) => {
    const own = ownResistance(part, circumstances);
    return {
      status: 'known',
      value: surgeOf(part, circumstances),
      properties: own?.properties ?? [],
      sources: own?.sources ?? [],
      bases: own?.bases ?? [],
    };
  },
  working: (part, circumstances, value) => {
    const voltage = conditionOf(circumstances, 'v-surge').typ;
    const source = conditionOf(circumstances, 'source-resistance').typ;
    const own = ownResistance(part, circumstances);
    const resistance = resistanceWith(part, circumstances).typ;
    const old = circumstances.original.capacitance;
    const from = own ? originOf(own, pulseFrequency(circumstances)) : 'not known';
    return (
      `${formatValue(voltage, 'V')} / (${formatValue(source, 'ohm')} + ` +
      `${formatValue(own?.range.typ ?? 0, 'ohm')} ${from}) = ` +
      `${formatValue(switchOnPeak(voltage, resistance), 'A')} at the first instant; as hot as a ` +
      `half sine of ${formatQuantity(value, 'A')} for ` +
      `${formatValue(ruleOf(circumstances.catalogue, 'surge-half-sine'), 's')}; charge ` +
      `${formatValue(part.capacitance / old, 'ratio')} that of the old part, energy ` +
      formatValue(storedEnergy(part.capacitance, voltage), 'J')
    );
  },
};
