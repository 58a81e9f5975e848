import { formatQuantity, formatValue } from '../quantities/index.ts';
import { mapFalling } from '../quantities/range.ts';
import { conditionOf, rangeOf, type FindingModel } from './model.ts';

/** Steepest edge as a share of what the part withstands. */
export const pulse: FindingModel = {
  measure: (part, circumstances) => {
    const withstood = rangeOf(circumstances, part, 'dvdt');
    if (withstood === undefined) return { status: 'unknown', missing: ['dvdt'] };
    const edge = conditionOf(circumstances, 'edge').max;
    return {
      status: 'known',
      value: mapFalling(withstood, (slope) => edge / slope),
      properties: ['dvdt'],
    };
  },
  working: (part, circumstances, value) => {
    const withstood = rangeOf(circumstances, part, 'dvdt');
    return (
      `${formatValue(conditionOf(circumstances, 'edge').max, 'V/s')} / ` +
      `${withstood ? formatQuantity(withstood, 'V/s') : 'unknown'} = ${formatQuantity(value, 'fraction')}`
    );
  },
};
