import type { ColourRow, ColourTables } from './state.ts';

/** Colours that mean something on some part; the others are only those of bodies. */
export const paints = ({
  colours,
  colourMeanings,
}: Pick<ColourTables, 'colours' | 'colourMeanings'>): ColourRow[] => {
  const used = new Set(colourMeanings.flatMap(({ colour, second }) => [colour, second]));
  return colours.filter(({ id }) => used.has(id));
};
