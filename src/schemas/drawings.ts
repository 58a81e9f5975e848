import { z } from 'zod';
import {
  count,
  id,
  list,
  optionalId,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
  tolerance,
} from './cells.ts';

/** What the surface is: how it shines, and whether one sees through it. */
export const FINISHES = ['matt', 'gloss', 'wax', 'clear', 'metal', 'sleeve', 'card'] as const;

/** How a part says which lead is which. */
export const POLARITY_MARKS = [
  'stripe-minus',
  'segment-minus',
  'arrow-minus',
  'plus-mark',
  'groove-plus',
  'bar-plus',
  'outer-foil-band',
  'cathode-band',
] as const;

const oneOrNone = <const Words extends readonly [string, ...string[]]>(words: Words) =>
  z.union([z.literal(''), z.enum(words)]);

/**
 * The columns that say how a part is drawn, in this order, for every table of parts that has
 * drawings. Colours are ids of `markings/colours.csv`.
 */
export const drawingColumns = {
  form: id.describe('one of src/drawing/forms/'),
  length_mm: positive.describe(
    'longer side on the board; the diameter of a can or disc, the axis of a tube',
  ),
  width_mm: positive.describe(
    'shorter side on the board: thickness of a box or disc, diameter of a tube',
  ),
  height_mm: positive.describe('above the board, without the leads'),
  pitch_mm: optionalNumber.describe('between the leads; none where the form has none'),
  lead_mm: optionalNumber.describe('wire or pin across, where it is not about 0.6'),
  pins: z
    .union([z.literal('').transform(() => undefined), count])
    .describe('pins, lugs or sections, where a form may have more or fewer'),
  colour: optionalId.describe('of the body; none for bare metal or where it does not matter'),
  finish: oneOrNone(FINISHES).describe('surface: matt where nothing is said'),
  tip: optionalId.describe('colour of the top of a disc or plate, or of one end'),
  bands: list.describe('colours in the order in which they are read, joined by ;'),
  dots: list.describe('colours in the order in which they are read, row by row, joined by ;'),
  polarity: oneOrNone(POLARITY_MARKS).describe('how it says which lead is which'),
  marking: list.describe('lines as printed, joined by ;'),
} as const;

/** The columns of a drawing by themselves. */
export type DrawingRow = z.output<z.ZodObject<typeof drawingColumns>>;

/** How parts of a type look, by style; and a part that looks so. */
export const typeLookRow = z.strictObject({
  type: id,
  style: text.describe(
    'as in bodies.csv and market.csv where it is made today; the first row of a type is how it is mostly met in old equipment',
  ),
  capacitance: positive.describe('of a part of the size given here, F'),
  volts: optionalNumber.describe('rated voltage of it, V'),
  voltage_kind: z.enum(['dc', 'ac']),
  tolerance: z.union([z.literal(''), tolerance]).describe('of it, percent each way or minus/plus'),
  characteristic: optionalText.describe('code of its temperature characteristic'),
  ...drawingColumns,
  marking: drawingColumns.marking.describe(
    'lines as printed, joined by ;, with places for what a part says of itself: {figures}, {letter}, {decimal}, {plain}, {unit:µF}, {tolerance:letter}, {tolerance:percent}, {volts:V}',
  ),
  ...provenance,
});
export type TypeLookRow = z.output<typeof typeLookRow>;

/** What the columns of a drawing point at, for the registry of tables. */
export const drawingReferences = [
  { column: 'colour', table: 'markings/colours.csv' },
  { column: 'tip', table: 'markings/colours.csv' },
  { column: 'bands', table: 'markings/colours.csv', many: true, inOrder: true },
  { column: 'dots', table: 'markings/colours.csv', many: true, inOrder: true },
] as const;
