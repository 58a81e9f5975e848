import type { Part } from '../assessment/parts.ts';
import type { PropertyId } from '../catalogue.ts';
import {
  agedDecades,
  ageingLoss,
  driftByLimits,
  driftBySlope,
  driftWithResistor,
} from '../equations/drift.ts';
import { centsOfDrift } from '../equations/pitch.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { add, type Range } from '../quantities/range.ts';
import { HOUR } from '../quantities/si.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { lostToDate, oldPartToday } from './service-capacitance.ts';

interface Drift {
  change: Range;
  property: PropertyId;
  /** Put into words only where they are read: every candidate is measured. */
  words: () => string;
}

const SLOPE = 'temperature-coefficient';
const LIMITS = 'capacitance-change-temperature';

const driftOf = (part: Part, circumstances: Circumstances): Drift | undefined => {
  const span = conditionOf(circumstances, 't-max').max - conditionOf(circumstances, 't-min').min;
  const slope = rangeOf(circumstances, part, SLOPE);
  if (slope !== undefined) {
    return {
      change: driftBySlope(slope, span),
      property: SLOPE,
      words: () => `${formatQuantity(slope, '1/K')} over ${formatValue(span, 'K')}`,
    };
  }
  const limits = rangeOf(circumstances, part, LIMITS);
  if (limits === undefined) return undefined;
  return {
    change: driftByLimits(limits),
    property: LIMITS,
    words: () =>
      `limits of ${formatValue(limits.min, 'fraction')} and +${formatValue(limits.max, 'fraction')} ` +
      'over its whole range; where the curve bends is not known, so half the width is taken as usual',
  };
};

const driftModel = (
  convert: (change: Range) => Range,
  unit: 'fraction' | 'cents',
  driftIn = driftOf,
): FindingModel => ({
  measure: (part, circumstances) => {
    const drift = driftIn(part, circumstances);
    return drift === undefined
      ? { status: 'unknown', missing: [SLOPE] }
      : { status: 'known', value: convert(drift.change), properties: [drift.property] };
  },
  working: (part, circumstances, value) =>
    `${driftIn(part, circumstances)?.words() ?? ''}: ${formatQuantity(value, unit)}`,
});

/** Change of capacitance from the coldest to the warmest. */
export const drift = driftModel((change) => change, 'fraction');

/**
 * Drift of a part together with a slope that adds to or balances its own. A part without a steady slope
 * cannot be balanced: what the other does is added to whichever way the part goes.
 */
const driftBeside = (
  part: Part,
  circumstances: Circumstances,
  other: Range,
  said: (own: Drift) => string,
): Drift | undefined => {
  const own = driftOf(part, circumstances);
  if (own === undefined || (other.min === 0 && other.max === 0)) return own;
  const span = conditionOf(circumstances, 't-max').max - conditionOf(circumstances, 't-min').min;
  const slope = rangeOf(circumstances, part, SLOPE);
  const change =
    slope === undefined
      ? add(own.change, driftBySlope(other, span))
      : driftWithResistor(slope, other, span);
  return { ...own, change, words: () => `${own.words()}, alone ${said(own)}` };
};

/** Drift of part and resistor together, where frequency goes with 1/(R*C). */
const netDrift = (part: Part, circumstances: Circumstances): Drift | undefined => {
  const resistor = conditionOf(circumstances, 'resistor-tc');
  return driftBeside(
    part,
    circumstances,
    resistor,
    ({ change }) =>
      `${formatQuantity(centsOfDrift(change), 'cents')}; with a resistor of ${formatQuantity(resistor, '1/K')}`,
  );
};

/** Drift of a circuit that was balanced with the slope of the old part. */
const unbalancedDrift = (part: Part, circumstances: Circumstances): Drift | undefined => {
  const old = conditionOf(circumstances, 'tc-old');
  return driftBeside(
    part,
    circumstances,
    { min: -old.max, typ: -old.typ, max: -old.min },
    ({ change }) =>
      `${formatQuantity(change, 'fraction')}; where ${formatQuantity(old, '1/K')} balanced the circuit`,
  );
};

/** Change of capacitance from the coldest to the warmest that the slope of the old part does not balance. */
export const balancedDrift = driftModel((change) => change, 'fraction', unbalancedDrift);

/** The same as a change of pitch where frequency goes with 1/(R*C). */
export const pitchDrift = driftModel(centsOfDrift, 'cents', netDrift);

/** Capacitance lost over the years to come; of an old part, what it has lost to date. */
export const ageing: FindingModel = {
  today: oldPartToday,
  measure: (part, circumstances) => {
    const gone = lostToDate(part, circumstances);
    if (gone !== undefined) return { status: 'known', value: gone, properties: ['ageing'] };
    const rate = rangeOf(circumstances, part, 'ageing');
    const life = rangeOf(circumstances, part, 'life-change');
    if (rate !== undefined && (rate.max > 0 || life === undefined)) {
      const hours = conditionOf(circumstances, 'years').typ / HOUR;
      return { status: 'known', value: ageingLoss(rate, hours), properties: ['ageing'] };
    }
    if (life !== undefined) return { status: 'known', value: life, properties: ['life-change'] };
    return { status: 'unknown', missing: ['ageing'] };
  },
  working: (part, circumstances, value) => {
    const rate = rangeOf(circumstances, part, 'ageing');
    if (rate === undefined || rate.max === 0) {
      return `over the part's life: ${formatQuantity(value, 'fraction')}`;
    }
    const since = part.age ?? conditionOf(circumstances, 'years').typ;
    const decades = agedDecades(since / HOUR);
    return (
      `${formatQuantity(rate, 'fraction')} per decade of hours × ` +
      `${formatValue(decades, 'grade')} decades = ${formatQuantity(value, 'fraction')}`
    );
  },
};
