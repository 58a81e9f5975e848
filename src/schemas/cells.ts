import { z } from 'zod';

/** What one cell of a CSV may hold. Every table's schema is built from these. */

/** Words that must be there. */
export const text = z.string().trim().min(1, 'expected some text');

/** Words that may be missing. */
export const optionalText = z.string().trim();

/** A lower-case name with hyphens, stable, used in addresses. */
export const id = z
  .string()
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'expected lower-case letters and digits joined by hyphens');

/** An id, or nothing. */
export const optionalId = z.union([z.literal(''), id]);

/** Each number in one form, so that a zero in the wrong place is a fault: `0.01` written as `0.10`. */
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d*[1-9])?(?:e-?[1-9]\d*)?$/;

/** A plain number with a decimal point: `0.05`, `-750`, `1e-9`. */
export const number = z
  .string()
  .regex(NUMBER, 'expected a number such as 0.05 or 1e-9, without zeros that could be left out')
  .transform(Number)
  .refine(Number.isFinite, 'expected a number that a computer can hold');

/** A number, or nothing. */
export const optionalNumber = z
  .string()
  .refine(
    (cell) => cell === '' || (NUMBER.test(cell) && Number.isFinite(Number(cell))),
    'expected a number such as 0.05, without zeros that could be left out, or nothing',
  )
  .transform((cell) => (cell === '' ? undefined : Number(cell)));

/** A number above zero, or nothing. */
export const optionalPositive = optionalNumber.refine(
  (value) => value === undefined || value > 0,
  'expected a number above zero, or nothing',
);

/** A number above zero. */
export const positive = number.refine((value) => value > 0, 'expected a number above zero');

/** A number, zero or above. */
export const nonNegative = number.refine((value) => value >= 0, 'expected a number, zero or above');

/** A tolerance in percent, each way (`5`) or minus and plus (`20/80`). */
export const tolerance = z
  .string()
  .regex(/^\d+(?:\.\d+)?(?:\/\d+(?:\.\d+)?)?$/, 'expected percent, such as 5 or 20/80');

/** A whole number, zero or above. */
export const count = number.refine(
  (value) => Number.isInteger(value) && value >= 0,
  'expected a whole number, zero or above',
);

/** Items joined by `;`, at least none. */
export const list = z
  .string()
  .transform((cell) => (cell === '' ? [] : cell.split(';').map((item) => item.trim())))
  .refine((items) => items.every((item) => item !== ''), 'expected items between the semicolons');

/** Ids joined by `;`. */
export const idList = list.refine(
  (items) => items.every((item) => id.safeParse(item).success),
  'expected ids joined by semicolons',
);

/** Numbers joined by `;`. */
export const numberList = list
  .refine(
    (items) => items.every((item) => NUMBER.test(item) && Number.isFinite(Number(item))),
    'expected numbers joined by semicolons',
  )
  .transform((items) => items.map(Number));

/** `yes` or `no`. */
export const yesNo = z.enum(['yes', 'no']).transform((cell) => cell === 'yes');

/** How a figure is known. */
export const basis = z.enum(['published', 'common-practice', 'memory']);

/** The columns that say where a row comes from; every table of facts ends with them. */
export const provenance = {
  source: id.describe('id in sources.csv'),
  locator: optionalText.describe('where in the source: table, clause, heading'),
  basis: basis.describe(
    'published: seen in the source; common-practice: a rule of the trade; memory: from memory, source not seen',
  ),
  note: optionalText.describe('what a reader should know about this row'),
};
