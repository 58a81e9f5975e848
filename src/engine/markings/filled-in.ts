import type { Marking } from './text.ts';

/** A marking in which one worn character was made up as a figure. */
export interface FilledIn {
  marking: Marking;
  at: number;
  as: string;
}

const FIGURES = '0123456789';

/**
 * A marking with each figure in the place of the one worn character among so many from an index on;
 * none where no or several characters are worn there.
 */
export const filledIn = (marking: Marking, from: number, most: number): FilledIn[] => {
  const worn = marking.worn.slice(from, from + most);
  const at = from + worn.indexOf(true);
  if (worn.filter(Boolean).length !== 1) return [];
  return FIGURES.split('').map((as) => ({
    at,
    as,
    marking: {
      ...marking,
      text: marking.text.slice(0, at) + as + marking.text.slice(at + 1),
      worn: marking.worn.with(at, false),
    },
  }));
};

/** What a worn character was made up as, where that may be several figures. */
export const sayFigures = (figures: readonly string[]): string =>
  figures.length === FIGURES.length ? 'any figure' : figures.join(' or ');
