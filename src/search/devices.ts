import type { Catalogue } from '../engine/index.ts';
import type { AffixRow, DeviceRow } from '../schemas/devices.ts';

const plain = (text: string): string => text.toUpperCase().replace(/[\s\-./]/gu, '');

/** Every number that a device goes by. */
const numbersOf = (device: DeviceRow): string[] => [device.name, ...device.also].map(plain);

const affixesAt = (catalogue: Catalogue, place: AffixRow['place']): string[] =>
  catalogue.devices.affixes.filter((row) => row.place === place).map((row) => row.text);

/** What is left of a printed number when letters before and after it are taken off. */
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
  return heads.flatMap((head) => [head, ...cut(head), ...cut(head).flatMap(cut)]);
};

/** A number without a digit in it names nothing. */
const tellingWords = (texts: readonly string[]): string[] =>
  texts.map(plain).filter((word) => /\d/u.test(word));

/** Devices that are called so, letters of makers before and of packages after the number aside. */
export const devicesCalled = (catalogue: Catalogue, texts: readonly string[]): DeviceRow[] => {
  const { devices } = catalogue.devices;
  const words = tellingWords(texts);
  const exact = devices.filter((device) => words.some((word) => numbersOf(device).includes(word)));
  if (exact.length > 0) return exact;
  const bare = words.flatMap((word) => bareForms(catalogue, word)).filter((word) => word !== '');
  return devices.filter((device) => bare.some((word) => numbersOf(device).includes(word)));
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

/**
 * Devices whose number a text may be: with worn characters, else those that begin so. Nothing where
 * the text calls a device by its whole number.
 */
export const devicesLike = (catalogue: Catalogue, text: string): DeviceRow[] => {
  const texts = [text, ...text.split(/\s+/u)];
  const worn = devicesWorn(catalogue, texts);
  if (worn.length > 0) return worn;
  return catalogue.devices.devices.filter((device) =>
    tellingWords(texts).some(
      (word) =>
        word.length >= SHORTEST && numbersOf(device).some((number) => number.startsWith(word)),
    ),
  );
};
