import type { Catalogue, Reading } from '../engine/index.ts';
import type { DeviceRow, NumberSystemRow } from '../schemas/devices.ts';
import { devicesCalled } from './devices.ts';

/** What a whole mark is as a type number. */
export interface TypeNumber {
  /** Devices that are called so; none where only the form of the mark says what it is. */
  devices: DeviceRow[];
  /** The register whose numbers have this form. */
  system?: NumberSystemRow;
  /** Whether a reading as a capacitor or resistor is unlikely beside it. */
  sure: boolean;
}

/** Four digits beside a type number are most likely a year and a week. */
const DATE = /^\d{4}$/u;

/** The mark with nothing but a date beside it, or nothing if it says more than one thing. */
const numberOf = (mark: string): string | undefined => {
  const [first = '', ...rest] = mark.trim().split(/\s+/u);
  return rest.every((word) => DATE.test(word)) ? first : undefined;
};

/** Whether a mark has the form of the numbers of a register. */
const isOf = ({ starts, fewest, most, ends }: NumberSystemRow, mark: string): boolean => {
  if (!mark.startsWith(starts)) return false;
  const [, digits = '', letters = ''] = /^(\d*)(\D*)$/u.exec(mark.slice(starts.length)) ?? [];
  if (digits.length < fewest || digits.length > most) return false;
  return letters === '' || ends.includes(letters);
};

/**
 * What a mark is as a type number of the trade, or nothing. It must be the whole mark: a device that
 * is named beside a value says nothing about the value. Letters that belong to a device make a
 * reading as a value poor, so one that is poor is unlikely beside a device that is known.
 * @param readings of the mark as a capacitor or resistor, the best first
 */
export const typeNumberIn = (
  catalogue: Catalogue,
  mark: string,
  readings: readonly Reading[],
): TypeNumber | undefined => {
  const number = numberOf(mark);
  const devices = devicesCalled(catalogue, number === undefined ? [mark] : [mark, number]);
  const systems = catalogue.devices.numberSystems;
  const system = number && systems.find((row) => isOf(row, number.toUpperCase()));
  if (devices.length === 0 && !system) return undefined;
  const best = readings[0]?.sure;
  return {
    devices,
    sure: devices.length > 0 && (best === undefined || best === 'possible'),
    ...(system ? { system } : {}),
  };
};
