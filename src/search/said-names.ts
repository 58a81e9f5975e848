import { remembered } from './remembered.ts';

/** What a row is called, besides its own name. */
export interface Called {
  name: string;
  short_name?: string;
  family?: string;
  also_called: readonly string[];
}

/** Fewest letters of a name that may stand among other words, so that `IF` and `RC` name nothing there. */
const FEWEST_LETTERS = 4;

/** The same of a name that is the whole text, as the `VCO` of a note. */
const FEWEST_OF_WHOLE = 2;

/** A word of a text, in lower case and without its plural ending, and where it stands. */
interface Word {
  word: string;
  from: number;
  to: number;
}

const wordsOf = (text: string): Word[] =>
  [...text.matchAll(/\p{L}[\p{L}-]*/gu)].map(({ 0: found, index }) => {
    const word = found.toLowerCase();
    const single = word.length > FEWEST_LETTERS ? word.replace(/(?<!s)s$/u, '') : word;
    return { word: single, from: index, to: index + found.length };
  });

const plainWords = (text: string): string[] => wordsOf(text).map(({ word }) => word);

/** Names without figures, as words; a name with figures, such as `100n`, is a mark as well. */
const namesOf = remembered(({ name, short_name = '', family = '', also_called }: Called) =>
  [name, short_name, family, ...also_called]
    .filter((text) => !/\d/u.test(text))
    .map(plainWords)
    .filter((words) => words.join('').length >= FEWEST_OF_WHOLE),
);

/** A name of a row that stands in a text as a whole, and where. */
interface Said<Row> {
  row: Row;
  letters: number;
  from: number;
  to: number;
}

const saidIn = <Row extends Called>(words: readonly Word[], row: Row): Said<Row>[] =>
  namesOf(row).flatMap((name) => {
    if (name.join('').length < FEWEST_LETTERS && name.length < words.length) return [];
    const at = words.findIndex((_, start) =>
      name.every((word, of) => words[start + of]?.word === word),
    );
    const [first, last] = [words[at], words[at + name.length - 1]];
    if (first === undefined || last === undefined) return [];
    return [{ row, letters: name.join('').length, from: first.from, to: last.to }];
  });

/** Names of rows that stand in a text, the longest first. */
const allSaid = <Row extends Called>(rows: readonly Row[], text: string): Said<Row>[] => {
  const words = wordsOf(text);
  return rows.flatMap((row) => saidIn(words, row)).toSorted((a, b) => b.letters - a.letters);
};

/**
 * The rows of which a text has a name as a whole, among words and figures that say something else: the
 * position in `10µ/63 emitter bypass`. Those with the longest name first.
 */
export const saidAmong = <Row extends Called>(rows: readonly Row[], text: string): Row[] => [
  ...new Set(allSaid(rows, text).map(({ row }) => row)),
];

/** The same, only those with the longest name that any has; those that more words name first. */
export const saidMost = <Row extends Called>(rows: readonly Row[], text: string): Row[] => {
  const all = allSaid(rows, text);
  const most = all.filter(({ letters }) => letters === all[0]?.letters);
  const often = (row: Row): number =>
    new Set(all.filter((one) => one.row === row).map(({ from }) => from)).size;
  return [...new Set(most.map(({ row }) => row))].toSorted((a, b) => often(b) - often(a));
};

/** A text without the longest name of a row that stands in it. */
export const withoutName = (rows: readonly Called[], text: string): string => {
  const [longest] = allSaid(rows, text);
  if (longest === undefined) return text;
  return `${text.slice(0, longest.from)} ${text.slice(longest.to)}`.replaceAll(/\s+/gu, ' ').trim();
};
