import { z } from 'zod';
import {
  id,
  idList,
  list,
  number,
  optionalId,
  optionalNumber,
  optionalText,
  provenance,
  text,
  yesNo,
} from './cells.ts';
import { drawingColumns } from './drawings.ts';
import { use } from './marking-context.ts';

/** A colour that parts are marked with. Its fill is our own choice of paint, for drawings. */
export const colourRow = z.strictObject({
  id,
  name: text.describe('as it is said at the bench'),
  also: list.describe('other words for it, in short and in other languages, in small letters'),
  code: z
    .union([z.literal(''), z.string().regex(/^[A-Z]{2}$/, 'expected two capital letters')])
    .describe('letter code of IEC 60757, for those who type'),
  fill: z
    .union([z.literal(''), z.string().regex(/^#[\da-f]{6}$/, 'expected a colour such as #c4261d')])
    .describe('paint in drawings; none where nothing is painted'),
  ink: z.enum(['light', 'dark']).describe('letters that can be read on the fill'),
  shade_of: optionalId.describe('the colour that it is a lighter or darker shade of'),
  ...provenance,
});

/** What is coloured: a body that one recognises by looking. */
export const colourFormRow = z.strictObject({
  id,
  name: text,
  mark: text.describe('what one coloured place is called: band, dot, stripe'),
  kind: z.enum(['capacitor', 'resistor']),
  body: optionalId.describe('id in markings/bodies.csv'),
  about: text.describe('how one knows it by looking'),
  ...drawingColumns,
  ...provenance,
});

/** A body with a number of coloured places. */
export const colourLayoutRow = z.strictObject({
  id,
  form: id.describe('id in colour-forms.csv'),
  labels: list.describe('name of each place, in the order in which they are looked at'),
  painted: list
    .refine(
      (places) =>
        places.every((place) => /^(?:colour|tip|otherTip|(?:bands|dots)-\d)$/.test(place)),
      'expected colour, tip, otherTip, bands-0 …, dots-0 …',
    )
    .describe('what each place is in a drawing of the body'),
  turn: yesNo.describe('yes: nothing but the colours says which end to begin at'),
  ...provenance,
});

/** What a coloured place may tell. */
const colourRoles = [
  'digit',
  'multiplier',
  'tolerance',
  'voltage',
  'hundreds-of-volts',
  'temperature',
  'class',
  'characteristic',
  'identifier',
  'type',
  'failure-rate',
  'link',
  'temperature-range',
  'vibration',
] as const;
const role = z.enum(colourRoles);

const roleList = list.pipe(z.array(role));

/** One way to read the colours of a layout. */
export const colourSchemeRow = z.strictObject({
  id,
  layout: id.describe('id in colour-layouts.csv'),
  name: text,
  places: roleList.describe('what each place tells; neighbours of one role are read together'),
  codes: idList.describe('codes of colour-meanings.csv that it uses'),
  absent: roleList.describe('what is told by having no place for it'),
  quantity: z.union([z.literal(''), z.enum(['resistance', 'capacitance'])]),
  unit_si: optionalNumber.describe('what the figures count in, F or ohm'),
  value_min: optionalNumber.describe('smallest value met, F or ohm'),
  value_max: optionalNumber.describe('largest value met, F or ohm'),
  apart: z
    .union([z.literal(''), z.enum(['first', 'last'])])
    .describe('the place that is broader or stands apart from the others'),
  bare: yesNo.describe('yes: a place without a mark has the colour of the first one'),
  system: optionalId.describe('id in temperature-systems.csv, for what is told of temperature'),
  types: idList.describe('types that are marked so, where the colours do not say'),
  use,
  polarity: optionalText,
  drawn_from_percent: optionalNumber
    .refine((percent) => percent === undefined || percent >= 0, 'expected zero or above')
    .describe(
      'parts of this tolerance (per cent) and wider are drawn so, the first scheme that has colours for one; none so where there is no number',
    ),
  about: text.describe('what tells it from others that fit the same colours'),
  ...provenance,
});

/** What a colour stands for in one place of one code. */
export const colourMeaningRow = z.strictObject({
  code: id.describe('a set of meanings that schemes share'),
  role,
  colour: id.describe('id in colours.csv'),
  second: optionalId.describe('the smaller of two colours that are read together'),
  from_f: optionalNumber.describe('for capacitances from this on, F'),
  below_f: optionalNumber.describe('for capacitances below this, F'),
  low: optionalNumber.describe('lower end, where it is a span; below zero for a tolerance'),
  value: optionalNumber,
  high: optionalNumber.describe('upper end'),
  unit: z.union([
    z.literal(''),
    z.enum(['percent', 'pF', 'V', 'ohm', 'ppm/K', 'degC', 'Hz', 'percent/1000h']),
  ]),
  word: optionalText.describe('code or words that go with it'),
  types: idList,
  use,
  ...provenance,
});

/**
 * How readily each thing about coloured places is believed, on the scale of the weights of printed
 * markings: about one for a factor of three. Only differences matter.
 */
export const colourWeightRow = z.strictObject({
  id: z.enum([
    'scheme-usual',
    'scheme-other',
    'scheme-rare',
    'turned',
    'apart-agrees',
    'apart-differs',
    'leading-nought',
    'outside-range',
    'meaning-usual',
    'meaning-other',
    'meaning-rare',
    'no-meaning',
    'coarse-series',
    'fine-series',
    'precision-series',
    'old-value',
    'unsuited-series',
    'too-fine-series',
    'no-series',
    'turned-within',
    'sure-lead',
    'likely-lead',
  ]),
  value: number,
  meaning: text,
  ...provenance,
});

type Rows<Row extends z.ZodType> = z.output<Row>[];

export type ColourRole = (typeof colourRoles)[number];

/** The tables that colours on parts are read with. */
export interface ColourTables {
  colours: Rows<typeof colourRow>;
  colourForms: Rows<typeof colourFormRow>;
  colourLayouts: Rows<typeof colourLayoutRow>;
  colourSchemes: Rows<typeof colourSchemeRow>;
  colourMeanings: Rows<typeof colourMeaningRow>;
  colourWeights: Rows<typeof colourWeightRow>;
}
