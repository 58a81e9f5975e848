import type { Catalogue } from '../engine/index.ts';
import type { AffixRow, KnownNumberRow } from '../schemas/devices.ts';
import { asSeen, printedForms, type PrintedForm } from './printed-forms.ts';
import { remembered } from './remembered.ts';

/** A number without a page, with the figures of the mark put into its words. */
export interface KnownNumber {
  number: string;
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
  '#': String.raw`[A-E]?(\d{1,3}(?:[V.]\d)?)`,
  /** A whole number. */
  '%': String.raw`(\d{1,5})`,
  /** Two figures, the first of which may be nothing: `04` is 4. */
  '@': String.raw`(\d\d)`,
};

/** Signs whose figures go into the words. */
const FIGURES = /[#%@]/gu;

/** What a number looks like in print, and whose it is; the most telling first. */
const shapesOf = remembered((rows: readonly KnownNumberRow[]) =>
  rows
    .flatMap((row) => [row.number, ...row.also].map((number) => ({ row, number })))
    .map(({ row, number }) => ({
      row,
      number,
      shape: new RegExp(
        `^${asSeen(number).replaceAll(/[*#%@]/gu, (sign) => SIGNS[sign] ?? sign)}$`,
        'u',
      ),
    })),
);

/** `5V1` as it is said: 5.1; `04` and `12.0` as they are meant: 4 and 12. */
const said = (figures: string): string => {
  const number = figures.replace('V', '.');
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

/**
 * What a mark is among the numbers that are known without figures, letters of makers before and of
 * packages after it aside. Never throws.
 */
export const knownNumber = (catalogue: Catalogue, text: string): KnownNumber | undefined => {
  const shapes = shapesOf(catalogue.devices.knownNumbers);
  for (const form of formsOf(catalogue, text)) {
    const seen = asSeen(form.number);
    for (const { row, number, shape } of shapes) {
      const match = shape.exec(seen);
      if (!match) continue;
      return {
        number: /[*#%@]/u.test(number) ? form.number : number,
        what: filled(row.what, match.slice(1)),
        near: row.near,
        look_out: row.look_out,
        letters: form.letters,
      };
    }
  }
  return undefined;
};
