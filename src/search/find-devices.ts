import type { Catalogue } from '../engine/index.ts';
import type { DeviceRow } from '../schemas/devices.ts';
import { devicesCalled, devicesLike, runsOf } from './devices.ts';
import { tellingWords } from './names.ts';
import { remembered } from './remembered.ts';

/** Shortest word that says what a device is. */
const SHORTEST = 3;

/** Words of what each device is called and does, by the tables of devices. */
const wordsOfEach = remembered(({ devices, functions }: Catalogue['devices']) => {
  const does = new Map(functions.map(({ id, name }) => [id, name]));
  return devices.map((device) => {
    const called = [device.name, ...device.also, does.get(device.function) ?? ''];
    return { device, bag: new Set(tellingWords(called.join(' '))) };
  });
});

/** Devices that every word of a text names, by what they are called or by what they do. */
const devicesNamed = (catalogue: Catalogue, text: string): DeviceRow[] => {
  const words = tellingWords(text).filter((word) => word.length >= SHORTEST);
  if (words.length === 0) return [];
  return wordsOfEach(catalogue.devices).flatMap(({ device, bag }) =>
    words.every((word) => bag.has(word)) ? [device] : [],
  );
};

/**
 * Devices whose type number a text is, as printed too: letters of makers before it and of packages
 * after it are taken off, and characters may be worn. Those that are so called come before those
 * that begin so, and those before what is called so in words.
 */
export const findDevices = (catalogue: Catalogue, text: string): DeviceRow[] => {
  const called = devicesCalled(catalogue, runsOf(text));
  if (called.length > 0) return called;
  const like = devicesLike(catalogue, text);
  return like.length > 0 ? like : devicesNamed(catalogue, text);
};
