import type { Catalogue } from '../engine/index.ts';
import type { KnownNumberRow } from '../schemas/devices.ts';
import { printedForms } from './devices.ts';
import { remembered } from './remembered.ts';

/** A number without a page, with the voltage of the mark put into its words. */
export interface KnownNumber {
  number: string;
  what: string;
  near: readonly string[];
  look_out: string;
}

/** Letters of a family in the middle of a number: `7474` is printed `74LS74` too. */
const LETTERS = '[A-Z]{0,4}';

/** A voltage with the letter of its tolerance before it: `C5V1`, `12`, `5.1`. */
const VOLTS = String.raw`[A-E]?(\d{1,3}(?:[V.]\d)?)`;

/** What a number looks like in print, and whose it is; the most telling first. */
const shapesOf = remembered((rows: readonly KnownNumberRow[]) =>
  rows
    .flatMap((row) => [row.number, ...row.also].map((number) => ({ row, number })))
    .map(({ row, number }) => ({
      row,
      number,
      shape: new RegExp(`^${number.replace('*', LETTERS).replace('#', VOLTS)}$`, 'u'),
    })),
);

/** `5V1` as it is said: 5.1. */
const said = (volts: string): string => volts.replace('V', '.');

/**
 * What a mark is among the numbers that are known without figures, letters of makers before and of
 * packages after it aside. Never throws.
 */
export const knownNumber = (catalogue: Catalogue, text: string): KnownNumber | undefined => {
  const shapes = shapesOf(catalogue.devices.knownNumbers);
  // A point belongs to a voltage, though it is no part of a number.
  const printed = text.toUpperCase().replace(/[\s\-/]/gu, '');
  const forms = printed.includes('.') ? [printed] : printedForms(catalogue, printed);
  for (const form of forms)
    for (const { row, number, shape } of shapes) {
      const match = shape.exec(form);
      if (!match) continue;
      const volts = said(match[1] ?? '');
      return {
        number: /[*#]/u.test(number) ? form : number,
        what: row.what.replace('#', volts),
        near: row.near,
        look_out: row.look_out,
      };
    }
  return undefined;
};
