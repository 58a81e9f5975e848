import type { ColourRole, ColourTables } from '../../schemas/marking-colours.ts';
import type { MarkingTables } from '../../schemas/markings.ts';
import { inOrderOfUse } from '../markings/meanings/use.ts';

/** An id in `markings/colours.csv`; `none` for a place without a mark. */
export type ColourId = string;

/** The tables that colours are read with. */
export type ColourReadingTables = ColourTables &
  Pick<MarkingTables, 'temperatureSystems' | 'class1Codes' | 'oldMantissas' | 'seriesTolerances'>;

export type FormRow = ColourTables['colourForms'][number];
export type LayoutRow = ColourTables['colourLayouts'][number];
export type SchemeRow = ColourTables['colourSchemes'][number];
export type MeaningRow = ColourTables['colourMeanings'][number];

/** A scheme with all that belongs to it. */
export interface Scheme {
  row: SchemeRow;
  layout: LayoutRow;
  form: FormRow;
  groups: readonly Group[];
  /** Meanings of its own codes, the usual ones first. */
  meanings: readonly MeaningRow[];
  /** Place of its codes among the temperature systems. */
  system: MarkingTables['temperatureSystems'][number] | undefined;
}

/** Neighbouring places that tell one thing together. */
export interface Group {
  role: ColourRole;
  /** Zero-based places. */
  at: readonly number[];
}

/** Roles whose places each hold one figure of a number. */
const FIGURES: readonly ColourRole[] = ['digit', 'hundreds-of-volts'];

/** Places of one role side by side are one group, except where each holds a figure. */
export const groupsOf = (places: readonly ColourRole[]): Group[] => {
  const groups: Group[] = [];
  for (const [at, role] of places.entries()) {
    const last = groups.at(-1);
    if (last?.role === role && !FIGURES.includes(role))
      groups[groups.length - 1] = { role, at: [...last.at, at] };
    else groups.push({ role, at: [at] });
  }
  return groups;
};

/** Which schemes to look at: one, those of a body, or all. */
export interface SchemeChoice {
  /** Id in `markings/colour-schemes.csv`. */
  scheme?: string | undefined;
  /** Id in `markings/colour-forms.csv`. */
  form?: string | undefined;
}

/** Schemes that fit a choice and a number of coloured places, in the order of their table. */
export const schemesFor = (
  tables: ColourReadingTables,
  { scheme, form }: SchemeChoice,
  places: number,
): Scheme[] =>
  tables.colourSchemes.flatMap((row) => {
    const layout = tables.colourLayouts.find(({ id }) => id === row.layout);
    const own = tables.colourForms.find(({ id }) => id === layout?.form);
    if (layout === undefined || own === undefined || row.places.length !== places) return [];
    if (scheme !== undefined && scheme !== row.id) return [];
    if (form !== undefined && form !== own.id) return [];
    return [
      {
        row,
        layout,
        form: own,
        groups: groupsOf(row.places),
        meanings: inOrderOfUse(
          tables.colourMeanings.filter(({ code }) => row.codes.includes(code)),
        ),
        system: tables.temperatureSystems.find(({ id }) => id === row.system),
      },
    ];
  });

/** Whether a meaning is for a capacitance; where that is not known, the larger ones count. */
const holdsFor = ({ from_f: from, below_f: below }: MeaningRow, value: number | undefined) =>
  value === undefined
    ? below === undefined
    : (from === undefined || value >= from) && (below === undefined || value < below);

/**
 * What colours mean in places of one role, the usual meaning first.
 * @param value of the part, F, where it is known already
 */
export const meaningsOf = (
  { meanings }: Pick<Scheme, 'meanings'>,
  role: ColourRole,
  colours: readonly ColourId[],
  value?: number,
): MeaningRow[] =>
  meanings.filter(
    (row) =>
      row.role === role &&
      row.colour === colours[0] &&
      row.second === (colours[1] ?? '') &&
      colours.length <= 2 &&
      holdsFor(row, value),
  );
