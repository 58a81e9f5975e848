import type { Part } from '../assessment/parts.ts';
import type { PropertyId } from '../catalogue.ts';
import { leftBy, factorUnderBias } from '../equations/bias.ts';
import { ageingLoss } from '../equations/drift.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, mapFalling, scale, type Range } from '../quantities/range.ts';
import { conditionOr, rangeOf, type Circumstances, type Surroundings } from './model.ts';

/** Temperature at which capacitance is marked, degC. */
const MARKED_C = 25;
const SECONDS_PER_HOUR = 3600;
const AGEING = 'ageing';

/** What moves capacitance away from the mark, as words. */
type Cause = 'tolerance' | 'temperature' | 'age' | 'bias';

/** What one cause makes of the marked value: factors on it, and where they come from. */
interface Shift {
  factor: Range;
  properties: PropertyId[];
}

const NONE: Shift = { factor: exactly(1), properties: [] };

const byTolerance = ({ tolerance }: Part): Range => ({
  min: 1 - tolerance.minus,
  typ: 1,
  max: 1 + tolerance.plus,
});

const byTemperature = (part: Part, circumstances: Surroundings): Shift => {
  const slope = rangeOf(circumstances, part, 'temperature-coefficient');
  const cold = conditionOr(circumstances, 't-min', MARKED_C).min - MARKED_C;
  const hot = conditionOr(circumstances, 't-max', MARKED_C).max - MARKED_C;
  if (slope !== undefined) {
    const corners = [slope.min * cold, slope.max * cold, slope.min * hot, slope.max * hot];
    return {
      factor: { min: 1 + Math.min(0, ...corners), typ: 1, max: 1 + Math.max(0, ...corners) },
      properties: ['temperature-coefficient'],
    };
  }
  const change = rangeOf(circumstances, part, 'capacitance-change-temperature');
  if (change === undefined) return NONE;
  return {
    factor: { min: 1 + change.min, typ: 1, max: 1 + change.max },
    properties: ['capacitance-change-temperature'],
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
    : ageingLoss(rate, part.age / SECONDS_PER_HOUR);
};

const byAge = (part: Part, circumstances: Surroundings): Shift => {
  const gone = lostToDate(part, circumstances);
  if (gone !== undefined) {
    return { factor: mapFalling(gone, (lost) => 1 - lost), properties: [AGEING] };
  }
  const hours = conditionOr(circumstances, 'years', 0).typ / SECONDS_PER_HOUR;
  const rate = rangeOf(circumstances, part, AGEING);
  if (rate !== undefined && rate.max > 0) {
    const lost = ageingLoss(rate, hours);
    return {
      // A part just fitted has lost nothing yet, so ageing lowers only the lower end.
      factor: { min: 1 - lost.max, typ: 1 - lost.typ / 2, max: 1 },
      properties: [AGEING],
    };
  }
  const life = rangeOf(circumstances, part, 'life-change');
  if (life === undefined || hours === 0) return NONE;
  return { factor: { min: 1 - life.max, typ: 1, max: 1 }, properties: ['life-change'] };
};

const byBias = (part: Part, circumstances: Surroundings): Shift => {
  const change = rangeOf(circumstances, part, 'voltage-coefficient');
  if (change === undefined) return NONE;
  const voltage = conditionOr(circumstances, 'vdc', 0).max;
  return {
    factor: factorUnderBias(change, voltage, part.ratedVoltage),
    properties: voltage > 0 ? ['voltage-coefficient'] : [],
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

/** What is left of a marked capacitance in use, and what took the rest. */
export interface Service {
  /** F */
  capacitance: Range;
  /** Factor on the marked value by each cause. */
  causes: { cause: Cause; factor: Range }[];
  properties: PropertyId[];
}

/**
 * Capacitance of a part over its tolerance, the temperatures of the position, its age and the bias
 * across it: of a new part over the years to come, of an old one as it is today. Each factor is a separate cause, so the ends multiply.
 */
export const serviceCapacitance = (part: Part, circumstances: Surroundings): Service => {
  const tolerance = byTolerance(part);
  const temperature = byTemperature(part, circumstances);
  const age = byAge(part, circumstances);
  const bias = byBias(part, circumstances);
  const left = (pick: (range: Range) => number): number =>
    leftBy(part.capacitance, [
      pick(tolerance),
      pick(temperature.factor),
      pick(age.factor),
      pick(bias.factor),
    ]);
  return {
    capacitance: {
      min: left((range) => range.min),
      typ: left((range) => range.typ),
      max: left((range) => range.max),
    },
    causes: [
      { cause: 'tolerance', factor: tolerance },
      { cause: 'temperature', factor: temperature.factor },
      { cause: 'age', factor: age.factor },
      { cause: 'bias', factor: bias.factor },
    ],
    properties: [...temperature.properties, ...age.properties, ...bias.properties],
  };
};
