import type { Marking } from './text.ts';

/** The text of a marking in which one worn character was made up as a figure. */
export interface FilledIn {
  text: string;
  at: number;
  as: string;
}

const FIGURES = '0123456789'.split('');

const NONE: readonly FilledIn[] = [];

/**
 * A marking with each figure in the place of the one worn character among so many from an index on;
 * none where no or several characters are worn there.
 */
export const filledIn = (
  { text, worn }: Marking,
  from: number,
  most: number,
): readonly FilledIn[] => {
  const at = worn.indexOf(true, from);
  const next = at < 0 ? at : worn.indexOf(true, at + 1);
  if (at < 0 || at >= from + most || (next >= 0 && next < from + most)) return NONE;
  return FIGURES.map((as) => ({ at, as, text: text.slice(0, at) + as + text.slice(at + 1) }));
};

/** What a worn character was made up as, where that may be several figures. */
export const sayFigures = (figures: readonly string[]): string =>
  figures.length === FIGURES.length ? 'any figure' : figures.join(' or ');
