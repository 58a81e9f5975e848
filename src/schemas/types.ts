import { z } from 'zod';
import {
  id,
  idList,
  optionalId,
  list,
  optionalNumber,
  optionalPositive,
  optionalText,
  positive,
  numberList,
  provenance,
  text,
  tolerance,
  number,
  yesNo,
} from './cells.ts';

/** Kinds of capacitor that are made of the same, and stand together in lists. */
export const familyRow = z.strictObject({
  id,
  kin: optionalId.describe('family that one takes it for a member of; nothing for its own'),
  set_by_hand: yesNo.describe('whether its value is set on a shaft or screw'),
  roomy: yesNo.describe(
    'whether circuits leave room for what its parts lack by tolerance and lose by age, as for electrolytics',
  ),
  film_up_to: optionalNumber.describe(
    'F, largest value for which one rather takes a part of another family that serves as well, such as film for a small electrolytic',
  ),
  ...provenance,
});
export type FamilyRow = z.output<typeof familyRow>;

/** A kind of capacitor, by what it is made of. */
export const typeRow = z.strictObject({
  id,
  name: text.describe('as the trade says it, in a sentence'),
  short_name: text.describe('short, for a table column, and readable in a sentence'),
  also_called: list.describe('other words that a technician may type'),
  family: id,
  market: z
    .enum(['common', 'current', 'niche', 'old-stock', 'none'])
    .describe(
      'common: stocked by every dealer in parts; current: made and stocked; niche: made, hard to find; old-stock: no longer made; none: not a thing one can buy, such as a part of unknown class',
    ),
  seldom_met: yesNo.describe(
    'yes: seldom met on old boards, so that nobody takes an old part for it by its value alone',
  ),
  polarity: z.enum(['non-polar', 'polar', 'unknown']),
  safety_classes: list.describe('X1;X2;Y1;Y2 or motor, start: the mains duty it is approved for'),
  union_of: idList.describe('for an unmarked part: the types that it can be'),
  appearance: text.describe('how it looks'),
  summary: text.describe('what it is good for and what it is bad at, in our own words'),
  failure: text.describe('how it ages and fails'),
  old_c_min: positive.describe('smallest value found in old equipment, F'),
  old_c_max: positive.describe('largest value found in old equipment, F'),
  old_v_typical: positive.describe('rated voltage commonly found in old equipment, V'),
  old_ample_below: optionalPositive.describe(
    'rated voltage below which old parts were often rated far above their circuit, so that the mark says little of it, V; empty: chosen near the working voltage',
  ),
  old_tolerance: tolerance.describe(
    'tolerance commonly found on the old part, percent each way or minus/plus',
  ),
  old_age: positive.describe('age of one commonly met in old equipment, years'),
  chosen_for: optionalId.describe(
    'what one takes it for instead of the plain part of its family, which is named before it where that fits as well, unless the old part was taken for the same',
  ),
  ...provenance,
});
export type TypeRow = z.output<typeof typeRow>;

/** A property that figures are given for. */
export const propertyRow = z.strictObject({
  id,
  name: text,
  unit: id.or(text).describe('unit in units.csv that pages print'),
  better: z.enum(['low', 'high', 'neither']),
  scale: z.enum(['log', 'linear']).describe('how its range bar is drawn and its middle taken'),
  decisive: z
    .enum(['yes', 'no'])
    .describe('yes: every type needs a row, if only one that says unknown'),
  lowest: number.describe('physically possible lowest value, in the unit'),
  highest: number.describe('physically possible highest value, in the unit'),
  spread: positive.describe(
    'sources whose figures lie further apart than this factor must be explained',
  ),
  meaning: text,
});
export type PropertyRow = z.output<typeof propertyRow>;

/** One figure of one type from one source; several rows may speak of the same property. */
export const figureRow = z.strictObject({
  type: id,
  property: id,
  min: optionalNumber,
  typ: optionalNumber,
  max: optionalNumber,
  unit: text.describe('unit in units.csv, of the same kind as the property asks'),
  status: z.enum(['known', 'unknown', 'not-applicable']),
  use: z
    .enum(['used', 'shown'])
    .describe('used: part of the range that assessments take; shown: kept for the reader only'),
  test: optionalText.describe('absorption only: id in absorption-tests.csv'),
  conditions: optionalText,
  disagreement: optionalText.describe(
    'why this row and the others of its kind do not overlap, and how that was settled',
  ),
  ...provenance,
});
export type FigureRow = z.output<typeof figureRow>;

/** How parts of a style, which the market offers, are wired up. */
export const styleRow = z.strictObject({
  style: text.describe('as in market.csv and kinds/offers.csv'),
  mounting: z
    .enum(['leads', 'pads', 'screws'])
    .describe(
      'leads: wires, pins or lugs that are soldered; pads: chips, for which a board made for leads has no place; screws: wired up by them, for which no board has a place',
    ),
  kept_by: z.enum(['dealers', 'few']).describe('few: kept by few dealers, or made to order'),
  ...provenance,
});
export type StyleRow = z.output<typeof styleRow>;

/** How an absorption figure was measured. */
export const absorptionTestRow = z.strictObject({
  id,
  name: text,
  soak_s: positive.describe('charging time, s'),
  short_s: positive.describe('time shorted, s'),
  open_s: positive.describe('time left open until the reading, s'),
  ...provenance,
});
export type AbsorptionTestRow = z.output<typeof absorptionTestRow>;

/** What can be bought: one row a band of values and voltages of a type. */
export const offerRow = z.strictObject({
  type: id,
  style: text.describe('body as one orders it: radial box, dipped, axial, disc, radial can, chip'),
  c_min: positive.describe('F'),
  c_max: positive.describe('F'),
  voltages: numberList.describe('rated volts stocked in this band'),
  voltage_kind: z.enum(['dc', 'ac']),
  tolerances: list.describe(
    'percent each way (5) or minus/plus (20/80), joined by ;, the usual one first',
  ),
  series: id
    .or(z.string().regex(/^E\d+$/))
    .describe('the preferred values that it is made in: a series, or a list of value-lists.csv'),
  pitch_mm: numberList.describe('lead pitches; none for chips and axial parts'),
  ...provenance,
});
export type OfferRow = z.output<typeof offerRow>;
