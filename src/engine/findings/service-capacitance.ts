import type { Part } from '../assessment/parts.ts';
import type { PropertyId } from '../catalogue.ts';
import { leftInService, factorUnderBias } from '../equations/bias.ts';
import { ageingLoss } from '../equations/drift.ts';
import { REFERENCE_CELSIUS } from '../equations/reference.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, mapFalling, scale, type Range } from '../quantities/range.ts';
import { HOUR } from '../quantities/si.ts';
import { conditionOr, rangeOf, type Circumstances, type Surroundings } from './model.ts';

const AGEING = 'ageing';

/** What moves capacitance away from the mark, as words. */
const CAUSES = ['tolerance', 'temperature', 'age', 'bias'] as const;
type Cause = (typeof CAUSES)[number];

/** What one cause makes of the marked value: factors on it, and where they come from. */
interface Shift {
  factor: Range;
  /** What it was worked out from; nothing where that is the part's own mark, or nothing is known. */
  property?: PropertyId;
}

const NONE: Shift = { factor: exactly(1) };

const byTolerance = ({ tolerance }: Part): Range => ({
  min: 1 - tolerance.minus,
  typ: 1,
  max: 1 + tolerance.plus,
});

const byTemperature = (part: Part, circumstances: Surroundings): Shift => {
  const slope = rangeOf(circumstances, part, 'temperature-coefficient');
  const cold = conditionOr(circumstances, 't-min', REFERENCE_CELSIUS).min - REFERENCE_CELSIUS;
  const hot = conditionOr(circumstances, 't-max', REFERENCE_CELSIUS).max - REFERENCE_CELSIUS;
  if (slope !== undefined) {
    const corners = [slope.min * cold, slope.max * cold, slope.min * hot, slope.max * hot];
    return {
      factor: { min: 1 + Math.min(0, ...corners), typ: 1, max: 1 + Math.max(0, ...corners) },
      property: 'temperature-coefficient',
    };
  }
  const change = rangeOf(circumstances, part, 'capacitance-change-temperature');
  if (change === undefined) return NONE;
  return {
    factor: { min: 1 + change.min, typ: 1, max: 1 + change.max },
    property: 'capacitance-change-temperature',
  };
};

/**
 * Share lost by ageing since a part was made, for types that age by decades of hours; nothing for
 * others, and for a part that is new.
 */
export const lostToDate = (
  part: Pick<Part, 'type' | 'age'>,
  circumstances: Pick<Surroundings, 'catalogue'>,
): Range | undefined => {
  const rate = rangeOf(circumstances, part, AGEING);
  return part.age === undefined || rate === undefined || rate.max === 0
    ? undefined
    : ageingLoss(rate, part.age / HOUR);
};

const byAge = (part: Part, circumstances: Surroundings): Shift => {
  const gone = lostToDate(part, circumstances);
  if (gone !== undefined) {
    return { factor: mapFalling(gone, (lost) => 1 - lost), property: AGEING };
  }
  const hours = conditionOr(circumstances, 'years', 0).typ / HOUR;
  const rate = rangeOf(circumstances, part, AGEING);
  if (rate !== undefined && rate.max > 0) {
    const lost = ageingLoss(rate, hours);
    return {
      // A part just fitted has lost nothing yet, so ageing lowers only the lower end.
      factor: { min: 1 - lost.max, typ: 1 - lost.typ / 2, max: 1 },
      property: AGEING,
    };
  }
  const life = rangeOf(circumstances, part, 'life-change');
  if (life === undefined || hours === 0) return NONE;
  return { factor: { min: 1 - life.max, typ: 1, max: 1 }, property: 'life-change' };
};

const byBias = (part: Part, circumstances: Surroundings): Shift => {
  const change = rangeOf(circumstances, part, 'voltage-coefficient');
  if (change === undefined) return NONE;
  const voltage = conditionOr(circumstances, 'vdc', 0).max;
  return {
    factor: factorUnderBias(change, voltage, part.ratedVoltage),
    ...(voltage > 0 ? { property: 'voltage-coefficient' } : {}),
  };
};

/** What age has taken from the old part, in words; nothing for a type that does not age so. */
export const oldPartToday = (circumstances: Circumstances): string => {
  const { original } = circumstances;
  const gone = lostToDate(original, circumstances);
  return gone === undefined || original.age === undefined
    ? ''
    : `the old part as it is today: ${formatValue(original.age, 's')} have taken ` +
        `${formatQuantity(gone, 'fraction')} of its capacitance`;
};

/** Capacitance (F) of a part as it comes from the shelf, over its tolerance. */
export const capacitanceAsBought = (part: Part): Range =>
  scale(byTolerance(part), part.capacitance);

/** What each cause makes of a part, in the order in which they are told. */
const shiftsOf = (part: Part, circumstances: Surroundings): Record<Cause, Shift> => ({
  tolerance: { factor: byTolerance(part) },
  temperature: byTemperature(part, circumstances),
  age: byAge(part, circumstances),
  bias: byBias(part, circumstances),
});

/** Factor on the marked value by each cause. */
export const causesOf = (
  part: Part,
  circumstances: Surroundings,
): { cause: Cause; factor: Range }[] => {
  const shifts = shiftsOf(part, circumstances);
  return CAUSES.map((cause) => ({ cause, factor: shifts[cause].factor }));
};

/** What is left of a marked capacitance in use, and what it was worked out from. */
export interface Service {
  /** F */
  capacitance: Range;
  properties: PropertyId[];
}

/**
 * Capacitance of a part over its tolerance, the temperatures of the position, its age and the bias
 * across it: of a new part over the years to come, of an old one as it is today. Each factor is a
 * separate cause, so the ends multiply.
 */
export const serviceCapacitance = (part: Part, circumstances: Surroundings): Service => {
  const { tolerance, temperature, age, bias } = shiftsOf(part, circumstances);
  const factors = [tolerance.factor, temperature.factor, age.factor, bias.factor];
  return {
    capacitance: leftInService(part.capacitance, factors),
    properties: [temperature.property, age.property, bias.property].filter(
      (property) => property !== undefined,
    ),
  };
};
