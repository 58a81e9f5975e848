import { DESIGNATOR_LETTERS } from './designator-letters.generated.ts';

/** What a list of designators stands for, and what in it could not be followed. */
export interface Designators {
  /** Each once, in the order typed. */
  list: string[];
  /** One sentence each. */
  faults: string[];
}

/** Most designators that one range stands for. */
const LONGEST_RANGE = 1000;
/** Most designators of one line. */
const MOST = 20_000;

const NAME = /^(?=.*\d)\p{L}[\p{L}\d]*$/u;
const RANGE = /^([\p{L}\d]*?\p{L})?(\d+)-([\p{L}\d]*?\p{L})?(\d+)$/u;
const NUMBERED = /^([\p{L}\d]*?\p{L})(\d+)$/u;

/** Letters that a blank, or in older lists a dash, sets apart from their number, as in `C 1` and `CR-101`. */
const SET_APART = /(?<![\p{L}\d])(\p{L}+)(?:\s+|-)(?=\d)/gu;

/** Every way of writing a range becomes a hyphen, and letters join the number that follows them. */
const tidy = (text: string): string =>
  text
    .replaceAll(SET_APART, (whole, letters: string) =>
      letters.toLowerCase() === 'to' ? whole : letters,
    )
    .replaceAll(/\s*&\s*/gu, ',')
    .replaceAll(/\s*(?:[-‐‑‒–—−…]|\.{2,3}|\bto\b)\s*/giu, '-');

const rangeOf = (item: string, before: string): Designators | undefined => {
  const [, letters = before, from, again = letters, to] = RANGE.exec(item) ?? [];
  if (from === undefined || to === undefined || letters === '') return undefined;
  if (letters.toLowerCase() !== again.toLowerCase())
    return { list: [], faults: [`“${item}” runs between two kinds of part; name each by itself.`] };
  const length = Number(to) - Number(from) + 1;
  if (length < 1)
    return { list: [], faults: [`“${item}” runs backwards; write the lower number first.`] };
  if (length > LONGEST_RANGE)
    return {
      list: [],
      faults: [`“${item}” stands for more than 1,000 parts; write it in pieces.`],
    };
  const width = from.startsWith('0') ? from.length : 0;
  const numbers = Array.from({ length }, (_, step) => String(Number(from) + step));
  return { list: numbers.map((number) => letters + number.padStart(width, '0')), faults: [] };
};

/** A number that the letters before it are left out of; letters of units are no part of one. */
const BARE = /^\d+[A-EGHJ]?$/iu;

const itemOf = (item: string, before: string): Designators => {
  const name = BARE.test(item) ? before + item : item;
  if (NAME.test(name)) return { list: [name], faults: [] };
  return (
    rangeOf(item, before) ?? {
      list: [],
      faults: [`“${item}” is not a designator such as C1, nor a range such as C1-C16.`],
    }
  );
};

/**
 * What `C1-C16, C22` stands for: `C1-16`, `C1…C16`, `C1 to C16` and `C1, 2, 3` are understood, with
 * commas, semicolons or spaces between. A range of more than 1,000 is refused. Never throws.
 */
export const expandDesignators = (text: string): Designators => {
  if (NAME.test(text)) return { list: [text], faults: [] };
  const list = new Set<string>();
  const twice = new Set<string>();
  const faults: string[] = [];
  let before = '';
  for (const item of tidy(text).split(/[,;\s]+/u)) {
    if (item === '') continue;
    const found = itemOf(item, before);
    faults.push(...found.faults);
    for (const name of found.list) (list.has(name) ? twice : list).add(name);
    before = NUMBERED.exec(found.list.at(-1) ?? '')?.[1] ?? before;
    if (list.size > MOST) {
      faults.push('A line holds at most 20,000 designators; the rest is left out.');
      break;
    }
  }
  if (twice.size > 0) faults.push(`Named more than once: ${shortenDesignators([...twice])}.`);
  return { list: [...list].slice(0, MOST), faults };
};

const numbered = (name: string): { letters: string; number: number } | undefined => {
  const [, letters, digits] = NUMBERED.exec(name) ?? [];
  const number = Number(digits);
  const isPlain = String(number) === digits;
  return letters === undefined || !isPlain ? undefined : { letters, number };
};

const follows = (name: string, last: string): boolean => {
  const [a, b] = [numbered(last), numbered(name)];
  return a !== undefined && b !== undefined && a.letters === b.letters && a.number + 1 === b.number;
};

/** The same list as people write it, three in a row or more as a range; the order stays. */
export const shortenDesignators = (list: readonly string[]): string => {
  const runs: string[][] = [];
  for (const name of list) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    const joins = last !== undefined && follows(name, last);
    if (run !== undefined && joins && run.length < LONGEST_RANGE) run.push(name);
    else runs.push([name]);
  }
  return runs
    .flatMap((run) => (run.length < 3 ? run : [`${run[0] ?? ''}-${run.at(-1) ?? ''}`]))
    .join(', ');
};

/** Lists are cut before any table is fetched, so this is a module that is written from the table. */
const LETTERS: ReadonlySet<string> = new Set(DESIGNATOR_LETTERS.split(' '));

const TWO_LETTERS_AND_THREE_FIGURES = /^([A-Z]{2,3})\d{3}/iu;
const TWO_LETTERS_AND_DASH = /^([A-Z]{2,3})-\d/iu;

/** Whether a name such as `TL072` or `BC109` is rather a type number than a designator such as `IC101`. */
export const isRatherTypeNumber = (name: string): boolean => {
  const [, letters] =
    TWO_LETTERS_AND_THREE_FIGURES.exec(name.trim()) ?? TWO_LETTERS_AND_DASH.exec(name.trim()) ?? [];
  return letters !== undefined && !LETTERS.has(letters.toUpperCase());
};
