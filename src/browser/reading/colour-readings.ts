import { readColours, type Catalogue } from '../../engine/index.ts';
import type { Markup } from '../../markup/node.ts';
import { colourResults } from '../../reading/colours/results.ts';
import type { ColourState } from '../../reading/colours/state.ts';
import { habit } from '../kept/habits.ts';

/** What the colours that are set say, in the visitor's units. */
export const colourReadings = (catalogue: Catalogue, state: ColourState): Markup[] => {
  const { layout, marks, apart } = state;
  const readings = readColours(catalogue, { form: layout.form, colours: marks, apart });
  return colourResults(catalogue, state, readings, habit());
};
