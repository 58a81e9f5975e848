import type { Catalogue, Reading } from '../engine/index.ts';
import type { DeviceRow, NumberSystemRow } from '../schemas/devices.ts';
import { devicesCalled } from './devices.ts';
import { knownNumber, type KnownNumber } from './known-numbers.ts';

/** What a whole mark is as a type number. */
export interface TypeNumber {
  /** Devices that are called so; none where only the form of the mark says what it is. */
  devices: DeviceRow[];
  /** Devices that are called so once what small bodies leave off is put before it. */
  shortened: DeviceRow[];
  /** What is known of the number where no device here is called so. */
  known: KnownNumber[];
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

/** Fewest characters that may be what is left of a number: `914` is a code of a capacitor. */
const SHORTEST_LEFT = 4;

/** Numbers that a mark may be the rest of: 1N4007 and 2N4007 of `4007`, 2SC1815 of `C1815`. */
const wholeOf = (systems: readonly NumberSystemRow[], mark: string): string[] =>
  mark.length < SHORTEST_LEFT
    ? []
    : systems
        .filter((row) => row.left_off !== '' && isOf(row, row.left_off + mark))
        .map(({ left_off }) => left_off + mark);

/** What is known of a mark and of what it may be the rest of, each once. */
const knownOf = (catalogue: Catalogue, marks: readonly string[]): KnownNumber[] => {
  const known = marks.flatMap((mark) => knownNumber(catalogue, mark) ?? []);
  return known.filter(({ number }, at) => known.findIndex((one) => one.number === number) === at);
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
  const plain = number?.toUpperCase() ?? '';
  const system = systems.find((row) => isOf(row, plain));
  const whole = wholeOf(systems, plain);
  const shortened = whole
    .flatMap((one) => devicesCalled(catalogue, [one]))
    .filter((device) => !devices.includes(device));
  // A device of the tables says more of itself than a line about its number.
  const known = devices.length > 0 ? [] : knownOf(catalogue, [plain, ...whole]);
  if (devices.length + shortened.length + known.length === 0 && !system) return undefined;
  const [best] = readings;
  // A reading that leaves letters over is poor beside a number that takes them all.
  const poor = best === undefined || best.sure === 'possible' || best.notUnderstood.length > 0;
  // Digits alone may as well be a code for a value.
  const telling = devices.length > 0 || (known.length > 0 && /[A-Z]/u.test(plain));
  return {
    devices,
    shortened,
    known,
    sure: telling && poor,
    ...(system ? { system } : {}),
  };
};
