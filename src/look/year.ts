import { exactly, type Range } from '../engine/index.ts';

/** A year that was understood, or a sentence about what is wrong. */
export type ReadYear = { value: Range } | { message: string };

const DECADE = 10;
const HUNDRED = 100;
/** A decade written in two figures is of the century in which nearly all old parts were made. */
const CENTURY = 1900;

const ASK = 'Please write a year such as 1968, 1960s or 1958–1964.';

/** First and last year of a part of a decade, from its start. */
const PARTS: Readonly<Record<string, [number, number]>> = {
  early: [0, 3],
  mid: [3, 6],
  late: [6, DECADE - 1],
};

const decade = (text: string): Range | undefined => {
  const match = /^(early|mid|late)?[\s-]*['’]?(\d{3}0|\d0)['’]?s$/u.exec(text);
  if (match === null) return undefined;
  const [, part = '', figures = ''] = match;
  const start = Number(figures) + (figures.length === 2 ? CENTURY : 0);
  const [from, to] = PARTS[part] ?? [0, DECADE - 1];
  return { min: start + from, typ: start + (from + to) / 2, max: start + to };
};

/** @param since the year that a shortened one follows: `64` in 1958–64, `02` in 1998–02 */
const oneYear = (text: string, since?: Range): Range | undefined => {
  const figures = /^(?:\d{4}|\d{2})$/u.exec(text)?.[0];
  if (figures === undefined) return decade(text);
  if (figures.length > 2) return exactly(Number(figures));
  if (since === undefined) return undefined;
  const year = Number(figures) + Math.floor(since.min / HUNDRED) * HUNDRED;
  return exactly(year < since.min ? year + HUNDRED : year);
};

/**
 * When something was made, as people write it: `1968`, `about 1968`, `1960s`, `late 60s`,
 * `1958–1964`.
 *
 * @param lowest first year that is taken
 * @param highest last year that is taken
 */
export const readYear = (text: string, lowest: number, highest: number): ReadYear => {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/^(?:about|around|circa|c\.|ca\.?|~|≈)\s*/u, '');
  const [from = '', to, ...more] = plain.split(/\s*(?:–|—|\.{2,3}|\bto\b|(?<=[\ds]\s?)-)\s*/u);
  const first = oneYear(from);
  const last = to === undefined ? first : oneYear(to, first);
  if (first === undefined || last === undefined || more.length > 0) return { message: ASK };
  const [min, max] = [Math.min(first.min, last.min), Math.max(first.max, last.max)];
  return min < lowest || max > highest
    ? { message: `Please give a year from ${lowest} to ${highest}.` }
    : { value: { min, typ: to === undefined ? first.typ : (min + max) / 2, max } };
};
