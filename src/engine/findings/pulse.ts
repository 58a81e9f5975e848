import { edgeShare } from '../equations/edge.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { mapFalling } from '../quantities/range.ts';
import { EDGE, pulseRatingOf } from '../sizes/pulse-of.ts';
import { conditionOf, type FindingModel } from './model.ts';

/** Steepest edge as a share of what the part withstands. */
export const pulse: FindingModel = {
  measure: (part, circumstances) => {
    const withstood = pulseRatingOf(circumstances.catalogue, part);
    if (withstood === undefined) return { status: 'unknown', missing: [EDGE] };
    const edge = conditionOf(circumstances, 'edge').max;
    return {
      status: 'known',
      value: mapFalling(withstood.range, (slope) => edgeShare(edge, slope)),
      properties: withstood.by === 'type' ? [EDGE] : [],
      sources: [...withstood.sources],
      bases: [...withstood.bases],
    };
  },
  working: (part, circumstances, value) => {
    const withstood = pulseRatingOf(circumstances.catalogue, part);
    const rated = withstood === undefined ? 'unknown' : formatQuantity(withstood.range, 'V/s');
    const of = withstood?.by === 'value' ? ' (by its value and voltage)' : ' (of its type)';
    return (
      `${formatValue(conditionOf(circumstances, 'edge').max, 'V/s')} / ${rated}${of} = ` +
      formatQuantity(value, 'fraction')
    );
  },
};
