import type { ColourRole } from '../../schemas/marking-colours.ts';
import { meaningsOf, type ColourId, type Group, type MeaningRow, type Scheme } from './scheme.ts';

/** Colours of all places, in the order in which the scheme reads them; nothing where unknown. */
export type Marks = readonly (ColourId | undefined)[];

/** One group of places with what its colours mean. */
export interface Taken extends Group {
  /** Colours as read; nothing where one of them is unknown. */
  colours?: readonly ColourId[];
  /** The usual meaning first; empty where the colours have none or are unknown. */
  meanings: readonly MeaningRow[];
}

/** What all places of a scheme tell, and the value that they make. */
export interface Taking {
  marks: Marks;
  taken: readonly Taken[];
  /** Told by what is not there. */
  absent: readonly MeaningRow[];
  /** Significant figures; nothing where a place of the value is unknown. */
  figures?: string;
  /** F or ohm. */
  value?: number;
}

/** Roles without which a scheme cannot be the one that a part is marked in. */
const DECIDING: readonly ColourRole[] = [
  'digit',
  'multiplier',
  'identifier',
  'type',
  'failure-rate',
  'link',
];

/** Places that make the value. */
export const makesValue = ({ role }: Group): boolean => role === 'digit' || role === 'multiplier';

/** Colours of a group; a place without a mark may have the colour of the body. */
const coloursOf = (scheme: Scheme, group: Group, marks: Marks): ColourId[] | undefined => {
  const colours = group.at.flatMap((at) => {
    const colour = marks[at];
    const read = scheme.row.bare && colour === 'none' ? marks[0] : colour;
    return read === undefined ? [] : [read];
  });
  return colours.length === group.at.length ? colours : undefined;
};

const take = (scheme: Scheme, group: Group, marks: Marks, value?: number): Taken => {
  const colours = coloursOf(scheme, group, marks);
  return colours === undefined
    ? { ...group, meanings: [] }
    : { ...group, colours, meanings: meaningsOf(scheme, group.role, colours, value) };
};

const valueOf = (scheme: Scheme, taken: readonly Taken[]): Pick<Taking, 'figures' | 'value'> => {
  const { quantity, unit_si: unit } = scheme.row;
  if (quantity === '' || unit === undefined) return {};
  const link = taken.find(({ role }) => role === 'link')?.meanings[0];
  if (link !== undefined) return { value: (link.value ?? 0) * unit };
  const digits = taken
    .filter(({ role }) => role === 'digit')
    .map(({ meanings }) => meanings[0]?.value);
  const factor = taken.find(({ role }) => role === 'multiplier')?.meanings[0]?.value;
  if (digits.includes(undefined) || factor === undefined) return {};
  const figures = digits.join('');
  // Twelve figures take away what multiplying by a tenth leaves behind.
  return { figures, value: Number((Number(figures) * factor * unit).toPrecision(12)) };
};

/** The first group whose colours a scheme gives no meaning to, though it must have one. */
export const unfitGroup = (scheme: Scheme, marks: Marks): Taken | undefined =>
  scheme.groups
    .map((group) => take(scheme, group, marks))
    .find(
      ({ role, colours, meanings }) =>
        colours !== undefined && meanings.length === 0 && DECIDING.includes(role),
    );

/**
 * What colours tell under a scheme; nothing where they cannot be marked in it, because a figure, the
 * multiplier or what the scheme is known by has a colour without a meaning.
 */
export const takingOf = (scheme: Scheme, marks: Marks): Taking | undefined => {
  if (unfitGroup(scheme, marks) !== undefined) return undefined;
  const made = valueOf(
    scheme,
    scheme.groups.map((group) => take(scheme, group, marks)),
  );
  const farads = scheme.row.quantity === 'capacitance' ? made.value : undefined;
  const taken = scheme.groups.map((group) => take(scheme, group, marks, farads));
  if (taken.every(({ meanings }) => meanings.length === 0)) return undefined;
  const absent = scheme.row.absent.flatMap(
    (role) => meaningsOf(scheme, role, ['none'], farads)[0] ?? [],
  );
  return { marks, taken, absent, ...made };
};
