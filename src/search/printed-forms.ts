import type { Catalogue } from '../engine/index.ts';
import type { AffixRow } from '../schemas/devices.ts';

/** What may be the number in a printed mark, and the letters round it that are no part of it. */
export interface PrintedForm {
  number: string;
  letters: AffixRow[];
}

/** A number in capitals, without what people put into it for the eye. */
export const plain = (text: string): string =>
  // A small L between figures is a one: as a capital it would be a letter for good.
  text
    .replaceAll(/(?<=\d)l(?=\d)/gu, '1')
    // The micro sign of makers is written as a U.
    .replaceAll(/[\u00b5\u03bc]/gu, 'U')
    .toUpperCase()
    .replaceAll(/[\s\-./]/gu, '');

/** A number as eyes that take O for 0 and I for 1 see it: two that look alike become one. */
export const asSeen = (number: string): string => number.replaceAll('O', '0').replaceAll('I', '1');

/** Letters of a maker before the figures of a number. */
const LETTERS_BEFORE = /^[A-Z]+(?=\d)/u;

const beginsSo = (number: string, { numbers }: AffixRow): boolean =>
  numbers.length === 0 || numbers.some((beginning) => number.startsWith(beginning));

/** Without one run of letters before it, and with what they stand for in their place. */
const cutBefore = (rows: readonly AffixRow[], { number, letters }: PrintedForm): PrintedForm[] =>
  rows
    .filter(({ place, text }) => place === 'before' && number.startsWith(text))
    .map((row) => ({ row, rest: row.stands_for + number.slice(row.text.length) }))
    .filter(({ row, rest }) => beginsSo(rest, row))
    .map(({ row, rest }) => ({ number: rest, letters: [...letters, row] }));

/** Without one run of letters after it, and also with what they stand for in their place. */
const cutAfter = (rows: readonly AffixRow[], { number, letters }: PrintedForm): PrintedForm[] =>
  rows
    .filter(({ place, text }) => place === 'after' && number.endsWith(text))
    .map((row) => ({ row, rest: number.slice(0, -row.text.length) }))
    .filter(({ row, rest }) => beginsSo(rest.replace(LETTERS_BEFORE, ''), row))
    .flatMap(({ row, rest }) =>
      (row.stands_for === '' ? [rest] : [rest + row.stands_for, rest]).map((one) => ({
        number: one,
        letters: [...letters, row],
      })),
    );

/** A form, and what is left of it when something is cut off once or twice. */
const upToTwice = (form: PrintedForm, cut: (form: PrintedForm) => PrintedForm[]): PrintedForm[] => {
  const once = cut(form);
  return [form, ...once, ...once.flatMap(cut)];
};

/**
 * A printed number as the tables write it, and what may be left of it without letters round it, the
 * most of it first: a letter that belongs to a number comes before the same letter as a grade.
 */
export const printedForms = (catalogue: Catalogue, text: string): PrintedForm[] => {
  const rows = catalogue.devices.affixes;
  // What stands behind a stroke is a packing, a finish or a second figure; of figures alone, a value.
  const [head = ''] = text.split('/');
  const texts = new Set([plain(text), ...(/[A-Z]/iu.test(head) ? [plain(head)] : [])]);
  return [...texts]
    .flatMap((number) =>
      // A grade may stand before the package, and the package before the tape.
      upToTwice({ number, letters: [] }, (form) => cutBefore(rows, form)).flatMap((form) =>
        upToTwice(form, (one) => cutAfter(rows, one)),
      ),
    )
    .toSorted((a, b) => b.number.length - a.number.length || a.letters.length - b.letters.length);
};
