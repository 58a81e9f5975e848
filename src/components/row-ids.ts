import type { FigureRow } from '../schemas/types.ts';

/**
 * Ids of the figures of one type on its page, in the order given: property and source, with a
 * number where one source has several rows, so that adding a row elsewhere moves no link.
 */
export const figureIds = (figures: readonly FigureRow[]): string[] => {
  const seen = new Map<string, number>();
  return figures.map(({ property, source }) => {
    const id = `${property}-${source}`;
    const before = seen.get(id) ?? 0;
    seen.set(id, before + 1);
    return before === 0 ? id : `${id}-${before + 1}`;
  });
};
