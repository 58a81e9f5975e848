import type { Catalogue } from '../engine/index.ts';
import type { AffixRow, KnownNumberRow } from '../schemas/devices.ts';
import { asSeen, printedForms, type PrintedForm } from './printed-forms.ts';
import { remembered } from './remembered.ts';

/** A number without a page, with the figures of the mark put into its words. */
export interface KnownNumber {
  number: string;
  /** List that it stands in. */
  list: KnownNumberRow['list'];
  what: string;
  near: readonly string[];
  look_out: string;
  /** What stands round the number and is no part of it. */
  letters: readonly AffixRow[];
}

/** What a sign of a number stands for, besides itself. */
const SIGNS: Readonly<Record<string, string>> = {
  /** Letters of a family in the middle of a number: `7474` is printed `74LS74` too. */
  '*': '[A-Z]{0,4}',
  /** A voltage with the letter of its tolerance before it: `C5V1`, `12`, `5.1`. */
  '#': String.raw`[A-E]?(\d{1,3}(?:[V.,]\d)?)`,
  /** A voltage that a point or a V tells from a value: `5.6`, `5V6`. */
  $: String.raw`(\d{1,2}[V.]\d)`,
  /** A whole number. */
  '%': String.raw`(\d{1,5})`,
  /** Two figures, the first of which may be nothing: `04` is 4. */
  '@': String.raw`(\d\d)`,
};

/** Signs whose figures go into the words. */
const FIGURES = /[#$%@]/gu;

/** Whether a number has a sign that stands for something. */
const hasSign = (number: string): boolean => /[*#$%@]/u.test(number);

/** Numbers with the rows that they are of. */
const numbersOf = (rows: readonly KnownNumberRow[]) =>
  rows.flatMap((row) => [row.number, ...row.also].map((number) => ({ row, number })));

/** Numbers that are printed as they stand, by how they are seen. */
const plainOf = remembered(
  (rows: readonly KnownNumberRow[]) =>
    new Map(
      numbersOf(rows)
        .filter(({ number }) => !hasSign(number))
        .map(({ row, number }) => [asSeen(number), { row, number }]),
    ),
);

/** What numbers with signs look like in print; the most telling first. */
const shapesOf = remembered((rows: readonly KnownNumberRow[]) =>
  numbersOf(rows)
    .filter(({ number }) => hasSign(number))
    .map(({ row, number }) => ({
      row,
      shape: new RegExp(
        `^${asSeen(number).replaceAll(/[*#$%@]/gu, (sign) => SIGNS[sign] ?? sign)}$`,
        'u',
      ),
    })),
);

/** `5V1` as it is said: 5.1; `04` and `12.0` as they are meant: 4 and 12. */
const said = (figures: string): string => {
  const number = figures.replace(/[V,]/u, '.');
  return /^0|\.0$/u.test(number) ? String(Number(number)) : number;
};

/** The words of a number with the figures of the mark in the places that wait for them. */
const filled = (what: string, figures: readonly string[]): string => {
  const left = figures.map(said);
  return what.replaceAll(FIGURES, (sign) => left.shift() ?? sign);
};

/** The forms of a mark; a point belongs to a voltage, though it is no part of a number. */
const formsOf = (catalogue: Catalogue, text: string): PrintedForm[] => {
  const printed = text.toUpperCase().replaceAll(/[\s\-/]/gu, '');
  return printed.includes('.') ? [{ number: printed, letters: [] }] : printedForms(catalogue, text);
};

const known = (
  { list, what, near, look_out }: KnownNumberRow,
  number: string,
  letters: KnownNumber['letters'],
  figures: readonly string[] = [],
): KnownNumber => ({
  number,
  list,
  what: filled(what, figures),
  near,
  look_out,
  letters,
});

/**
 * What a mark is among the numbers that are known without figures, letters of makers before and of
 * packages after it aside. Never throws.
 */
export const knownNumber = (catalogue: Catalogue, text: string): KnownNumber | undefined => {
  const rows = catalogue.devices.knownNumbers;
  for (const { number, letters } of formsOf(catalogue, text)) {
    const seen = asSeen(number);
    const own = plainOf(rows).get(seen);
    if (own !== undefined) return known(own.row, own.number, letters);
    for (const { row, shape } of shapesOf(rows)) {
      const match = shape.exec(seen);
      if (match) return known(row, number, letters, match.slice(1));
    }
  }
  return undefined;
};
