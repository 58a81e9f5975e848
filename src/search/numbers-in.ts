import type { Catalogue } from '../engine/index.ts';
import type { BesideWordRow } from '../schemas/devices.ts';
import { remembered } from './remembered.ts';

/** A part of a mark that may be a type number, and what the other words of the mark are. */
export interface NumberIn {
  number: string;
  beside: readonly { text: string; meaning: string }[];
}

/** Words that one number may be printed in: `CD 4066`. */
const MOST_WORDS = 2;

/** Letters and at least two figures: figures alone are a value as well. */
const TELLS = /^(?=.*[A-Z])(?=.*\d.*\d)/iu;

/** Four digits beside a type number are most likely a year and a week. */
const DATE = /^\d{4}$/u;

const shapesOf = remembered((rows: readonly BesideWordRow[]) =>
  rows.map((row) => ({
    row,
    shape: new RegExp(
      `^${row.form.replaceAll('A', '[A-Z]').replaceAll('9', String.raw`\d`)}$`,
      'iu',
    ),
  })),
);

/**
 * The parts of a mark that may be a type number: the whole, else one or two words of it where all
 * others are such as stand beside a number and say nothing of a value.
 */
export const numbersIn = ({ devices }: Catalogue, mark: string): NumberIn[] => {
  const words = mark.trim().split(/\s+/u);
  const shapes = shapesOf(devices.besideWords);
  const meaningOf = (word: string): string | undefined =>
    shapes.find(({ shape }) => shape.test(word))?.row.meaning;
  const runs = words.flatMap((_, from) =>
    Array.from({ length: MOST_WORDS }, (_, more) => ({ from, to: from + more + 1 })),
  );
  const parts = runs
    .filter(({ from, to }) => to <= words.length && to - from < words.length)
    .flatMap(({ from, to }): NumberIn[] => {
      const number = words.slice(from, to).join(' ');
      const rest = [...words.slice(0, from), ...words.slice(to)];
      const beside = rest.flatMap((text) => {
        const meaning = meaningOf(text);
        return meaning === undefined ? [] : [{ text, meaning }];
      });
      const isAlone = beside.length === rest.length && TELLS.test(number);
      const isDated = from === 0 && to === 1 && rest.every((word) => DATE.test(word));
      return isAlone || isDated ? [{ number, beside }] : [];
    });
  return [{ number: mark.trim(), beside: [] }, ...parts];
};
