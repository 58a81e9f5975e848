import type { Basis, Catalogue, SourceId } from '../../engine/index.ts';
import { groupsOf } from '../../engine/colours/scheme.ts';
import { sayMeaning } from '../../engine/colours/say.ts';
import type { ColourRow } from './state.ts';

type Tables = Catalogue['markings'];
export type SchemeRow = Tables['colourSchemes'][number];
type MeaningRow = Tables['colourMeanings'][number];

/** What a role tells, as the head of a column. */
const ROLE_WORDS: Record<MeaningRow['role'], string> = {
  digit: 'figure',
  multiplier: 'multiplier',
  tolerance: 'tolerance',
  voltage: 'rated voltage',
  'hundreds-of-volts': 'voltage in hundreds of volts',
  temperature: 'temperature coefficient',
  class: 'class',
  characteristic: 'characteristic',
  identifier: 'kind of part',
  type: 'type',
  'failure-rate': 'failure rate',
  link: 'link',
  'temperature-range': 'temperature range',
  vibration: 'vibration',
};

const ORDINALS = ['1st', '2nd', '3rd'];

/** What each place tells, one after the other: `1st figure`, `2nd figure`, `multiplier`. */
export const placeWords = ({ places }: SchemeRow): string[] => {
  const digits = places.filter((role) => role === 'digit').length;
  return places.map((role, at) => {
    if (role !== 'digit' || digits < 2) return ROLE_WORDS[role];
    const before = places.slice(0, at).filter((other) => other === 'digit').length;
    return `${ORDINALS[before] ?? ''} ${ROLE_WORDS.digit}`;
  });
};

/** The same in a line, where places that are read together are one. */
export const placesInWords = (scheme: SchemeRow): string[] => {
  const words = placeWords(scheme);
  return groupsOf(scheme.places).map(
    ({ at }) => `${words[at[0] ?? 0] ?? ''}${at.length > 1 ? ', two colours' : ''}`,
  );
};

/** One thing that a colour may tell, with where that is from. */
export interface Cell {
  text: string;
  basis: Basis;
  source: SourceId;
  note: string;
  /** How it is met: `usual`, `other`, `rare`. */
  use: MeaningRow['use'];
}

export interface SchemeTable {
  columns: string[];
  rows: { colours: ColourRow[]; cells: Cell[][] }[];
}

/** The limit that a tolerance holds up to or from, for parts whose tolerance goes by their value. */
const limitText = ({ from_f: from, below_f: below }: MeaningRow): string => {
  const print = (farads: number): string =>
    farads >= 1e-9
      ? `${Number((farads * 1e9).toPrecision(3))} nF`
      : `${Number((farads * 1e12).toPrecision(3))} pF`;
  if (from !== undefined && below !== undefined) return ` from ${print(from)} to ${print(below)}`;
  if (below !== undefined) return ` below ${print(below)}`;
  return from === undefined ? '' : ` from ${print(from)}`;
};

const cellOf = (row: MeaningRow): Cell => ({
  // The head of the column says already what it is.
  text: sayMeaning(row).replace(/^(?:figure|rated|characteristic) /, '') + limitText(row),
  basis: row.basis,
  source: row.source,
  note: row.note,
  use: row.use,
});

/** What each colour tells in each place of a scheme: colours down, what is told across. */
export const schemeTable = (tables: Tables, scheme: SchemeRow): SchemeTable => {
  const roles = [...new Set([...scheme.places, ...scheme.absent])];
  const own = tables.colourMeanings.filter(
    ({ code, role, colour }) =>
      scheme.codes.includes(code) &&
      roles.includes(role) &&
      (colour !== 'none' || scheme.absent.includes(role) || scheme.places.includes(role)),
  );
  const keyOf = ({ colour, second }: MeaningRow): string => `${colour};${second}`;
  const pairs = new Map(own.map((row) => [keyOf(row), [row.colour, row.second]]));
  const order = (id: string | undefined): number =>
    tables.colours.findIndex((row) => row.id === id);
  const sorted = [...pairs].sort(
    ([, a], [, b]) =>
      Number(a[1] !== '') - Number(b[1] !== '') ||
      order(a[0]) - order(b[0]) ||
      order(a[1]) - order(b[1]),
  );
  return {
    columns: roles.map((role) => ROLE_WORDS[role]),
    rows: sorted.map(([key, ids]) => ({
      colours: ids.flatMap((id) => tables.colours.find((row) => row.id === id) ?? []),
      cells: roles.map((role) =>
        own.filter((row) => keyOf(row) === key && row.role === role).map(cellOf),
      ),
    })),
  };
};
