import type { Catalogue } from '../engine/index.ts';
import type { AffixRow, DeviceRow } from '../schemas/devices.ts';
import { calledIn, devicesWorn } from './devices.ts';
import { knownNumber, type KnownNumber } from './known-numbers.ts';
import type { NumberIn } from './numbers-in.ts';
import { plain } from './printed-forms.ts';

/** What a mark may be where it is no number as it stands. */
export interface GuessedNumber {
  devices: DeviceRow[];
  known: KnownNumber[];
  letters: readonly AffixRow[];
  beside: NumberIn['beside'];
}

/** Letters before the figures of a number. */
const LETTERS_AND_REST = /^([A-Z]{1,4})(\d{3,}.*)$/u;

/** Figures that are a number whatever stands before them. */
const FOUR_FIGURES = /^\d{4}/u;

/** More devices than this are too many to tell anything. */
const MOST_WORN = 8;

const MEANING = 'letters that are not known here, or what is left of others';

/** Whether letters may be what is left of those of a maker, and the rest has letters of a package. */
const isWornStart = ({ devices }: Catalogue, letters: string, rest: string): boolean =>
  /[A-Z]$/u.test(rest) &&
  devices.affixes.some(({ place, text }) => place === 'before' && text.endsWith(letters));

/**
 * What a mark may be once letters before it that nobody knows are left aside, or with characters of
 * it worn away; nothing where it may be nothing or too much.
 */
export const guessedNumber = (catalogue: Catalogue, mark: string): GuessedNumber | undefined => {
  const worn = devicesWorn(catalogue, [mark, ...mark.split(/\s+/u)]);
  if (worn.length > 0)
    return worn.length > MOST_WORN
      ? undefined
      : { devices: worn, known: [], letters: [], beside: [] };
  const [, before = '', rest = ''] = LETTERS_AND_REST.exec(plain(mark)) ?? [];
  if (!FOUR_FIGURES.test(rest) && !isWornStart(catalogue, before, rest)) return undefined;
  const { devices, letters } = calledIn(catalogue, [rest]);
  const one = devices.length > 0 ? undefined : knownNumber(catalogue, rest);
  if (devices.length === 0 && one === undefined) return undefined;
  return {
    devices,
    known: one === undefined ? [] : [one],
    letters: one?.letters ?? letters,
    beside: [{ text: before, meaning: MEANING }],
  };
};
