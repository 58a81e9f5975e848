import { z } from 'zod';
import {
  id,
  idList,
  list,
  numberList,
  optionalId,
  optionalNumber,
  optionalPositive,
  optionalText,
  provenance,
  text,
  tolerance,
  yesNo,
} from './cells.ts';
import { positionRow } from './positions.ts';
import { propertyRow, typeRow } from './types.ts';

/** A kind of part besides capacitors. */
export const kindRow = z.strictObject({
  id,
  name: text.describe('one of them, in a sentence'),
  plural: text,
  unit: optionalText.describe('SI unit of the value that it is named by; nothing if it has none'),
  value_name: optionalText.describe('what that value is called, such as Resistance'),
  lowest: optionalPositive.describe('least value that a visitor may say, SI'),
  highest: optionalPositive.describe('SI'),
  rating_unit: optionalText.describe('SI unit of its rating; nothing if it is not ordered by one'),
  rating_name: optionalText.describe('what the rating is called, such as Rated power'),
  rating_lowest: optionalPositive.describe('least rating that a visitor may say, SI'),
  rating_highest: optionalPositive.describe('SI'),
  summary: text.describe('what its pages are about, one sentence'),
  wiper: z
    .union([z.literal(''), z.enum(['preset', 'panel'])])
    .describe(
      'preset: its setting is found once and carried over; panel: turned by whoever uses it; nothing: it has no wiper',
    ),
  sums: idList.describe('bench sums that calculate with other numbers'),
  ordered: idList.describe('properties that an order names besides value and rating'),
});
export type KindRow = z.output<typeof kindRow>;

/** A type of such a part, by what it is made of. */
export const kindTypeRow = z.strictObject({
  id: id.describe('unlike that of any capacitor'),
  kind: id,
  name: typeRow.shape.name,
  short_name: typeRow.shape.short_name,
  also_called: typeRow.shape.also_called,
  family: text.describe('types that stand together in lists'),
  wound: yesNo.describe('yes: its element is a winding of wire, a coil at high frequencies'),
  market: typeRow.shape.market,
  duties: idList.describe('what it is made for besides, such as fusible; safety asks for these'),
  only_asked: yesNo.describe('yes: offered only where a position asks for all of its duties'),
  seldom_met: typeRow.shape.seldom_met,
  appearance: typeRow.shape.appearance,
  summary: typeRow.shape.summary,
  failure: typeRow.shape.failure,
  old_min: optionalPositive.describe('smallest value found in old equipment, SI'),
  old_max: optionalPositive.describe('largest value found in old equipment, SI'),
  old_rating: optionalPositive.describe('rating commonly found in old equipment, SI'),
  old_tolerance: z
    .union([z.literal(''), tolerance])
    .describe('tolerance commonly found on the old part, percent each way or minus/plus'),
  ...provenance,
});
export type KindTypeRow = z.output<typeof kindTypeRow>;

/** Where in a circuit such a part sits. */
export const kindPositionRow = z.strictObject({
  id: id.describe('unlike that of any position of capacitors'),
  kind: id,
  name: text,
  group: text.describe('positions that stand together in lists'),
  also_called: list.describe('other words that a technician may type'),
  summary: text.describe('what the part does here, one sentence'),
  decisive: text.describe('what decides the choice, and why'),
  larger: optionalText.describe('what a larger value does; nothing for parts without a value'),
  smaller: optionalText.describe('what a smaller value does'),
  value_policy: positionRow.shape.value_policy,
  value_low: positionRow.shape.value_low,
  value_high: positionRow.shape.value_high,
  duties: idList.describe('what a part must be made for here, all of them'),
  wiring: optionalId.describe('how the part is wired, where that differs, such as divider'),
  reference: optionalPositive.describe('value that pages show, SI'),
  usual_min: optionalPositive.describe('SI'),
  usual_max: optionalPositive.describe('SI'),
  ...provenance,
});
export type KindPositionRow = z.output<typeof kindPositionRow>;

/** What can be bought: one row a band of values of a type. */
export const kindOfferRow = z.strictObject({
  type: id,
  style: text.describe('body as one orders it'),
  value_min: optionalPositive.describe('SI; nothing for parts without a value'),
  value_max: optionalPositive.describe('SI'),
  ratings: numberList.describe('ratings stocked in this band, SI, rising'),
  tolerances: list.describe(
    'percent each way (5) or minus/plus, joined by ;, the usual one first; none for parts without',
  ),
  series: z
    .union([z.literal(''), id, z.string().regex(/^E\d+$/)])
    .describe('preferred values that it is made in: a series, or a list of kinds/values.csv'),
  pitch_mm: numberList.describe('lead pitches; none for chips and axial parts'),
  ...provenance,
});
export type KindOfferRow = z.output<typeof kindOfferRow>;

/** A property that figures of some kinds of part are given for. */
export const kindPropertyRow = z.strictObject({
  id: propertyRow.shape.id.describe('unlike that of any property of capacitors'),
  kinds: idList.describe('kinds whose types have it; one that is decisive needs a figure of each'),
  ...propertyRow.omit({ id: true }).shape,
});
export type KindPropertyRow = z.output<typeof kindPropertyRow>;

/** One figure that goes by the value or the rating of the parts of a type. */
export const bandedFigureRow = z.strictObject({
  type: id,
  property: id,
  value_min: optionalPositive.describe('SI; nothing where it holds for all values'),
  value_max: optionalPositive.describe('SI'),
  rating_min: optionalPositive.describe('SI; nothing where it holds for all ratings'),
  rating_max: optionalPositive.describe('SI'),
  min: optionalNumber,
  typ: optionalNumber,
  max: optionalNumber,
  unit: text.describe('unit in units.csv, of the same kind as the property asks'),
  conditions: optionalText,
  ...provenance,
});
export type BandedFigureRow = z.output<typeof bandedFigureRow>;
