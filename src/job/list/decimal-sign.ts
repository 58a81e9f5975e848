import type { ColumnField, Mapping } from './columns.ts';
import type { Row } from './delimited.ts';

/** The sign before the decimals in a table; the other one then parts thousands. */
export type DecimalSign = 'point' | 'comma';

const NUMBERS: readonly ColumnField[] = ['value', 'tolerance', 'volts'];
/** `1.000` and `12,000,000`: thousands, or three decimals. */
const THOUSANDS = /(?<![\d.,])[1-9]\d{0,2}(?:([.,])\d{3})(?:\1\d{3})*(?![\d.,])/gu;
/** Decimals that can be nothing else: not three of them, or behind a zero. */
const DECIMALS = /(?<![\d.,])(?:0([.,])\d+|\d+([.,])(?:\d{1,2}|\d{4,}))(?![\d.,])/gu;

const cellsOf = (rows: readonly Row[], { hasHeader, fields }: Mapping): string[] =>
  rows.slice(hasHeader ? 1 : 0).flatMap(({ cells }) =>
    cells.filter((_, at) => {
      const field = fields[at];
      return field !== undefined && NUMBERS.includes(field);
    }),
  );

/** The decimal sign that the numbers of a table have; nothing where they have none, or both. */
export const guessDecimal = (rows: readonly Row[], mapping: Mapping): DecimalSign | undefined => {
  const found = new Set(
    cellsOf(rows, mapping).flatMap((cell) =>
      [...cell.matchAll(DECIMALS)].map(([, afterZero, sign]) => afterZero ?? sign),
    ),
  );
  if (found.size !== 1) return undefined;
  return found.has(',') ? 'comma' : 'point';
};

/** Whether some numbers of a table are a thousand times larger or not by its decimal sign. */
export const isDecimalAsked = (rows: readonly Row[], mapping: Mapping): boolean =>
  cellsOf(rows, mapping).some((cell) => cell.match(THOUSANDS) !== null);

/** A cell without the signs that part thousands; others are left as they are typed. */
export const withoutThousands = (
  cell: string,
  field: ColumnField,
  decimal?: DecimalSign,
): string => {
  if (decimal === undefined || !NUMBERS.includes(field)) return cell;
  const parting = decimal === 'comma' ? '.' : ',';
  return cell.replaceAll(THOUSANDS, (number: string, sign: string) =>
    sign === parting ? number.replaceAll(sign, '') : number,
  );
};
