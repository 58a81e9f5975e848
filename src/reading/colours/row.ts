import { readColours, type Catalogue, type Reading } from '../../engine/index.ts';
import type { LayoutRow } from './state.ts';

/** What colours in a row say on one kind of part that has as many of them. */
export interface RowReading {
  layout: LayoutRow;
  /** Best first; there is at least one. */
  readings: readonly [Reading, ...Reading[]];
}

/** What colours in a row say on each kind of part that has as many of them. */
export const readColourRow = (catalogue: Catalogue, colours: readonly string[]): RowReading[] =>
  catalogue.markings.colourLayouts
    .filter(({ labels }) => labels.length === colours.length)
    .flatMap((layout) => {
      const [best, ...others] = readColours(catalogue, { form: layout.form, colours });
      return best === undefined ? [] : [{ layout, readings: [best, ...others] }];
    });
