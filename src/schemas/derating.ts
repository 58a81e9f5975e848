import { z } from 'zod';
import { id, idList, number, optionalNumber, positive, provenance, text } from './cells.ts';

/** A body of rules on how much of a rating to use. */
export const guidelineRow = z.strictObject({
  id,
  name: text,
  kind: z.enum(['agency', 'military', 'maker', 'handbook', 'workshop']),
  summary: text,
  ...provenance,
});
export type GuidelineRow = z.output<typeof guidelineRow>;

/** The share of the rated voltage that a guideline lets stand across a type, by temperature and rating. */
export const deratingRow = z.strictObject({
  guideline: id,
  types: idList.describe('types that it is for'),
  above_v: optionalNumber.describe('for ratings above this alone, V; any where empty'),
  up_to_v: optionalNumber.describe('for ratings up to this alone, V; any where empty'),
  share: positive.describe('of rated voltage, as a fraction'),
  from_c: number.describe('degC, start of the temperature span'),
  to_c: number.describe('degC, end of the span'),
  end_share: positive.describe('share at the end of the span; between them a straight line'),
  ...provenance,
});
export type DeratingRow = z.output<typeof deratingRow>;

/** The voltage that a maker prints for a rating at the highest temperature. */
export const categoryVoltageRow = z.strictObject({
  types: idList.describe('types that it is for'),
  rated_v: positive.describe('rated voltage, V'),
  category_v: positive.describe('voltage allowed at the highest temperature, V'),
  from_c: number.describe('degC up to which the whole rating is allowed'),
  to_c: number.describe('degC that category_v is for; between the two a straight line'),
  ...provenance,
});
export type CategoryVoltageRow = z.output<typeof categoryVoltageRow>;
