export { readColours, type ColourCatalogue } from './read-colours.ts';
export type { ApartHint, ColourRequest } from './weigh.ts';
export type { ColourId } from './scheme.ts';
export { coloursPainted, type Painted } from './painted.ts';
export { bandsOf, type Banded } from './bands-of.ts';
