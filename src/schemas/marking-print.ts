import { z } from 'zod';
import { id, list, positive, provenance, text } from './cells.ts';
import { context, use } from './marking-context.ts';

/** How a number is written before its unit. */
const figureStyles = ['plain', 'bare-point', 'comma', 'grouped'] as const;

/** What the ways of printing a value differ in. */
const valueWriting = [
  'figures',
  'four-figures',
  'letter',
  'decimal',
  'plain',
  'unit',
  'chip',
] as const;

/** A unit as it stands on parts, and the numbers that stand before it. */
export const printedUnitRow = z.strictObject({
  word: text.describe('as printed; a word of unit-words.csv'),
  quantity: z.enum(['capacitance', 'resistance']),
  factor: positive.describe('one of it in F or ohm'),
  number_min: positive.describe('smallest number that is written with it'),
  number_max: positive.describe('largest number that is written with it'),
  figures: list
    .pipe(z.array(z.enum(figureStyles)).min(1, 'expected at least one style'))
    .describe('how the number is written: plain 0.1, bare-point .1, comma 0,1, grouped 47 000'),
  use,
  ...context,
  ...provenance,
});

/** Places of an arrangement, and what may be named behind the colon. */
const PLACE =
  /\{(?:value|dielectric|tolerance:(?:letter|percent)|temperature:(?:code|letter)|taper:(?:before|behind|word)|voltage:[a-z-]+|volts:[^}]+)\}/g;

/** How the parts of a marking stand together. */
export const arrangementRow = z.strictObject({
  id,
  pattern: text
    .refine((cell) => cell.includes('{value}'), 'expected {value} among the places')
    .refine(
      (cell) => !/[{}]/.test(cell.replace(PLACE, '')),
      'expected places such as {value}, {tolerance:letter} or {volts:V}',
    )
    .describe('places in braces, in the order in which they are printed'),
  values: list
    .pipe(z.array(z.enum(valueWriting)))
    .describe('ways of writing the value that are arranged so; none for all'),
  example: text,
  use,
  ...context,
  ...provenance,
});

export type ArrangementRow = z.output<typeof arrangementRow>;
export type FigureStyle = (typeof figureStyles)[number];
export type ValueWriting = (typeof valueWriting)[number];
