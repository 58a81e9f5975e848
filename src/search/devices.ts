import type { Catalogue } from '../engine/index.ts';
import type { AffixRow, DeviceRow } from '../schemas/devices.ts';
import { remembered } from './remembered.ts';

const plain = (text: string): string => text.toUpperCase().replace(/[\s\-./]/gu, '');

/** Every number that a device goes by. */
const numbersOf = remembered(({ name, also }: DeviceRow): string[] => [name, ...also].map(plain));

const affixesAt = (catalogue: Catalogue, place: AffixRow['place']): string[] =>
  catalogue.devices.affixes.filter((row) => row.place === place).map((row) => row.text);

/**
 * What is left of a printed number when letters before and after it are taken off, the most of it
 * first: a letter that belongs to a number comes before the same letter as a grade.
 */
const bareForms = (catalogue: Catalogue, text: string): string[] => {
  const after = affixesAt(catalogue, 'after');
  const cut = (head: string): string[] =>
    after.filter((one) => head.endsWith(one)).map((one) => head.slice(0, -one.length));
  const heads = [
    text,
    ...affixesAt(catalogue, 'before')
      .filter((one) => text.startsWith(one))
      .map((one) => text.slice(one.length)),
  ];
  // A grade may stand before the package, and the package before the tape.
  return heads
    .flatMap((head) => [head, ...cut(head), ...cut(head).flatMap(cut)])
    .toSorted((a, b) => b.length - a.length);
};

/** A printed number as the tables write it, and what may be left of it without letters round it. */
export const printedForms = (catalogue: Catalogue, text: string): string[] =>
  bareForms(catalogue, plain(text));

/** Words of a name that stand beside each other, at most. */
const MOST_WORDS = 3;

/** A text, and all runs of its words that may be a name: `0.1 inch header, 6 way` holds one. */
export const runsOf = (text: string): string[] => {
  const words = text.split(/\s+/u);
  const runs = words.flatMap((_, from) =>
    Array.from({ length: MOST_WORDS }, (_, more) => words.slice(from, from + more + 1).join(' ')),
  );
  return [...new Set([text, ...runs])];
};

/** A number without a digit in it names nothing. */
const tellingWords = (texts: readonly string[]): string[] =>
  texts.map(plain).filter((word) => /\d/u.test(word));

/** Devices that are called so, letters of makers before and of packages after the number aside. */
export const devicesCalled = (catalogue: Catalogue, texts: readonly string[]): DeviceRow[] => {
  const { devices } = catalogue.devices;
  const named = (word: string) => devices.filter((device) => numbersOf(device).includes(word));
  const exact = new Set(texts.map(plain).flatMap(named));
  if (exact.size > 0) return devices.filter((device) => exact.has(device));
  const bare = tellingWords(texts).map(
    (word) =>
      bareForms(catalogue, word)
        .map(named)
        .find((found) => found.length > 0) ?? [],
  );
  const found = new Set(bare.flat());
  return devices.filter((device) => found.has(device));
};

const SHORTEST = 3;

/** What stands for a character that is worn away. */
const WORN = '?';

/** Whether a number is what is left of it, character by character. */
const isLeftOf = (worn: string, number: string): boolean =>
  worn.length === number.length &&
  [...worn].every((character, at) => character === WORN || character === number[at]);

/** Devices whose number a word with worn characters may be, where enough of it is left. */
const devicesWorn = (catalogue: Catalogue, texts: readonly string[]): DeviceRow[] => {
  const forms = tellingWords(texts)
    .filter((word) => word.includes(WORN))
    .flatMap((word) => bareForms(catalogue, word))
    .filter((word) => word.replaceAll(WORN, '').length >= SHORTEST);
  return catalogue.devices.devices.filter((device) =>
    numbersOf(device).some((number) => forms.some((form) => isLeftOf(form, number))),
  );
};

/** Shortest end of a number that says enough: `4007` is left where the first line is worn away. */
const SHORTEST_END = 4;

/**
 * Devices whose number a text may be: with worn characters, else those that begin so, else those that
 * end so. Nothing where the text calls a device by its whole number.
 */
export const devicesLike = (catalogue: Catalogue, text: string): DeviceRow[] => {
  const texts = [text, ...text.split(/\s+/u)];
  const worn = devicesWorn(catalogue, texts);
  if (worn.length > 0) return worn;
  const words = tellingWords(texts);
  const whose = (least: number, isLike: (number: string, word: string) => boolean) => {
    const long = words.filter((word) => word.length >= least);
    return catalogue.devices.devices.filter((device) =>
      numbersOf(device).some((number) => long.some((word) => isLike(number, word))),
    );
  };
  const begun = whose(SHORTEST, (number, word) => number.startsWith(word));
  return begun.length > 0 ? begun : whose(SHORTEST_END, (number, word) => number.endsWith(word));
};
