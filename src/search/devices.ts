import type { Catalogue } from '../engine/index.ts';
import type { AffixRow, DeviceRow, KnownNumberRow } from '../schemas/devices.ts';
import { asSeen, plain, printedForms } from './printed-forms.ts';
import { remembered } from './remembered.ts';

/** Every number that a device goes by. */
const numbersOf = remembered(({ name, also }: DeviceRow): string[] => [name, ...also].map(plain));

/** The devices of the tables by every number that they go by, as it is seen. */
const byNumber = remembered((devices: readonly DeviceRow[]) => {
  const found = new Map<string, DeviceRow[]>();
  for (const device of devices)
    for (const number of new Set(numbersOf(device).map(asSeen)))
      found.set(number, [...(found.get(number) ?? []), device]);
  return found;
});

/** Numbers that are known without a page, as they are seen. */
const numbersKnown = remembered(
  (rows: readonly KnownNumberRow[]) =>
    new Set(rows.flatMap(({ number, also }) => [number, ...also]).map(asSeen)),
);

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
  texts.filter((word) => /\d/u.test(word));

/** Devices that a text calls by their number, and the letters round it. */
export interface Called {
  devices: DeviceRow[];
  letters: AffixRow[];
}

/** The devices of the first form of a printed number that is the number of any. */
const calledByForm = (catalogue: Catalogue, word: string): Called => {
  const devices = byNumber(catalogue.devices.devices);
  const known = numbersKnown(catalogue.devices.knownNumbers);
  for (const { number, letters } of printedForms(catalogue, word)) {
    const found = devices.get(asSeen(number));
    if (found !== undefined) return { devices: found, letters };
    // More of the number is that of a part without a page.
    if (known.has(asSeen(number))) break;
  }
  return { devices: [], letters: [] };
};

/** Devices that a text calls by their number, letters of makers before and of packages after it aside. */
export const calledIn = (catalogue: Catalogue, texts: readonly string[]): Called => {
  const { devices } = catalogue.devices;
  const exact = new Set(texts.flatMap((text) => byNumber(devices).get(asSeen(plain(text))) ?? []));
  if (exact.size > 0)
    return { devices: devices.filter((device) => exact.has(device)), letters: [] };
  const called = tellingWords(texts).map((word) => calledByForm(catalogue, word));
  const found = new Set(called.flatMap((one) => one.devices));
  return {
    devices: devices.filter((device) => found.has(device)),
    letters: called.find((one) => one.devices.length > 0)?.letters ?? [],
  };
};

/** The same without the letters. */
export const devicesCalled = (catalogue: Catalogue, texts: readonly string[]): DeviceRow[] =>
  calledIn(catalogue, texts).devices;

const SHORTEST = 3;

/** What stands for a character that is worn away. */
const WORN = '?';

/** Whether a number is what is left of it, character by character. */
const isLeftOf = (worn: string, number: string): boolean =>
  worn.length === number.length &&
  [...worn].every((character, at) => character === WORN || character === number[at]);

/** Characters of a number that must be left where letters before or behind it are left as well. */
const SHORTEST_AMONG_LETTERS = 2;

const leftOf = (word: string): number => word.replaceAll(WORN, '').length;

/** Devices whose number a word with worn characters may be, where enough of it is left. */
export const devicesWorn = (catalogue: Catalogue, texts: readonly string[]): DeviceRow[] => {
  const forms = tellingWords(texts)
    .filter((word) => word.includes(WORN))
    .flatMap((word) =>
      printedForms(catalogue, word)
        .map(({ number }) => number)
        .filter(
          (number) =>
            leftOf(number) >= SHORTEST ||
            (leftOf(word) > SHORTEST && leftOf(number) >= SHORTEST_AMONG_LETTERS),
        ),
    );
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
  const words = tellingWords(texts).map(plain);
  const whose = (least: number, isLike: (number: string, word: string) => boolean) => {
    const long = words.filter((word) => word.length >= least);
    return catalogue.devices.devices.filter((device) =>
      numbersOf(device).some((number) => long.some((word) => isLike(number, word))),
    );
  };
  const begun = whose(SHORTEST, (number, word) => number.startsWith(word));
  return begun.length > 0 ? begun : whose(SHORTEST_END, (number, word) => number.endsWith(word));
};
