import type { Catalogue } from '../engine/index.ts';
import type { DeviceRow } from '../schemas/devices.ts';

const plain = (text: string): string => text.toUpperCase().replace(/[\s\-./]/gu, '');

/** Every number that a device goes by. */
const numbersOf = (device: DeviceRow): string[] => [device.name, ...device.also].map(plain);

/** What is left of a printed number when letters before and after it are taken off. */
const bareForms = (catalogue: Catalogue, text: string): string[] => {
  const { affixes } = catalogue.devices;
  const before = affixes.filter(({ place }) => place === 'before').map((row) => row.text);
  const after = affixes.filter(({ place }) => place === 'after').map((row) => row.text);
  const heads = [
    text,
    ...before.filter((one) => text.startsWith(one)).map((one) => text.slice(one.length)),
  ];
  return heads.flatMap((head) => [
    head,
    ...after.filter((one) => head.endsWith(one)).map((one) => head.slice(0, -one.length)),
  ]);
};

/** A number without a digit in it names nothing. */
const SHORTEST = 3;

/**
 * Devices whose type number a text is, as printed too: letters of makers before it and of packages
 * after it are taken off. Those that are so called come before those that begin so.
 */
export const findDevices = (catalogue: Catalogue, text: string): DeviceRow[] => {
  const { devices } = catalogue.devices;
  const words = [text, ...text.split(/\s+/u)].map(plain).filter((word) => /\d/u.test(word));
  const exact = devices.filter((device) => words.some((word) => numbersOf(device).includes(word)));
  if (exact.length > 0) return exact;
  const bare = words.flatMap((word) => bareForms(catalogue, word)).filter((word) => word !== '');
  const called = devices.filter((device) => bare.some((word) => numbersOf(device).includes(word)));
  if (called.length > 0) return called;
  return devices.filter((device) =>
    words.some(
      (word) =>
        word.length >= SHORTEST && numbersOf(device).some((number) => number.startsWith(word)),
    ),
  );
};
