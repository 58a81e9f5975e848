import type { Catalogue, Reading } from '../engine/index.ts';
import type { AffixRow, DeviceRow, NumberSystemRow } from '../schemas/devices.ts';
import { calledIn, devicesCalled } from './devices.ts';
import { guessedNumber } from './guessed-number.ts';
import { knownNumber, type KnownNumber } from './known-numbers.ts';
import { numbersIn, type NumberIn } from './numbers-in.ts';
import { inOneScript } from './one-script.ts';
import { asSeen, plain, printedForms } from './printed-forms.ts';
import { remembered } from './remembered.ts';

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
  /** What is printed round the number and is no part of it. */
  letters: readonly AffixRow[];
  /** Other words of the mark, with what they may be. */
  beside: NumberIn['beside'];
  /** Whether it is no number as it stands: letters before it are not known, or some of it is worn. */
  guessed: boolean;
  /** Whether a reading as a capacitor or resistor is unlikely beside it. */
  sure: boolean;
}

/** What a part of a mark is, whatever else it may be read as. */
type What = Omit<TypeNumber, 'sure'>;

/** Letters that may follow where a row says that any may, or one with a figure: the H2 of UPC1252H2. */
const ANY_LETTERS = String.raw`(?:[A-Z]\d|[A-Z]{0,5})`;

/** What follows letters that tell the sort of a chip: `708` of УД708, `3А` of ЛА3А. */
const VARIANT = String.raw`\d{1,3}\p{L}?`;

/** What follows the digits of a number. */
const endOf = (ends: readonly string[]): string => {
  if (ends.includes('*')) return ANY_LETTERS;
  const one = `(?:${ends.map(asSeen).join('|').replaceAll('%', VARIANT)})`;
  return ends.some((end) => end.includes('%')) ? one : `${one}?`;
};

/** The form of the numbers of a register, as they are seen. */
const shapeOf = remembered(({ starts, fewest, most, ends }: NumberSystemRow) => {
  const beginning = asSeen(starts).replaceAll('*', '[A-Z]');
  const letters = endOf(ends);
  return new RegExp(String.raw`^${beginning}\d{${fewest},${most}}${letters}$`, 'u');
});

/** Whether a mark has the form of the numbers of a register. */
const isOf = (row: NumberSystemRow, mark: string): boolean => shapeOf(row).test(asSeen(mark));

/** A number in one word, or with a gap behind its first letters: `BC 999`. */
const ONE_NUMBER = /^(?:\S+|\d?[A-Z]+\s\S+)$/iu;

/** A number without the figures behind a dash, which are a grade or a voltage: `BT138-600`. */
const ungraded = (number: string): string => number.replace(/-\d+$/u, '');

/** Beginnings of fewer characters are of values too: `1n33K` is no diode with a letter of a package. */
const LONG_BEGINNING = 3;

/** The register that a mark is of, as it stands or, by a long beginning, without letters round it. */
const systemOf = (catalogue: Catalogue, number: string): NumberSystemRow | undefined => {
  if (!ONE_NUMBER.test(number)) return undefined;
  const rows = catalogue.devices.numberSystems;
  const bare = [plain(number), plain(ungraded(number))];
  const own = rows.find((row) => bare.some((one) => isOf(row, one)));
  if (own !== undefined) return own;
  // Behind letters such as JANTX a short beginning is none of a value either.
  const forms = printedForms(catalogue, number);
  return rows.find((row) =>
    forms.some(
      (form) =>
        (row.starts.length >= LONG_BEGINNING ||
          form.letters.some(({ text }) => text.length >= LONG_BEGINNING)) &&
        isOf(row, form.number),
    ),
  );
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

/** What one part of a mark is, apart from how sure it is. */
const whatIs = (catalogue: Catalogue, { number, beside }: NumberIn): What | undefined => {
  const { devices, letters } = calledIn(catalogue, [number]);
  const systems = catalogue.devices.numberSystems;
  const bare = plain(number);
  const system = systemOf(catalogue, number);
  const whole = wholeOf(systems, bare);
  const shortened = whole
    .flatMap((one) => devicesCalled(catalogue, [one]))
    .filter((device) => !devices.includes(device));
  // A device of the tables says more of itself than a line about its number.
  const known = devices.length > 0 ? [] : knownOf(catalogue, [number, ungraded(number), ...whole]);
  if (devices.length + shortened.length + known.length === 0 && !system) return undefined;
  return {
    devices,
    shortened,
    known,
    letters: devices.length > 0 ? letters : (known[0]?.letters ?? []),
    beside,
    guessed: false,
    ...(system ? { system } : {}),
  };
};

/** Whether more is known than the form of the number. */
export const isKnown = ({ devices, shortened, known }: What): boolean =>
  devices.length + shortened.length + known.length > 0;

/** What a mark may be where it is no number as it stands. */
const guessIn = (catalogue: Catalogue, mark: string): What | undefined => {
  const guess = guessedNumber(catalogue, mark);
  return guess === undefined ? undefined : { ...guess, shortened: [], guessed: true };
};

const CYRILLIC = /^\p{Script=Cyrillic}/u;

/** Whether a number has the form of a register in Cyrillic letters, which no code of a value has. */
const isOfCyrillicRegister = ({ system }: What): boolean =>
  system !== undefined && CYRILLIC.test(system.starts);

/** Figures alone, or with one letter behind them, may as well be a code for a value: `4021F`. */
const VALUE_TOO = /^\d+[A-Z]?$/u;

/**
 * What a mark is as a type number of the trade, or nothing. It must be the whole mark, but for what
 * is printed beside numbers: a device that is named beside a value says nothing about the value.
 * Letters that belong to a device make a reading as a value poor, so one that is poor is unlikely
 * beside a device that is known.
 * @param readings of the mark as a capacitor or resistor, the best first
 */
export const typeNumberIn = (
  catalogue: Catalogue,
  mark: string,
  readings: readonly Reading[],
): TypeNumber | undefined => {
  const parts = inOneScript(mark).flatMap((one) => numbersIn(catalogue, one));
  const found = parts.flatMap((part) => whatIs(catalogue, part) ?? []);
  const what = found.find(isKnown) ?? found[0] ?? guessIn(catalogue, mark);
  if (what === undefined) return undefined;
  const [best] = readings;
  // A reading that leaves letters over, or takes some for others, is poor beside a number that has them all.
  const poor =
    best === undefined ||
    best.sure === 'possible' ||
    best.notUnderstood.length > 0 ||
    best.evidence.some(({ assumed }) => assumed !== undefined);
  const telling =
    what.devices.length > 0 ||
    isOfCyrillicRegister(what) ||
    (what.known.length > 0 && !VALUE_TOO.test(plain(mark)));
  return { ...what, sure: telling && poor && !what.guessed };
};
