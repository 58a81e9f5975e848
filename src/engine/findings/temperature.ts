import { formatValue } from '../quantities/index.ts';
import { exactly } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import {
  conditionOf,
  rangeOf,
  type CommonCircumstances,
  type FindingModel,
  type KnownPart,
} from './model.ts';

/** Kelvin to spare at the nearer end of the rated temperature span. */
export const temperature: FindingModel<KnownPart, CommonCircumstances<unknown>> = {
  measure: (part, circumstances) => {
    const lowest = rangeOf(circumstances, part, 'temperature-min');
    const highest = rangeOf(circumstances, part, 'temperature-max');
    if (lowest === undefined || highest === undefined) {
      return {
        status: 'unknown',
        missing: [
          ...(lowest === undefined ? ['temperature-min'] : []),
          ...(highest === undefined ? ['temperature-max'] : []),
        ],
      };
    }
    const warmest = conditionOf(circumstances, 't-max').max;
    const coldest = conditionOf(circumstances, 't-min').min;
    return {
      status: 'known',
      value: {
        min: Math.min(highest.min - warmest, coldest - lowest.max),
        typ: Math.min(highest.typ - warmest, coldest - lowest.typ),
        max: Math.min(highest.max - warmest, coldest - lowest.min),
      },
      properties: ['temperature-min', 'temperature-max'],
    };
  },
  working: (part, circumstances, value) => {
    const lowest = rangeOf(circumstances, part, 'temperature-min') ?? exactly(NaN);
    const highest = rangeOf(circumstances, part, 'temperature-max') ?? exactly(NaN);
    const degrees = (celsius: number): string => formatValue(celsius, 'degC');
    return (
      `rated ${degrees(lowest.typ)} to ${degrees(highest.typ)}, used from ` +
      `${degrees(conditionOf(circumstances, 't-min').min)} to ` +
      `${degrees(conditionOf(circumstances, 't-max').max)}: ${formatValue(value.typ, 'K')} to spare`
    );
  },
  // Warmth that halves a life, or doubles what leaks, counts as a factor of two.
  beyond: (value, { low = 0 }, rules) => 2 ** ((low - value) / ruleOf(rules, 'halving')),
};
