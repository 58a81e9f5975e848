import {
  layoutWith,
  usualLayout,
  withLayout,
  withMark,
  type ColourState,
  type ColourTables,
} from './state.ts';
import { colourOfKey, coloursWith, colourTyped } from './typed.ts';

/** Where an act of the visitor leads: what is set then, and which of its places is set next. */
export interface Step {
  state: ColourState;
  /** May be one past the last place, when that was set. */
  at: number;
}

/** Another layout, going on at the first place that is still open. */
export const stepToLayout = (tables: ColourTables, state: ColourState, id: string): Step => {
  const next = withLayout(tables, state, id);
  return { state: next, at: Math.max(0, next.marks.indexOf(undefined)) };
};

/** Another body; what is set already is kept where that has as many places. */
export const stepToForm = (tables: ColourTables, state: ColourState, id: string): Step => {
  const isSet = state.marks.some((mark) => mark !== undefined);
  const alike = isSet ? layoutWith(tables, id, state.marks.length) : undefined;
  return stepToLayout(tables, state, alike ?? usualLayout(tables, id));
};

/**
 * What a key does while the keyboard is among places or colours, at a place; nothing for keys that
 * set none. A figure sets its colour, `?` leaves one open, and a letter goes through the colours
 * that begin with it.
 */
export const stepByKey = (
  tables: ColourTables,
  { state, at }: Step,
  key: string,
): Step | undefined => {
  const figure = colourOfKey(tables, key);
  if (figure !== undefined || key === '?')
    return { state: withMark(state, at, figure), at: at + 1 };
  if (key === 'Enter') return { state, at: (at + 1) % state.marks.length };
  if (key === 'Backspace' || key === 'Delete') {
    const last = state.marks[at] === undefined ? Math.max(0, at - 1) : at;
    return { state: withMark(state, last, undefined), at: last };
  }
  const begun = /^[a-z]$/i.test(key) ? coloursWith(tables, key) : [];
  if (begun.length === 0) return undefined;
  const now = begun.indexOf(state.marks[at] ?? '');
  return { state: withMark(state, at, begun[(now + 1) % begun.length]), at };
};

/** What colours come to that were typed, and what is to be said of them. */
export const stepByTyped = (
  tables: ColourTables,
  state: ColourState,
  text: string,
): Step & { said: string } => {
  const { marks, unknown } = colourTyped(tables, text);
  const layout = layoutWith(tables, state.form.id, marks.length);
  const next = layout === undefined ? state : withLayout(tables, state, layout);
  const places = next.marks.length;
  const over = marks.length - places;
  return {
    state: { ...next, marks: next.marks.map((_, place) => marks[place]) },
    at: marks.length,
    said:
      unknown.length > 0
        ? `No colour: ${unknown.join(', ')}.`
        : over > 0
          ? `This body has ${places} at most; ${over} more typed.`
          : '',
  };
};
