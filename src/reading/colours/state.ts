import type { ApartHint, Catalogue } from '../../engine/index.ts';

export type ColourTables = Catalogue['markings'];
export type LayoutRow = ColourTables['colourLayouts'][number];
export type FormRow = ColourTables['colourForms'][number];
export type ColourRow = ColourTables['colours'][number];

/** What the visitor has set. */
export interface ColourState {
  layout: LayoutRow;
  form: FormRow;
  /** Ids of colours, as many as the layout has places; `undefined` where one cannot tell. */
  marks: readonly (string | undefined)[];
  apart?: ApartHint | undefined;
}

/** Keys of the address. */
const keys = { layout: 's', marks: 'b', apart: 'apart' } as const;

/** Where one begins who has said nothing. */
const FIRST = 'resistor-4';

/** Whether a text of the address or a form names an end. */
export const isApart = (text: string | null): text is ApartHint =>
  text === 'first' || text === 'last';

/** A layout with all of its places open. */
export const emptyState = (tables: ColourTables, id: string = FIRST): ColourState => {
  const layout =
    tables.colourLayouts.find((row) => row.id === id) ??
    tables.colourLayouts.find((row) => row.id === FIRST);
  const form = tables.colourForms.find((row) => row.id === layout?.form);
  if (layout === undefined || form === undefined) throw new Error(`no layout ${id}`);
  return { layout, form, marks: layout.labels.map(() => undefined) };
};

/** What an address says; what it does not know is left open. */
export const stateFrom = (tables: ColourTables, search: string): ColourState => {
  const query = new URLSearchParams(search);
  const state = emptyState(tables, query.get(keys.layout) ?? FIRST);
  const known = new Set(tables.colours.map(({ id }) => id));
  const given = (query.get(keys.marks) ?? '').split(',');
  const apart = query.get(keys.apart);
  return {
    ...state,
    marks: state.marks.map((_, at) => {
      const id = given[at];
      return id !== undefined && known.has(id) ? id : undefined;
    }),
    ...(isApart(apart) && state.layout.turn ? { apart } : {}),
  };
};

/** The query that says all of it; nothing for a visitor who has said nothing. */
export const searchOf = ({ layout, marks, apart }: ColourState): string => {
  const set = marks.some((mark) => mark !== undefined);
  if (!set && layout.id === FIRST) return '';
  // Ids hold nothing that an address would have to escape, and commas stay readable.
  const parts = [
    `${keys.layout}=${layout.id}`,
    ...(set ? [`${keys.marks}=${marks.map((mark) => mark ?? '').join(',')}`] : []),
    ...(apart === undefined ? [] : [`${keys.apart}=${apart}`]),
  ];
  return `?${parts.join('&')}`;
};

/** Whether one may hold the part either way round without knowing: what lies, and dots. */
export const canTurn = ({ layout: { turn, painted } }: ColourState): boolean =>
  turn || (painted.length > 1 && painted.every((place) => place.startsWith('dots-')));

/** The part with its other end to the left. */
export const turnedRound = (state: ColourState): ColourState => ({
  ...state,
  marks: state.marks.toReversed(),
  ...(state.apart === undefined ? {} : { apart: state.apart === 'first' ? 'last' : 'first' }),
});

/** One place set to a colour. */
export const withMark = (
  state: ColourState,
  at: number,
  mark: string | undefined,
): ColourState => ({
  ...state,
  marks: state.marks.with(at, mark),
});

/** How many places the example of a form has in colour. */
const exampleCount = ({ bands, dots, tip }: FormRow): number =>
  bands.length + dots.length + (tip === '' ? 0 : 1);

/** The usual layout of a form: as many places as its example has, or the first. */
export const usualLayout = (tables: ColourTables, form: string): string => {
  const row = tables.colourForms.find(({ id }) => id === form);
  const layouts = tables.colourLayouts.filter((layout) => layout.form === form);
  const usual = layouts.find(
    ({ labels }) => row !== undefined && labels.length === exampleCount(row),
  );
  return (usual ?? layouts[0])?.id ?? FIRST;
};

/** The layout of a form with so many places; nothing where there is none. */
export const layoutWith = (tables: ColourTables, form: string, count: number): string | undefined =>
  tables.colourLayouts.find((row) => row.form === form && row.labels.length === count)?.id;

/** Another layout, with the colours that are set already as far as it has places. */
export const withLayout = (tables: ColourTables, state: ColourState, id: string): ColourState => {
  const next = emptyState(tables, id);
  return { ...next, marks: next.marks.map((_, at) => state.marks[at]) };
};
